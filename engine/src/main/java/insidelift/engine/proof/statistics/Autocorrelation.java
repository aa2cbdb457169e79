package insidelift.engine.proof.statistics;

import java.util.List;

/** How much one lap resembles the next, and what that costs in laps. */
public final class Autocorrelation {

  /** Beyond this a run is a wandering, not laps around a level; the factor would be above 9. */
  private static final double HIGHEST = 0.8;

  private Autocorrelation() {}

  /**
   * Lag-1 autocorrelation of one series: Σ (xᵢ − x̄)(xᵢ₊₁ − x̄) / Σ (xᵢ − x̄)², as NIST certifies
   * it for its reference data (Box &amp; Jenkins 1976).
   *
   * @return from −1 to 1; 0 where the values do not vary
   */
  static double lag1(double[] values) {
    double mean = Sample.mean(values);
    double products = 0;
    double squares = 0;
    for (int i = 0; i < values.length; i++) {
      double off = values[i] - mean;
      squares += off * off;
      if (i + 1 < values.length) {
        products += off * (values[i + 1] - mean);
      }
    }
    return squares > 0 ? products / squares : 0;
  }

  /**
   * The same over several runs of residuals, where only laps driven one after the other make a
   * pair; for a single run without a gap it equals {@link #lag1}.
   *
   * @param runs the residuals of each run, around its own mean
   * @param places where in the run each lies, in laps
   */
  public static double pooled(List<double[]> runs, List<double[]> places) {
    double products = 0;
    double squares = 0;
    int pairs = 0;
    int values = 0;
    for (int r = 0; r < runs.size(); r++) {
      double[] x = runs.get(r);
      double[] at = places.get(r);
      double mean = Sample.mean(x);
      for (int i = 0; i < x.length; i++) {
        squares += (x[i] - mean) * (x[i] - mean);
        values++;
        if (i + 1 < x.length && at[i + 1] - at[i] == 1) {
          products += (x[i] - mean) * (x[i + 1] - mean);
          pairs++;
        }
      }
    }
    if (pairs == 0 || squares <= 0) {
      return 0;
    }
    return products / squares * (values - runs.size()) / pairs;
  }

  /**
   * The autocorrelation to reckon with. A short series shows too little by (1 + 3ρ)/n (Marriott
   * &amp; Pope 1954, Biometrika 41:390), which is put back. Two dozen laps hardly tell it, so it is
   * then drawn toward what is usual, as far as its error 1/√n (Bartlett 1946) asks: the posterior
   * mean of a normal prior. A negative rest is taken as none, since laps do not become better
   * evidence by alternating.
   *
   * @param lag1 as measured
   * @param runs how many runs it was measured over
   * @param laps how many laps
   * @return from 0 to 0.8
   */
  public static double toReckonWith(double lag1, int runs, int laps) {
    double unbiased = lag1 + runs * (1 + 3 * lag1) / laps;
    double prior = Assumptions.RHO_SD * Assumptions.RHO_SD;
    double error = 1.0 / laps;
    double drawn = (unbiased * prior + Assumptions.RHO_MEAN * error) / (prior + error);
    return Math.min(HIGHEST, Math.max(0, drawn));
  }

  /**
   * By what the variance of a mean grows: (1 + ρ)/(1 − ρ); laps over it are the effective laps
   * (Bayley &amp; Hammersley 1946, J. Roy. Statist. Soc. Suppl. 8:184).
   */
  public static double varianceFactor(double rho) {
    return (1 + rho) / (1 - rho);
  }
}
