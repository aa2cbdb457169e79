package insidelift.engine.geometry.kart;

import org.hipparchus.analysis.MultivariateFunction;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunctionGradient;
import org.hipparchus.optim.nonlinear.scalar.gradient.NonLinearConjugateGradientOptimizer;
import org.hipparchus.optim.nonlinear.scalar.gradient.NonLinearConjugateGradientOptimizer.Formula;

/**
 * The same kart on the ground as Hipparchus finds it, by conjugate gradients (Polak and Ribière) on
 * the potential energy, without a thought about which wheels stand.
 */
final class LeastEnergy {

  /** Out of balance by less than this, N, is near the minimum. */
  private static final double NEAR_N = 1e-6;

  private static final double STALLED_MM = 1e-9;
  private static final double LINE_ACCURACY = 1e-12;
  private static final int MOST_EVALUATIONS = 100_000;

  private final double[] stiffness;
  private final double[] wheelHeight;
  private final double[] push;
  private final double[] twist;
  private final double twistStiffness;

  LeastEnergy(LoadModel kart) {
    stiffness = kart.stiffness;
    wheelHeight = kart.wheelHeight;
    push = kart.push;
    twist = kart.twist;
    twistStiffness = kart.twistStiffness;
  }

  /** The energy, N·mm, apart from a constant. */
  double value(double[] corners) {
    double angle = twistRad(corners);
    double energy = twistStiffness * angle * angle / 2;
    for (int i = 0; i < corners.length; i++) {
      double pressed = Math.max(0, squeeze(corners, i));
      energy += stiffness[i] * pressed * pressed / 2 - push[i] * corners[i];
    }
    return energy;
  }

  /** The slope of the energy, N: what is still out of balance at each corner. */
  double[] slope(double[] corners) {
    double moment = twistStiffness * twistRad(corners);
    double[] slope = new double[corners.length];
    for (int i = 0; i < corners.length; i++) {
      slope[i] = moment * twist[i] - stiffness[i] * Math.max(0, squeeze(corners, i)) - push[i];
    }
    return slope;
  }

  /** The heights of the corners, mm, that the optimiser ends at. */
  double[] corners() {
    double[] start = new double[push.length];
    RealMatrix curvature = new Array2DRowRealMatrix(start.length, start.length);
    for (int i = 0; i < start.length; i++) {
      start[i] = -wheelHeight[i] + push[i] / stiffness[i];
      for (int j = 0; j < start.length; j++) {
        curvature.setEntry(i, j, twistStiffness * twist[i] * twist[j]);
      }
      curvature.addToEntry(i, i, stiffness[i]);
    }
    DecompositionSolver parabola = new QRDecomposition(curvature).getSolver();
    MultivariateFunction value = this::value;
    return new NonLinearConjugateGradientOptimizer(
            Formula.POLAK_RIBIERE,
            (iteration, previous, current) ->
                new ArrayRealVector(slope(current.getPoint())).getNorm() < NEAR_N
                    || new ArrayRealVector(previous.getPoint())
                            .getDistance(new ArrayRealVector(current.getPoint()))
                        < STALLED_MM,
            LINE_ACCURACY,
            LINE_ACCURACY,
            1,
            (point, slope) -> parabola.solve(new ArrayRealVector(slope)).toArray())
        .optimize(
            new MaxEval(MOST_EVALUATIONS),
            GoalType.MINIMIZE,
            new InitialGuess(start),
            new ObjectiveFunction(value),
            new ObjectiveFunctionGradient(this::slope))
        .getPoint();
  }

  private double squeeze(double[] corners, int corner) {
    return -corners[corner] - wheelHeight[corner];
  }

  private double twistRad(double[] corners) {
    double angle = 0;
    for (int i = 0; i < corners.length; i++) {
      angle += twist[i] * corners[i];
    }
    return angle;
  }
}
