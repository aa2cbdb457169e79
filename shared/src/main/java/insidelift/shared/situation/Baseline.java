package insidelift.shared.situation;

import java.util.Optional;

/**
 * A kart's own good setting for one condition.
 *
 * @param front its camber and caster
 * @param toe the toe of either side in millimetres at the rim, out being positive; if recorded
 */
public record Baseline(FrontEnd front, Optional<Toe> toe) {

  /**
   * The toe of both sides.
   *
   * @param left the left side's in millimetres, -20 to 20; out is positive
   * @param right the right side's
   */
  public record Toe(double left, double right) {}
}
