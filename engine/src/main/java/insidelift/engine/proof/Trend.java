package insidelift.engine.proof;

import insidelift.engine.proof.laps.CleanRun;
import insidelift.engine.proof.statistics.Assumptions;
import insidelift.engine.proof.statistics.Sample;
import java.util.Arrays;
import java.util.List;

/**
 * The drift within runs, one slope for all of them: the median slope between any two laps of the
 * same run (Theil 1950; Sen 1968, J. Amer. Statist. Assoc. 63:1379).
 *
 * <p>A dozen laps hardly tell a slope, so it is drawn toward none as far as its error asks: with
 * the error e of the slope and the spread τ of real slopes, slope × τ²/(τ² + e²) with variance
 * e²τ²/(e² + τ²), the posterior of a normal prior. Its error follows that of least squares over the
 * efficiency 3/π of the estimate (Sen 1968).
 *
 * @param perLap seconds a lap; negative is getting quicker
 * @param variance the variance of it
 */
public record Trend(double perLap, double variance) {

  private static final double EFFICIENCY = 3 / Math.PI;

  /** The median slope in seconds a lap; 0 where no two laps share a run. */
  public static double medianSlope(List<CleanRun> runs) {
    double[] slopes =
        runs.stream()
            .flatMapToDouble(run -> Arrays.stream(slopes(run.places(), run.seconds())))
            .toArray();
    return slopes.length == 0 ? 0 : Sample.median(slopes);
  }

  private static double[] slopes(double[] places, double[] seconds) {
    int n = places.length;
    double[] slopes = new double[n * (n - 1) / 2];
    int next = 0;
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < n; j++) {
        slopes[next++] = (seconds[j] - seconds[i]) / (places[j] - places[i]);
      }
    }
    return slopes;
  }

  /**
   * The slope drawn toward none.
   *
   * @param medianSlope seconds a lap
   * @param lapVariance the variance of a lap around its run, autocorrelation included
   * @param placeSpread the sum of squared distances of the laps from the middle of their run
   */
  static Trend drawnIn(double medianSlope, double lapVariance, double placeSpread) {
    double prior = Assumptions.SLOPE_SD * Assumptions.SLOPE_SD;
    double error = lapVariance / placeSpread / EFFICIENCY;
    return new Trend(medianSlope * prior / (prior + error), prior * error / (prior + error));
  }
}
