package insidelift.console.page;

import insidelift.console.picture.Figures;
import insidelift.engine.geometry.ChangeEffect;
import insidelift.engine.geometry.CornerChange;
import insidelift.engine.geometry.Dimension;
import insidelift.engine.geometry.KartGeometry;
import insidelift.engine.geometry.WheelLoads;
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

  private static final int PLAN_HEIGHT = 330;
  private static final double PLAN_SCALE = 0.19;
  private static final double REAR_Y = 256;

  /** A load of so many newtons has a circle of so many units' radius; areas show loads. */
  private static final double CIRCLE_N = 450;

  private static final double CIRCLE_RADIUS = 27;

  private final ChangeEffect effect;
  private final KartGeometry before;
  private final KartGeometry after;
  private final double scale;

  KartViews(ChangeEffect effect) {
    this.effect = effect;
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
                    + Figures.fixed(Math.abs(moved), 1)
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
            + Figures.change(before.trailMm(), after.trailMm(), 1, " mm")
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

  /** The kart from above in the first corner: what stands on each wheel, as circles. */
  Picture plan() {
    CornerChange change = effect.corners().get(0);
    WheelLoads was = change.before().loads();
    WheelLoads is = change.after().loads();
    double steer = change.corner().steerDeg();
    double frontY = REAR_Y - before.value(Dimension.WHEELBASE) * PLAN_SCALE;
    double front = before.value(Dimension.FRONT_TRACK) * PLAN_SCALE / 2;
    double rear = before.value(Dimension.REAR_TRACK) * PLAN_SCALE / 2;
    double middle = WIDTH / 2.0;
    Sketch sketch = new Sketch();
    sketch
        .line(PLAIN, middle - front, frontY, middle + front, frontY)
        .line(PLAIN, middle - rear, REAR_Y, middle + rear, REAR_Y)
        .line(PLAIN, middle, frontY, middle, REAR_Y);
    wheelFromAbove(sketch, middle - front, frontY, steer, was.frontInnerN(), is.frontInnerN());
    wheelFromAbove(sketch, middle + front, frontY, steer, was.frontOuterN(), is.frontOuterN());
    wheelFromAbove(sketch, middle - rear, REAR_Y, 0, was.rearInnerN(), is.rearInnerN());
    wheelFromAbove(sketch, middle + rear, REAR_Y, 0, was.rearOuterN(), is.rearOuterN());
    sketch.label(10, 14, "start", "inside of the turn").label(WIDTH - 10, 14, "end", "outside");
    key(sketch, PLAN_HEIGHT - 10, 300, PLAN_SCALE);
    String description =
        "The kart from above in a left turn, "
            + change.corner().name()
            + ": "
            + Figures.fixed(steer, 0)
            + "° of steer at "
            + Figures.fixed(change.corner().lateralG(), 1)
            + " g. The area of a circle is the load on that wheel. Front inner "
            + Figures.change(was.frontInnerN(), is.frontInnerN(), 0, " N")
            + ", front outer "
            + Figures.change(was.frontOuterN(), is.frontOuterN(), 0, " N")
            + ", inside rear "
            + Figures.change(was.rearInnerN(), is.rearInnerN(), 0, " N")
            + ", outside rear "
            + Figures.change(was.rearOuterN(), is.rearOuterN(), 0, " N")
            + ".";
    return sketch.finished("plan-view", "Plan view", description, WIDTH, PLAN_HEIGHT);
  }

  private void wheelFromAbove(
      Sketch sketch, double x, double y, double steerDeg, double wasN, double isN) {
    double radius = before.value(Dimension.WHEEL_RADIUS) * PLAN_SCALE;
    double across = radius * Math.sin(Math.toRadians(steerDeg));
    double along = radius * Math.cos(Math.toRadians(steerDeg));
    sketch.line("frame wide", x + across, y + along, x - across, y - along);
    load(sketch, BEFORE, x, y, wasN);
    load(sketch, AFTER, x, y, isN);
    sketch.label(x, y + 44, "middle", Figures.change(wasN, isN, 0, " N"));
  }

  private static void load(Sketch sketch, String look, double x, double y, double newtons) {
    if (newtons > 0) {
      sketch.circle(look, x, y, CIRCLE_RADIUS * Math.sqrt(newtons / CIRCLE_N));
    }
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
    String from = Degrees.of(before.value(dimension)).signed();
    String to = Degrees.of(after.value(dimension)).signed();
    return from.equals(to) ? "stays at " + from : "goes from " + from + " to " + to;
  }

  private static double sine(KartGeometry kart, Dimension dimension) {
    return Math.sin(Math.toRadians(kart.value(dimension)));
  }
}
