package insidelift.engine.geometry.effect;

import insidelift.engine.geometry.kart.Corner;
import insidelift.engine.geometry.kart.CornerState;
import insidelift.engine.geometry.kart.KartGeometry;
import insidelift.engine.geometry.kart.LoadModel;
import insidelift.engine.geometry.plausible.Band;
import insidelift.engine.geometry.plausible.PlausibleKarts;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * A change as curves, for the kart as it is and as changed, in a left turn: where the inside rear
 * lifts as the kart brakes harder and as it is steered further, over the karts that fit what is
 * known, and the lean of both front wheels to the ground as it steers.
 *
 * @param corner the corner whose steer, slowing and lateral acceleration hold where they are not
 *     what is varied
 * @param overBraking lift-off by harder braking, g
 * @param overSteer lift-off by further steer, degrees
 * @param leans the leans, by rising steer
 */
public record ChangeCurves(
    Corner corner, List<Lift> overBraking, List<Lift> overSteer, List<Lean> leans) {

  /** Degrees from one lean to the next: 0 to 30, straight ahead to a hairpin. */
  private static final double STEER_STEP_DEG = 2.5;

  private static final int STEERS = 13;
  private static final double BRAKING_STEP_G = 0.1;
  private static final int BRAKINGS = 10;

  /**
   * Where the inside rear leaves the ground.
   *
   * @param at braking in g, or steer in degrees
   * @param before lateral acceleration, g, of the kart as it is
   * @param after the same of the kart as changed
   */
  public record Lift(double at, Band before, Band after) {}

  /**
   * The lean of the front wheels to the ground, degrees, positive with the top outboard: into the
   * turn for the inner wheel, out of it for the outer.
   *
   * @param steerDeg rotation about the kingpins, degrees
   * @param innerBefore inner wheel of the kart as it is
   * @param innerAfter inner wheel of the kart as changed
   * @param outerBefore outer wheel of the kart as it is
   * @param outerAfter outer wheel of the kart as changed
   */
  public record Lean(
      double steerDeg,
      double innerBefore,
      double innerAfter,
      double outerBefore,
      double outerAfter) {}

  /** The curves in their order cannot be changed from outside. */
  public ChangeCurves {
    overBraking = List.copyOf(overBraking);
    overSteer = List.copyOf(overSteer);
    leans = List.copyOf(leans);
  }

  /** The curves of a change in its first corner. */
  public static ChangeCurves of(ChangeEffect effect) {
    Corner corner = effect.corners().get(0).corner();
    PlausibleKarts plausible = PlausibleKarts.of(effect.before());
    return new ChangeCurves(
        corner,
        steps(BRAKING_STEP_G, BRAKINGS)
            .mapToObj(braking -> lift(effect, plausible, braking, corner.steerDeg(), -braking))
            .toList(),
        steps(STEER_STEP_DEG, STEERS)
            .mapToObj(deg -> lift(effect, plausible, deg, deg, corner.longitudinalG()))
            .toList(),
        steps(STEER_STEP_DEG, STEERS).mapToObj(deg -> lean(effect, corner, deg)).toList());
  }

  private static DoubleStream steps(double step, int count) {
    return IntStream.range(0, count).mapToDouble(i -> i * step);
  }

  private static Lift lift(
      ChangeEffect effect,
      PlausibleKarts plausible,
      double at,
      double steerDeg,
      double longitudinalG) {
    return new Lift(
        at,
        plausible.ofKarts(kart -> liftOffG(kart, steerDeg, longitudinalG)),
        plausible.ofKarts(
            kart ->
                liftOffG(
                    kart.changed(effect.camberDeg(), effect.casterDeg()),
                    steerDeg,
                    longitudinalG)));
  }

  private static double liftOffG(KartGeometry kart, double steerDeg, double longitudinalG) {
    return LoadModel.liftOffG(kart, steerDeg, longitudinalG).orElse(Double.POSITIVE_INFINITY);
  }

  private static Lean lean(ChangeEffect effect, Corner corner, double steerDeg) {
    CornerState was = steered(effect.before(), corner, steerDeg);
    CornerState is = steered(effect.after(), corner, steerDeg);
    return new Lean(
        steerDeg, was.innerLeanDeg(), is.innerLeanDeg(), was.outerLeanDeg(), is.outerLeanDeg());
  }

  private static CornerState steered(KartGeometry kart, Corner corner, double steerDeg) {
    return CornerState.of(kart, steerDeg, corner.lateralG(), corner.longitudinalG());
  }
}
