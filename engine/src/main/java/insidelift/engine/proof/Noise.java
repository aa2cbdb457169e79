package insidelift.engine.proof;

import insidelift.engine.proof.statistics.Assumptions;
import insidelift.engine.proof.statistics.Autocorrelation;
import insidelift.engine.proof.statistics.Carry;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * What blurs a comparison, and how sure a design makes it nevertheless.
 *
 * @param lapVariance variance of one lap around its run, as if laps were independent, in s²
 * @param rho the autocorrelation to reckon with, from 0 to 0.8
 * @param medianSlope the slope within runs as measured, in seconds a lap
 * @param fullDrift the drift in seconds from the run before to the return run, measured or expected
 */
record Noise(double lapVariance, double rho, double medianSlope, double fullDrift) {

  /** Fewer degrees of freedom than this would say nothing at any shift. */
  private static final double FEWEST_DEGREES = 2;

  private double factor() {
    return Autocorrelation.varianceFactor(rho);
  }

  Trend trend(Design design) {
    return Trend.drawnIn(medianSlope, lapVariance * factor(), design.placeSpread());
  }

  /**
   * The standard error of the shift in seconds: chance with its autocorrelation; the error of the
   * slope where the runs are not counted at the same place; and the drift between runs.
   *
   * <p>Without a return run the slope b (variance v) carries over D laps by the unknown share φ:
   * variance of φ b D = E(φ)² D² v + var(φ) D² (b² + v). With one, the drift between the outer runs
   * is known and only the place in time of the run between them is not.
   */
  double standardError(Design design) {
    Trend trend = trend(design);
    double b = trend.perLap();
    double v = trend.variance();
    double variance = lapVariance * factor() * design.sampling();
    if (design.hasReturn()) {
      variance += square(design.mismatch()) * v;
      variance += square(Assumptions.PLACE_SD * fullDrift);
      variance += square(Assumptions.PAUSE_SD_WITH_RETURN);
    } else {
      Carry carry = Carry.of(b);
      variance += square(design.mismatch() + carry.mean() * design.toAfter()) * v;
      variance += square(carry.deviation() * design.toAfter()) * (b * b + v);
      variance += square(Assumptions.HIDDEN_SLOPE_SD * design.toAfter());
      variance += square(Assumptions.PAUSE_SD);
    }
    return Math.sqrt(variance);
  }

  /** Effective laps of so many. */
  double effective(double laps) {
    return laps / factor();
  }

  /** Half the length of the interval in seconds, by Student's t on the effective laps. */
  double margin(Design design) {
    double degrees = Math.max(FEWEST_DEGREES, effective(design.laps()) - design.runs() - 1);
    double t =
        TDistribution.of(degrees).inverseSurvivalProbability((1 - Assumptions.CONFIDENCE) / 2);
    return t * standardError(design);
  }

  /**
   * The chance that a design shows a true shift of this size: Φ((shift − margin)/standard error),
   * the usual normal approximation (Lehmann 2006, Nonparametrics, section 2.3).
   *
   * @param shift its size in seconds, not negative
   */
  double power(double shift, Design design) {
    double beyond = (shift - margin(design)) / standardError(design);
    return NormalDistribution.of(0, 1).cumulativeProbability(beyond);
  }

  private static double square(double x) {
    return x * x;
  }
}
