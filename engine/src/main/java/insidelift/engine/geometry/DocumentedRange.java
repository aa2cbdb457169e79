package insidelift.engine.geometry;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The kart geometries that are documented, as a grid to check a claim over. Caster: published
 * baselines run from about 8 to over 20°. Hub offset: from the calibrated 75 mm to the 160 mm of
 * worked examples. Camber: to the 2° run in the rain (common practice). The other spans are
 * provisional. Steer and lateral acceleration span a fast bend to a hairpin, up to 1.2 g
 * (provisional).
 */
final class DocumentedRange {

  private static final Map<Dimension, double[]> VALUES =
      Map.of(
          Dimension.CASTER, new double[] {8, 12.8, 20},
          Dimension.KINGPIN_INCLINATION, new double[] {2, 6.5, 12},
          Dimension.CAMBER, new double[] {-1, 2},
          Dimension.HUB_OFFSET, new double[] {75, 110, 160},
          Dimension.FRAME_STIFFNESS, new double[] {100, 300},
          Dimension.CG_HEIGHT, new double[] {220, 303},
          Dimension.FRONT_SHARE, new double[] {0.40, 0.46});

  static final double[] STEERS_DEG = {5, 15, 30};
  static final double[] LATERAL_G = {0, 0.4, 0.8, 1.2};

  private DocumentedRange() {}

  /** Every kart of the grid; what is not varied is typical. */
  static List<KartGeometry> karts() {
    List<KartGeometry> karts = List.of(KartGeometry.typical());
    for (Map.Entry<Dimension, double[]> varied : new EnumMap<>(VALUES).entrySet()) {
      List<KartGeometry> more = new ArrayList<>();
      for (KartGeometry kart : karts) {
        for (double value : varied.getValue()) {
          more.add(kart.with(varied.getKey(), value));
        }
      }
      karts = more;
    }
    return karts;
  }
}
