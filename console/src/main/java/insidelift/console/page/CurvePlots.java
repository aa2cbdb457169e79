package insidelift.console.page;

import insidelift.console.picture.Figures;
import insidelift.engine.geometry.effect.ChangeCurves;
import insidelift.engine.geometry.effect.ChangeCurves.Lean;
import insidelift.engine.geometry.effect.ChangeCurves.Lift;
import insidelift.engine.geometry.plausible.Band;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;

/** A change's curves as plots. */
final class CurvePlots {

  private static final double LEGEND = 240;

  /** The look of a line that only helps to read. */
  private static final String BAND = "grid";

  /** The plot ends beyond where karts tip over. */
  private static final double MOST_G = 2.5;

  private static final double STEP_G = 0.5;

  private CurvePlots() {}

  /** Where the inside rear lifts, the harder the kart brakes. */
  static Picture liftOverBraking(ChangeCurves curves) {
    return lifts(
        "lift-braking",
        "Braking brings the inside rear up",
        new Axes(0, 0.9, 0.3, 0, MOST_G, STEP_G),
        "braking, g",
        "at " + Figures.fixed(curves.corner().steerDeg(), 0) + "° of steer, against braking",
        curves.overBraking(),
        " g of braking");
  }

  /** Where the inside rear lifts, the further the kart is steered. */
  static Picture liftOverSteer(ChangeCurves curves) {
    return lifts(
        "lift-steer",
        "Steer brings the inside rear up",
        new Axes(0, 30, 10, 0, MOST_G, STEP_G),
        "steer, degrees",
        "slowing by "
            + Figures.fixed(-curves.corner().longitudinalG(), 1)
            + " g, against the angle of steer",
        curves.overSteer(),
        "° of steer");
  }

  private static Picture lifts(
      String id,
      String title,
      Axes frame,
      String across,
      String where,
      List<Lift> lifts,
      String unit) {
    Sketch sketch = new Sketch();
    Axes axes = frame.draw(sketch, across, "inside rear lifts at, g");
    sketch.path(BAND, line(axes, lifts, Band::low));
    sketch.path(BAND, line(axes, lifts, Band::high));
    axes.curve(sketch, KartViews.BEFORE, false, lifts, Lift::at, l -> shown(l.before().mid()));
    axes.curve(sketch, KartViews.AFTER, false, lifts, Lift::at, l -> shown(l.after().mid()));
    sketch.legend(46, LEGEND, KartViews.BEFORE, false, "before");
    sketch.legend(180, LEGEND, KartViews.AFTER, false, "after");
    sketch.label(46, LEGEND + 24, "start", "thin: nine of ten karts lie between, before");
    Lift first = lifts.get(0);
    Lift last = lifts.get(lifts.size() - 1);
    String description =
        "Lateral acceleration at which the inside rear leaves the ground, "
            + where
            + ", over the karts that fit what is known. Before the change: "
            + lift(first, unit)
            + "; "
            + lift(last, unit)
            + ".";
    return sketch.finished(id, title, description, Axes.WIDTH, Axes.HEIGHT);
  }

  private static String lift(Lift lift, String unit) {
    return "with "
        + (unit.startsWith("°") ? Figures.fixed(lift.at(), 0) : Figures.fixed(lift.at(), 1))
        + unit
        + " "
        + g(lift.before().mid())
        + " (from "
        + g(lift.before().low())
        + " to "
        + g(lift.before().high())
        + ")";
  }

  private static String g(double g) {
    return Double.isFinite(g) ? Figures.fixed(g, 1) + " g" : "never";
  }

  private static List<double[]> line(Axes axes, List<Lift> lifts, ToDoubleFunction<Band> edge) {
    return lifts.stream()
        .map(
            lift ->
                new double[] {axes.x(lift.at()), axes.y(shown(edge.applyAsDouble(lift.before())))})
        .toList();
  }

  /** What never lifts, or only beyond the plot, runs along its upper edge. */
  private static double shown(double g) {
    return Math.min(MOST_G, g);
  }

  /** Lean of both front wheels to the ground against steer. */
  static Picture lean(ChangeCurves curves) {
    List<Lean> leans = curves.leans();
    double most = leans.stream().flatMapToDouble(CurvePlots::all).max().orElse(0);
    double least = leans.stream().flatMapToDouble(CurvePlots::all).min().orElse(0);
    double step = most - least > 16 ? 5 : 2;
    Sketch sketch = new Sketch();
    Axes axes =
        new Axes(0, 30, 10, -roundedUp(-least, step), roundedUp(most, step), step)
            .draw(sketch, "steer, degrees", "lean, degrees (+ top outward)");
    axes.curve(sketch, KartViews.BEFORE, false, leans, Lean::steerDeg, Lean::innerBefore);
    axes.curve(sketch, KartViews.AFTER, false, leans, Lean::steerDeg, Lean::innerAfter);
    axes.curve(sketch, KartViews.BEFORE, true, leans, Lean::steerDeg, Lean::outerBefore);
    axes.curve(sketch, KartViews.AFTER, true, leans, Lean::steerDeg, Lean::outerAfter);
    sketch.legend(46, LEGEND, KartViews.BEFORE, false, "inner, before");
    sketch.legend(180, LEGEND, KartViews.AFTER, false, "inner, after");
    sketch.legend(46, LEGEND + 20, KartViews.BEFORE, true, "outer, before");
    sketch.legend(180, LEGEND + 20, KartViews.AFTER, true, "outer, after");
    Lean full = leans.get(leans.size() - 1);
    String description =
        "Lean of both front wheels to the ground against steer, at "
            + Figures.fixed(curves.corner().lateralG(), 1)
            + " g. At "
            + Figures.fixed(full.steerDeg(), 0)
            + "° of steer the inner wheel leans "
            + Figures.change(full.innerBefore(), full.innerAfter(), 0, "°")
            + " and the outer "
            + Figures.change(full.outerBefore(), full.outerAfter(), 0, "°")
            + ". Above nought the top leans outward.";
    return sketch.finished(
        "front-lean", "How both front wheels lean", description, Axes.WIDTH, Axes.HEIGHT);
  }

  private static DoubleStream all(Lean lean) {
    return DoubleStream.of(
        lean.innerBefore(), lean.innerAfter(), lean.outerBefore(), lean.outerAfter());
  }

  /** The next multiple of the step; at least one step, so that a flat curve has a height. */
  private static double roundedUp(double value, double step) {
    return Math.max(1, Math.ceil(value / step - 1e-9)) * step;
  }
}
