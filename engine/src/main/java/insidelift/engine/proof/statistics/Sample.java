package insidelift.engine.proof.statistics;

import java.util.Arrays;

/** Plain statistics of one sample of numbers, in the unit of the sample. */
public final class Sample {

  private Sample() {}

  /** The arithmetic mean, corrected once for rounding; NaN for no values. */
  public static double mean(double[] values) {
    double first = Arrays.stream(values).sum() / values.length;
    double rest = 0;
    for (double value : values) {
      rest += value - first;
    }
    return first + rest / values.length;
  }

  /** The standard deviation with n − 1; NaN for fewer than two values. */
  static double standardDeviation(double[] values) {
    double mean = mean(values);
    double squares = 0;
    for (double value : values) {
      squares += (value - mean) * (value - mean);
    }
    return Math.sqrt(squares / (values.length - 1.0));
  }

  /** The middle value, or the mean of the middle two; NaN for no values. */
  public static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return medianOfSorted(sorted);
  }

  /** The median of values that are already in order. */
  static double medianOfSorted(double[] sorted) {
    int n = sorted.length;
    if (n == 0) {
      return Double.NaN;
    }
    return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
  }

  /** The median distance from the median, unscaled (Hampel 1974); NaN for no values. */
  public static double medianDeviation(double[] values) {
    double median = median(values);
    return median(Arrays.stream(values).map(value -> Math.abs(value - median)).toArray());
  }
}
