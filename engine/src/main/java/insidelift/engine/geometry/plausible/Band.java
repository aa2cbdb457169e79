package insidelift.engine.geometry.plausible;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * What a quantity is over the karts that are plausible: its 5th, 50th and 95th percentile, in the
 * unit of the quantity. Infinite where that many karts have no such value, such as a lift-off.
 */
public record Band(double low, double mid, double high) {

  /** Nothing can be said. */
  static final Band NONE = new Band(Double.NaN, Double.NaN, Double.NaN);

  private static final double LOW = 0.05;
  private static final double MID = 0.5;
  private static final double HIGH = 0.95;

  /**
   * The band of values that do not all count alike.
   *
   * @param weights as many as values, not negative, not all nought
   */
  static Band of(double[] values, double[] weights) {
    int[] order =
        IntStream.range(0, values.length)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> values[i]))
            .mapToInt(Integer::intValue)
            .toArray();
    double all = 0;
    for (double weight : weights) {
      all += weight;
    }
    return new Band(
        percentile(values, weights, order, LOW * all),
        percentile(values, weights, order, MID * all),
        percentile(values, weights, order, HIGH * all));
  }

  private static double percentile(double[] values, double[] weights, int[] order, double wanted) {
    double passed = 0;
    for (int i : order) {
      passed += weights[i];
      if (passed >= wanted) {
        return values[i];
      }
    }
    return values[order[order.length - 1]];
  }

  double halfWidth() {
    return (high - low) / 2;
  }

  /** Writes the band under a key, null where it is infinite. */
  void put(ObjectNode into, String key) {
    ObjectNode node = into.putObject(key);
    put(node, "low", low);
    put(node, "mid", mid);
    put(node, "high", high);
  }

  /** Whether all three are numbers: a wheel that never lifts has none. */
  boolean isFinite() {
    return Double.isFinite(low) && Double.isFinite(mid) && Double.isFinite(high);
  }

  private static void put(ObjectNode node, String key, double value) {
    if (Double.isFinite(value)) {
      node.put(key, value);
    } else {
      node.putNull(key);
    }
  }
}
