package insidelift.engine.proof.statistics;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The shift between two samples: the median of all differences between a value of one and a value
 * of the other (Hodges &amp; Lehmann 1963, Ann. Math. Statist. 34:598).
 *
 * <p>The interval inverts the rank-sum test (Lehmann 1963, Ann. Math. Statist. 34:1507): with n·m
 * differences in order it runs from the K-th to the K-th from the end, where K is n·m/2 − z √(n·m
 * (n+m+1)/12) to the nearest whole number, the normal approximation to the rank-sum quantile.
 *
 * @param shift the shift of the second sample from the first
 * @param low the lower end of the interval
 * @param high the upper end
 * @param standardError the length of the interval over 2 z, Lehmann's estimate
 */
public record HodgesLehmann(double shift, double low, double high, double standardError) {

  /**
   * The estimate of the shift between two samples, with its interval.
   *
   * @param from the first sample, not empty
   * @param to the second, not empty
   * @param confidence the confidence of the interval, above 0 and below 1
   */
  public static HodgesLehmann of(double[] from, double[] to, double confidence) {
    double[] differences = new double[from.length * to.length];
    int next = 0;
    for (double a : from) {
      for (double b : to) {
        differences[next++] = b - a;
      }
    }
    Arrays.sort(differences);
    double pairs = differences.length;
    double z = NormalDistribution.of(0, 1).inverseSurvivalProbability((1 - confidence) / 2);
    double spread = Math.sqrt(pairs * (from.length + to.length + 1) / 12);
    int k = (int) Math.max(1, Math.round(pairs / 2 - z * spread));
    double low = differences[k - 1];
    double high = differences[differences.length - k];
    double shift = Sample.medianOfSorted(differences);
    return new HodgesLehmann(shift, low, high, (high - low) / (2 * z));
  }
}
