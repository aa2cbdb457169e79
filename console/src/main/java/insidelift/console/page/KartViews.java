package insidelift.console.page;

import insidelift.console.picture.Figures;
import insidelift.engine.geometry.effect.ChangeEffect;
import insidelift.engine.geometry.kart.Dimension;
import insidelift.engine.geometry.kart.KartGeometry;
import insidelift.shared.Degrees;

/**
 * A change drawn to scale in front, side and plan view, before in dashes and after in full lines.
 * Across and up have the same scale, and each drawing carries a bar of it. Widths of tyres are not
 * among the measures, so wheels are drawn as their middle planes.
 */
final class KartViews {

  static final String BEFORE = "before";
  static final String AFTER = "after";
  private static final String PLAIN = "frame";

  private static final int WIDTH = 340;
  private static final int WHEEL_HEIGHT = 250;
  private static final double GROUND = 212;

  /** Units that the diameter of the wheel takes. */
  private static final double DIAMETER = 180;

  private final KartGeometry before;
  private final KartGeometry after;
  private final double scale;

  KartViews(ChangeEffect effect) {
    this.before = effect.before();
    this.after = effect.after();
    this.scale = DIAMETER / (2 * before.value(Dimension.WHEEL_RADIUS));
  }

  /** The left front wheel from the front: its middle plane and its kingpin axis. */
  Picture front() {
    Sketch sketch = new Sketch();
    double kingpin = 120;
    sketch.line("ground", 10, GROUND, WIDTH - 10, GROUND);
    wheelFromFront(sketch, before, BEFORE, kingpin);
    wheelFromFront(sketch, after, AFTER, kingpin);
    sketch
        .label(10, 18, "start", "to the seat")
        .label(WIDTH - 10, 18, "end", "outward")
        .label(WIDTH - 10, 110, "end", "wheel")
        .label(10, 110, "start", "kingpin axis");
    key(sketch, WHEEL_HEIGHT - 14, 100, scale);
    double moved =
        2
            * before.value(Dimension.WHEEL_RADIUS)
            * (sine(after, Dimension.CAMBER) - sine(before, Dimension.CAMBER));
    String description =
        "Left front wheel seen from the front; the right one is its mirror image. Camber "
            + angles(Dimension.CAMBER)
            + (moved == 0
                ? ": the wheel stands as before."
                : ": the top moves "
                    + Figures.fixed(Math.abs(moved), known(Dimension.CAMBER))
                    + " mm "
                    + (moved > 0 ? "outward." : "inward."));
    return sketch.finished("front-view", "Front view", description, WIDTH, WHEEL_HEIGHT);
  }

  private void wheelFromFront(Sketch sketch, KartGeometry kart, String look, double kingpin) {
    double radius = kart.value(Dimension.WHEEL_RADIUS) * scale;
    double camber = Math.toRadians(kart.value(Dimension.CAMBER));
    double inclination = Math.tan(Math.toRadians(kart.value(Dimension.KINGPIN_INCLINATION)));
    double hub = GROUND - radius * Math.cos(camber);
    double centre = kingpin + kart.value(Dimension.HUB_OFFSET) * scale;
    double lean = radius * Math.sin(camber);
    double up = radius * Math.cos(camber);
    sketch.line(look + " wide", centre - lean, hub + up, centre + lean, hub - up);
    double reach = 0.75 * radius;
    sketch.line(
        look,
        kingpin + (GROUND - hub) * inclination,
        GROUND,
        kingpin - reach * inclination,
        hub - reach);
    sketch.line(PLAIN, kingpin, hub, centre, hub);
  }

  /**
   * The left front wheel from the left: the rim, the kingpin axis and where it meets the ground.
   */
  Picture side() {
    Sketch sketch = new Sketch();
    double centre = WIDTH / 2.0;
    double radius = before.value(Dimension.WHEEL_RADIUS) * scale;
    sketch.line("ground", 10, GROUND, WIDTH - 10, GROUND);
    sketch.circle(PLAIN, centre, GROUND - radius, radius);
    kingpinFromSide(sketch, before, BEFORE, centre, radius);
    kingpinFromSide(sketch, after, AFTER, centre, radius);
    sketch
        .label(10, 18, "start", "forward")
        .label(WIDTH - 10, 18, "end", "rearward")
        .label(10, 110, "start", "wheel")
        .label(WIDTH - 10, 60, "end", "kingpin axis");
    key(sketch, WHEEL_HEIGHT - 14, 100, scale);
    String description =
        "Kingpin axis of the left front wheel seen from the left. Caster "
            + angles(Dimension.CASTER)
            + ". The axis meets the ground ahead of the middle of the tyre by "
            + Figures.change(before.trailMm(), after.trailMm(), known(Dimension.CASTER), " mm")
            + ", the trail.";
    return sketch.finished("side-view", "Side view", description, WIDTH, WHEEL_HEIGHT);
  }

  private static void kingpinFromSide(
      Sketch sketch, KartGeometry kart, String look, double centre, double radius) {
    double slope = Math.tan(Math.toRadians(kart.value(Dimension.CASTER)));
    double reach = 1.05 * radius;
    double hub = GROUND - radius;
    sketch.line(look, centre - radius * slope, GROUND, centre + reach * slope, hub - reach);
    sketch.dot(look + " filled", centre - radius * slope, GROUND);
  }

  /** How many decimals of a millimetre are known: none of a kart that nobody measured. */
  private int known(Dimension angle) {
    return before.isTypical(angle) || before.isTypical(Dimension.WHEEL_RADIUS) ? 0 : 1;
  }

  /** What the dashes mean, and a bar of so many millimetres. */
  private static void key(Sketch sketch, double y, int barMm, double scale) {
    sketch
        .line(BEFORE, 10, y, 40, y)
        .label(46, y + 4, "start", "before")
        .line(AFTER, 110, y, 140, y)
        .label(146, y + 4, "start", "after")
        .line("ground", 200, y, 200 + barMm * scale, y)
        .label(206 + barMm * scale, y + 4, "start", barMm + " mm");
  }

  private String angles(Dimension dimension) {
    double by = after.value(dimension) - before.value(dimension);
    if (before.isTypical(dimension)) {
      return by == 0 ? "stays" : "changes by " + Degrees.of(by).signed();
    }
    String from = Degrees.of(before.value(dimension)).signed();
    String to = Degrees.of(after.value(dimension)).signed();
    return from.equals(to) ? "stays at " + from : "goes from " + from + " to " + to;
  }

  private static double sine(KartGeometry kart, Dimension dimension) {
    return Math.sin(Math.toRadians(kart.value(dimension)));
  }
}
