package insidelift.engine.geometry.plausible;

import insidelift.engine.geometry.kart.Corner;
import insidelift.engine.geometry.kart.Dimension;
import insidelift.engine.geometry.kart.KartGeometry;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.hipparchus.random.SobolSequenceGenerator;

/**
 * The karts that fit what is known of one: a fixed table of Sobol points over the spans of {@link
 * Spread}, in which a measure that was given replaces its span by its own error. No chance is in
 * it, so the same kart has the same bands everywhere.
 */
public final class PlausibleKarts {

  /** As many as meet the bands of 60,000 random karts within 6 N on the inside rear (derived). */
  static final int USUAL = 256;

  private static final int CORNER_COLUMNS = 4;

  private final List<PlausibleKart> karts;
  private final double[] weights;

  /**
   * Karts that do not count alike.
   *
   * @param weights how much each counts
   */
  PlausibleKarts(List<PlausibleKart> karts, double[] weights) {
    this.karts = List.copyOf(karts);
    this.weights = weights.clone();
  }

  /** The karts count alike. */
  PlausibleKarts(List<PlausibleKart> karts) {
    this(karts, alike(karts.size()));
  }

  List<PlausibleKart> karts() {
    return karts;
  }

  /** How much each kart counts, in their order. */
  double[] weights() {
    return weights.clone();
  }

  private static double[] alike(int size) {
    double[] weights = new double[size];
    Arrays.fill(weights, 1);
    return weights;
  }

  /** The usual number of karts that could be this one. */
  public static PlausibleKarts of(KartGeometry kart) {
    return of(kart, USUAL);
  }

  /** So many karts that could be this one. */
  static PlausibleKarts of(KartGeometry kart, int count) {
    Dimension[] dimensions = Dimension.values();
    SobolSequenceGenerator sobol = new SobolSequenceGenerator(dimensions.length + CORNER_COLUMNS);
    List<PlausibleKart> karts = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      double[] point = sobol.nextVector();
      // The points start at nought; half a step on, they lie in the middles of their cells.
      for (int column = 0; column < point.length; column++) {
        point[column] = (point[column] + 0.5 / count) % 1;
      }
      karts.add(kart(kart, point));
    }
    return new PlausibleKarts(karts);
  }

  private static PlausibleKart kart(KartGeometry kart, double[] point) {
    Map<Dimension, Double> drawn = new EnumMap<>(Dimension.class);
    int corner = 0;
    for (Dimension dimension : Dimension.values()) {
      drawn.put(dimension, Spread.draw(kart, dimension, point[corner], drawn));
      corner++;
    }
    return new PlausibleKart(
        new KartGeometry(drawn, Map.of()),
        Spread.STEER_OFF_DEG * (2 * point[corner] - 1),
        Spread.LATERAL_OFF_G * (2 * point[corner + 1] - 1),
        Spread.LONGITUDINAL_OFF_G * (2 * point[corner + 2] - 1),
        0.1 + 0.8 * point[corner + 3],
        0.05 + 0.45 * point[corner + 3]);
  }

  /** The band of what the karts have in every corner alike. */
  public Band ofKarts(ToDoubleFunction<KartGeometry> quantity) {
    return Band.of(
        karts.stream().mapToDouble(kart -> quantity.applyAsDouble(kart.kart())).toArray(), weights);
  }

  /** Every kart in a corner. */
  List<PlausibleKart.In> in(Corner corner) {
    return karts.stream().map(kart -> kart.in(kart.kart(), kart.takes(corner))).toList();
  }

  Band band(List<PlausibleKart.In> all, ToDoubleFunction<PlausibleKart.In> quantity) {
    return Band.of(all.stream().mapToDouble(quantity).toArray(), weights);
  }

  /** The share of the karts, by their weights, that are so. */
  double share(List<PlausibleKart.In> all, Predicate<PlausibleKart.In> which) {
    double so = 0;
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i];
      so += which.test(all.get(i)) ? weights[i] : 0;
    }
    return so / sum;
  }
}
