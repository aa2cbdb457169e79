package insidelift.engine.geometry.plausible;

import insidelift.engine.geometry.kart.Dimension;
import insidelift.engine.geometry.kart.KartGeometry;
import java.util.Map;

/**
 * How far the measures of karts lie apart where nobody measured them, and how far a measure that
 * was taken may be off. A judgement: every span is provisional unless a source is named with the
 * measure in {@link Dimension}. The spans are an adult's; a smaller kart has the same span, in
 * proportion, about its own typical measure.
 */
final class Spread {

  /** How far the drivers' ways of taking a typical corner lie apart, half the span. */
  static final double STEER_OFF_DEG = 1.5;

  static final double LATERAL_OFF_G = 0.06;
  static final double LONGITUDINAL_OFF_G = 0.1;

  private static final double REAR_TYRE_LEAST = 0.8;
  private static final double REAR_TYRE_MOST = 1.35;

  private Spread() {}

  /**
   * One plausible value of a measure.
   *
   * @param at where in its span, 0 to 1
   * @param drawn what was drawn before, which holds the wheelbase and the front tyre
   */
  static double draw(
      KartGeometry kart, Dimension dimension, double at, Map<Dimension, Double> drawn) {
    double value =
        kart.isTypical(dimension)
            ? unmeasured(kart, dimension, at, drawn)
            : kart.value(dimension) + error(kart, dimension) * (2 * at - 1);
    double least = dimension.least();
    if (dimension == Dimension.FRONT_TRACK || dimension == Dimension.REAR_TRACK) {
      least = KartGeometry.leastTrackMm(drawn.get(Dimension.WHEELBASE));
    }
    return Math.max(least, Math.min(dimension.most(), value));
  }

  private static double unmeasured(
      KartGeometry kart, Dimension dimension, double at, Map<Dimension, Double> drawn) {
    double ratio = kart.value(dimension) / dimension.typical();
    return switch (dimension) {
      case CASTER -> even(at, 10, 22);
      case KINGPIN_INCLINATION -> even(at, 6, 13);
      case CAMBER -> even(at, -1, 1);
      case WHEEL_RADIUS -> ratio * even(at, 124, 136);
      case HUB_OFFSET -> ratio * even(at, 105, 170);
      case WHEELBASE -> ratio * even(at, 1035, 1068);
      case FRONT_TRACK -> ratio * even(at, 960, 1100);
      case REAR_TRACK -> ratio * even(at, 1130, 1210);
      case MASS -> ratio * even(at, 140, 185);
      case FRONT_SHARE -> even(at, 0.385, 0.45);
      case CG_HEIGHT -> ratio * triangular(at, 215, 250, 300);
      // A height given alone is the whole height already; see KartSize.
      case OVERTURN -> kart.value(dimension) == 0 ? even(at, -5, 5) : even(at, 5, 40);
      case FRAME_STIFFNESS -> ratio * logEven(at, 90, 300);
      case TYRE_STIFFNESS_FRONT -> ratio * logEven(at, 60, 160);
      case TYRE_STIFFNESS_REAR ->
          drawn.get(Dimension.TYRE_STIFFNESS_FRONT) * even(at, REAR_TYRE_LEAST, REAR_TYRE_MOST);
      case ROLL_SHARE_FRONT -> even(at, 0.15, 0.45);
    };
  }

  /** How far a measure that was given may be off, in its unit; provisional. */
  private static double error(KartGeometry kart, Dimension dimension) {
    return switch (dimension) {
      case CASTER, KINGPIN_INCLINATION -> 1;
      case CAMBER -> 0.2;
      case WHEEL_RADIUS, MASS -> 1;
      case HUB_OFFSET -> 6;
      case WHEELBASE, FRONT_TRACK, REAR_TRACK -> 3;
      case FRONT_SHARE -> 0.005;
      case CG_HEIGHT -> 20;
      case OVERTURN -> 5;
      case FRAME_STIFFNESS, TYRE_STIFFNESS_FRONT, TYRE_STIFFNESS_REAR ->
          0.1 * kart.value(dimension);
      case ROLL_SHARE_FRONT -> 0.03;
    };
  }

  private static double even(double at, double least, double most) {
    return least + at * (most - least);
  }

  private static double logEven(double at, double least, double most) {
    return least * Math.pow(most / least, at);
  }

  private static double triangular(double at, double least, double peak, double most) {
    double turns = (peak - least) / (most - least);
    return at < turns
        ? least + Math.sqrt(at * (most - least) * (peak - least))
        : most - Math.sqrt((1 - at) * (most - least) * (most - peak));
  }
}
