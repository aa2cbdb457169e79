package insidelift.engine.proof.statistics;

import org.apache.commons.statistics.inference.AlternativeHypothesis;
import org.apache.commons.statistics.inference.DataDispersion;
import org.apache.commons.statistics.inference.MannWhitneyUTest;
import org.apache.commons.statistics.inference.TTest;

/**
 * The two textbook tests on the laps after and the laps they are compared with, drift taken out.
 * Both take laps as independent and the drift as known, so they are surer than the verdict; they
 * are shown for comparison and decide nothing.
 *
 * @param welch Welch's t
 * @param rankSum the rank sum
 */
public record ClassicTests(Welch welch, RankSum rankSum) {

  /**
   * Welch's t test (Welch 1947, Biometrika 34:28), two-sided.
   *
   * @param t the statistic, negative where the laps after are quicker; NaN where no lap varies
   * @param df the degrees of freedom after Satterthwaite
   * @param p the two-sided probability
   */
  public record Welch(double t, double df, double p) {

    static Welch of(double[] x, double[] y) {
      if (Sample.standardDeviation(x) == 0 && Sample.standardDeviation(y) == 0) {
        return new Welch(Double.NaN, Double.NaN, Double.NaN);
      }
      TTest.Result result = TTest.withDefaults().with(DataDispersion.HETEROSCEDASTIC).test(x, y);
      return new Welch(result.getStatistic(), result.getDegreesOfFreedom(), result.getPValue());
    }
  }

  /**
   * The rank-sum test (Wilcoxon 1945; Mann &amp; Whitney 1947), two-sided; exact for few laps
   * without ties, else the normal approximation with continuity correction.
   *
   * @param u the statistic of the laps after: in how many pairs they are the slower
   * @param p the two-sided probability
   */
  public record RankSum(double u, double p) {

    static RankSum of(double[] x, double[] y) {
      return of(x, y, AlternativeHypothesis.TWO_SIDED);
    }

    static RankSum of(double[] x, double[] y, AlternativeHypothesis alternative) {
      MannWhitneyUTest.Result result = MannWhitneyUTest.withDefaults().with(alternative).test(x, y);
      return new RankSum(result.getStatistic(), result.getPValue());
    }
  }

  public static ClassicTests of(double[] after, double[] reference) {
    return new ClassicTests(Welch.of(after, reference), RankSum.of(after, reference));
  }
}
