package insidelift.engine.geometry.plausible;

import insidelift.engine.geometry.kart.Dimension;
import insidelift.engine.geometry.kart.LoadModel;
import java.util.function.ToDoubleFunction;

/**
 * One reading of the protocol for fitting a kart, and what a plausible kart would show there.
 *
 * @param step which step of the protocol
 * @param seen what was read, in the unit of the step
 * @param error how far it may be off, one standard deviation, in the same unit
 * @param shown what a kart shows
 */
public record Measurement(
    Step step, double seen, double error, ToDoubleFunction<PlausibleKart> shown) {

  /** Scales stick by about 7 N a reading (provisional); a change is the difference of two. */
  static final double TWO_READINGS_N = 10;

  private static final double MARK_DEG = 1;
  private static final double SEEN_LIFT_G = 0.1;

  /** The steer at a lift-off seen on track is known to about so many times a usual spread. */
  private static final double STEER_SPREADS = 2;

  /** The steps that the geometry alone does not hold, as they are keyed and called. */
  enum Step {
    /** A board under the left front wheel. */
    BOARD("board", "the board under one wheel"),
    /** Steered on the scales. */
    STEERED("steered", "the steering turned on the scales"),
    /** The rear raised. */
    RAISED("raised", "the rear raised"),
    /** A lift-off that somebody saw on track. */
    LIFT_OFF("liftOff", "the lift-off seen on track");

    private final String key;
    private final String words;

    Step(String key, String words) {
      this.key = key;
      this.words = words;
    }

    String key() {
      return key;
    }

    String words() {
      return words;
    }
  }

  /** By how much the left rear got lighter, N, with a board of so many mm under the left front. */
  static Measurement board(double boardMm, double lighterN) {
    return new Measurement(
        Step.BOARD,
        lighterN,
        TWO_READINGS_N,
        kart -> standing(kart) - LoadModel.onBoardN(kart.kart(), boardMm));
  }

  /** By how much the left rear got lighter, N, steered to the left by so many degrees. */
  static Measurement steered(double steerDeg, double lighterN) {
    return new Measurement(
        Step.STEERED,
        lighterN,
        Math.hypot(TWO_READINGS_N, lighterN * MARK_DEG / steerDeg),
        kart -> standing(kart) - LoadModel.loads(kart.kart(), steerDeg, 0, 0).rearInnerN());
  }

  /**
   * By how much the front got heavier, N, with the rear axle raised by so many mm: W · (h − r) ·
   * tan(angle) / L (statics).
   */
  static Measurement raised(double raisedMm, double heavierN) {
    return new Measurement(Step.RAISED, heavierN, TWO_READINGS_N, kart -> raisedN(kart, raisedMm));
  }

  private static double raisedN(PlausibleKart kart, double raisedMm) {
    double wheelbase = kart.kart().value(Dimension.WHEELBASE);
    double above =
        kart.kart().value(Dimension.CG_HEIGHT) - kart.kart().value(Dimension.WHEEL_RADIUS);
    return kart.kart().weightN() * above * Math.tan(Math.asin(raisedMm / wheelbase)) / wheelbase;
  }

  /** The lateral g at which somebody saw the inside rear leave the ground. */
  static Measurement liftOff(double steerDeg, double lateralG, double longitudinalG) {
    return new Measurement(
        Step.LIFT_OFF,
        lateralG,
        SEEN_LIFT_G,
        kart ->
            LoadModel.liftOffG(
                    kart.kart(),
                    Math.max(0, steerDeg + STEER_SPREADS * kart.steerOffDeg()),
                    longitudinalG)
                .orElse(kart.kart().tipsOverAtG(longitudinalG)));
  }

  private static double standing(PlausibleKart kart) {
    return (kart.kart().weightN() - kart.kart().frontAxleN(0)) / 2;
  }

  /** How far off a kart is, in standard deviations. */
  double off(PlausibleKart kart) {
    return (shown.applyAsDouble(kart) - seen) / error;
  }
}
