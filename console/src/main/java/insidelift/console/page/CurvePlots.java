package insidelift.console.page;

import insidelift.console.picture.Figures;
import insidelift.engine.geometry.ChangeCurves;
import insidelift.engine.geometry.ChangeCurves.Lean;
import insidelift.engine.geometry.ChangeCurves.Load;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/** A change's two curves as plots. */
final class CurvePlots {

  private static final double LEGEND = 240;

  private CurvePlots() {}

  /** Load on the inside rear wheel against lateral acceleration. */
  static Picture insideRear(ChangeCurves curves) {
    List<Load> loads = curves.loads();
    double most =
        loads.stream()
            .flatMapToDouble(load -> DoubleStream.of(load.beforeN(), load.afterN()))
            .max()
            .orElse(0);
    double hardest = loads.get(loads.size() - 1).lateralG();
    double step = most > 400 ? 200 : 100;
    Sketch sketch = new Sketch();
    Axes axes =
        new Axes(0, roundedUp(hardest, 0.5), 0.5, 0, roundedUp(most, step), step)
            .draw(sketch, "lateral acceleration, g", "load, N");
    axes.curve(sketch, KartViews.BEFORE, false, loads, Load::lateralG, Load::beforeN);
    axes.curve(sketch, KartViews.AFTER, false, loads, Load::lateralG, Load::afterN);
    sketch.legend(46, LEGEND, KartViews.BEFORE, false, "before");
    sketch.legend(180, LEGEND, KartViews.AFTER, false, "after");
    Load first = loads.get(0);
    String description =
        "Load on the inside rear wheel against lateral acceleration, at "
            + Figures.fixed(curves.steerDeg(), 0)
            + "° of steer. Without lateral acceleration it is "
            + Figures.change(first.beforeN(), first.afterN(), 0, " N")
            + ". The wheel leaves the ground: before, "
            + lift(curves.liftOffBefore())
            + "; after, "
            + lift(curves.liftOffAfter())
            + ".";
    return sketch.finished(
        "inside-rear", "When the inside rear goes light", description, Axes.WIDTH, Axes.HEIGHT);
  }

  private static String lift(OptionalDouble g) {
    return g.isPresent() ? "at " + Figures.fixed(g.getAsDouble(), 2) + " g" : "never";
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
            + Figures.fixed(curves.lateralG(), 1)
            + " g. At "
            + Figures.fixed(full.steerDeg(), 0)
            + "° of steer the inner wheel leans "
            + Figures.change(full.innerBefore(), full.innerAfter(), 1, "°")
            + " and the outer "
            + Figures.change(full.outerBefore(), full.outerAfter(), 1, "°")
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
