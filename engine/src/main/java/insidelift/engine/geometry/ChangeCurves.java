package insidelift.engine.geometry;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * A change as two curves: the load on the inside rear wheel as the kart corners harder, and the
 * lean of both front wheels to the ground as it steers. Each is computed for the kart as it is and
 * as changed, in a left turn.
 *
 * @param steerDeg the steer at which the loads are computed, degrees
 * @param lateralG the lateral acceleration at which the leans are computed, g
 * @param loads the load, by rising lateral acceleration
 * @param leans the leans, by rising steer
 * @param liftOffBefore lateral acceleration, g, at which the inside rear leaves the ground at that
 *     steer; empty if it never does
 * @param liftOffAfter the same after the change
 */
public record ChangeCurves(
    double steerDeg,
    double lateralG,
    List<Load> loads,
    List<Lean> leans,
    OptionalDouble liftOffBefore,
    OptionalDouble liftOffAfter) {

  /** Degrees from one lean to the next: 0 to 30, straight ahead to a hairpin. */
  private static final double STEER_STEP_DEG = 2.5;

  private static final int STEERS = 13;
  private static final int LOADS = 25;

  /**
   * The load on the inside rear wheel.
   *
   * @param lateralG lateral acceleration, g
   * @param beforeN load of the kart as it is, N; 0 when the wheel is off the ground
   * @param afterN load of the kart as changed, N
   */
  public record Load(double lateralG, double beforeN, double afterN) {}

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
    loads = List.copyOf(loads);
    leans = List.copyOf(leans);
  }

  /**
   * The curves of a change in its first corner: the loads at that corner's steer, up to nine tenths
   * of where the kart tips over, and the leans at that corner's lateral acceleration.
   */
  public static ChangeCurves of(ChangeEffect effect) {
    CornerChange first = effect.corners().get(0);
    double steer = first.corner().steerDeg();
    double lateral = first.corner().lateralG();
    KartGeometry before = effect.before();
    KartGeometry after = effect.after();
    double most = Corner.hardestG(before);
    List<Load> loads =
        IntStream.range(0, LOADS)
            .mapToDouble(i -> most * i / (LOADS - 1))
            .mapToObj(g -> new Load(g, insideRear(before, steer, g), insideRear(after, steer, g)))
            .toList();
    List<Lean> leans =
        DoubleStream.iterate(0, deg -> deg + STEER_STEP_DEG)
            .limit(STEERS)
            .mapToObj(deg -> lean(before, after, deg, lateral))
            .toList();
    return new ChangeCurves(
        steer, lateral, loads, leans, first.liftOffBefore(), first.liftOffAfter());
  }

  private static double insideRear(KartGeometry kart, double steerDeg, double lateralG) {
    return LoadModel.loads(kart, steerDeg, lateralG).rearInnerN();
  }

  private static Lean lean(
      KartGeometry before, KartGeometry after, double steerDeg, double lateralG) {
    CornerState was = CornerState.of(before, steerDeg, lateralG);
    CornerState is = CornerState.of(after, steerDeg, lateralG);
    return new Lean(
        steerDeg, was.innerLeanDeg(), is.innerLeanDeg(), was.outerLeanDeg(), is.outerLeanDeg());
  }
}
