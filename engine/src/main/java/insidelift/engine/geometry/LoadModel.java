package insidelift.engine.geometry;

import java.util.OptionalDouble;
import org.hipparchus.analysis.MultivariateFunction;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunctionGradient;
import org.hipparchus.optim.nonlinear.scalar.gradient.NonLinearConjugateGradientOptimizer;
import org.hipparchus.optim.nonlinear.scalar.gradient.NonLinearConjugateGradientOptimizer.Formula;

/**
 * The wheel loads of a kart that corners steadily to the left, as the minimum of {@link
 * FrameEnergy}, and the lateral acceleration at which its inside rear wheel leaves the ground.
 */
final class LoadModel {

  /** Out of balance by less than this, N, the optimiser has found which wheels stand. */
  private static final double NEAR_N = 1e-3;

  /** Out of balance by less than this, N, is balanced: a ten-billionth of a kart's weight. */
  private static final double BALANCED_N = 1e-7;

  private static final double STALLED_MM = 1e-7;
  private static final double LAST_DIGIT = 1e-15;
  private static final double LINE_ACCURACY = 1e-10;
  private static final int MOST_EVALUATIONS = 10_000;
  private static final int MOST_POLISHING = 50;

  /** Just short of tipping, where the load is still determined. */
  private static final double NEARLY_TIPPING = 1 - 1e-6;

  private static final double LATERAL_ACCURACY_G = 1e-12;
  private static final double MOST_LATERAL_G = 3;

  private final FrameEnergy energy;
  private final double steerDeg;
  private final double lateralG;
  private final double[] corners;

  private LoadModel(KartGeometry kart, double steerDeg, double lateralG) {
    this.energy = new FrameEnergy(kart, steerDeg, lateralG);
    this.steerDeg = steerDeg;
    this.lateralG = lateralG;
    this.corners = balanced(nearMinimum());
  }

  /**
   * The loads at one steer and lateral acceleration.
   *
   * @throws RefusedInputException if either is outside its range, or the kart tips over
   */
  static WheelLoads loads(KartGeometry kart, double steerDeg, double lateralG) {
    Range.check("lateral-g", lateralG, 0, MOST_LATERAL_G, "g (left turn; provisional)");
    double tips = kart.tipsOverAtG();
    if (lateralG >= tips * NEARLY_TIPPING) {
      throw new RefusedInputException(
          "lateral-g",
          Printed.exact(lateralG)
              + " g: this kart tips over; both its inner wheels lift at "
              + Printed.fixed(tips, 2)
              + " g, by its tracks, weight shares and height of the centre of gravity");
    }
    return new LoadModel(kart, steerDeg, lateralG).asLoads();
  }

  /**
   * The lateral acceleration, g, at which the inside rear wheel leaves the ground: 0 if the steer
   * alone lifts it, nothing if it stands until the kart tips over.
   */
  static OptionalDouble liftOffG(KartGeometry kart, double steerDeg) {
    UnivariateFunction stands = g -> new LoadModel(kart, steerDeg, g).insideRearSqueezeMm();
    if (stands.value(0) <= 0) {
      return OptionalDouble.of(0);
    }
    double most = kart.tipsOverAtG() * NEARLY_TIPPING;
    if (stands.value(most) > 0) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        new BracketingNthOrderBrentSolver(LATERAL_ACCURACY_G, 5)
            .solve(MOST_EVALUATIONS, stands, 0, most));
  }

  private double insideRearSqueezeMm() {
    return energy.squeeze(corners, FrameEnergy.REAR_INNER);
  }

  private WheelLoads asLoads() {
    return new WheelLoads(
        steerDeg,
        lateralG,
        energy.load(corners, FrameEnergy.REAR_OUTER),
        energy.load(corners, FrameEnergy.REAR_INNER),
        energy.load(corners, FrameEnergy.FRONT_INNER),
        energy.load(corners, FrameEnergy.FRONT_OUTER),
        Math.max(0, -insideRearSqueezeMm()),
        Math.toDegrees(energy.twistRad(corners)),
        Math.toDegrees(energy.frontRollRad(corners)));
  }

  /**
   * Finds which wheels stand. The parabola of a kart with all four on the ground shapes the steps,
   * so that for such a kart the first one arrives.
   */
  private double[] nearMinimum() {
    double[] start = energy.start();
    DecompositionSolver parabola = new QRDecomposition(energy.curvature(start)).getSolver();
    MultivariateFunction value = energy::value;
    return new NonLinearConjugateGradientOptimizer(
            Formula.POLAK_RIBIERE,
            (iteration, previous, current) -> isNear(previous.getPoint(), current.getPoint()),
            LINE_ACCURACY,
            LINE_ACCURACY,
            1,
            (point, slope) -> parabola.solve(new ArrayRealVector(slope)).toArray())
        .optimize(
            new MaxEval(MOST_EVALUATIONS),
            GoalType.MINIMIZE,
            new InitialGuess(start),
            new ObjectiveFunction(value),
            new ObjectiveFunctionGradient(energy::gradient))
        .getPoint();
  }

  /** The optimiser compares energies, so it stalls at half the digits: that too is near enough. */
  private boolean isNear(double[] previous, double[] current) {
    return new ArrayRealVector(energy.gradient(current)).getNorm() < NEAR_N
        || new ArrayRealVector(previous).getDistance(new ArrayRealVector(current)) < STALLED_MM;
  }

  /**
   * With the same wheels standing the energy is a parabola, so one exact step from near the minimum
   * ends on it to the last digit. Where a wheel only just touches, the step is cut to the lowest
   * point along it: on a convex energy that always arrives.
   */
  private double[] balanced(double[] near) {
    RealVector point = new ArrayRealVector(near);
    for (int i = 0; i < MOST_POLISHING; i++) {
      RealVector slope = new ArrayRealVector(energy.gradient(point.toArray()));
      if (slope.getNorm() < BALANCED_N) {
        return point.toArray();
      }
      RealVector step =
          new QRDecomposition(energy.curvature(point.toArray()))
              .getSolver()
              .solve(slope)
              .mapMultiply(-1);
      point = point.add(step.mapMultiply(lowestAlong(point, step)));
    }
    // On the brink of rocking from one wheel to the opposite one the energy is all but flat: the
    // loads
    // are known well enough there, only the attitude is not.
    if (new ArrayRealVector(energy.gradient(point.toArray())).getNorm() < NEAR_N) {
      return point.toArray();
    }
    throw new IllegalStateException(
        "no balance found at steer " + steerDeg + " and lateral acceleration " + lateralG);
  }

  private double lowestAlong(RealVector point, RealVector step) {
    UnivariateFunction slope =
        t ->
            new ArrayRealVector(energy.gradient(point.add(step.mapMultiply(t)).toArray()))
                .dotProduct(step);
    if (slope.value(0) >= 0 || slope.value(1) <= 0) {
      return 1;
    }
    // A step may be long where two wheels all but lift, so its share is found to the last digit.
    return new BracketingNthOrderBrentSolver(LAST_DIGIT, LAST_DIGIT, LAST_DIGIT, 5)
        .solve(MOST_EVALUATIONS, slope, 0, 1);
  }
}
