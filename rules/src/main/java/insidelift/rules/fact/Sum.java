package insidelift.rules.fact;

/**
 * What a move is worth.
 *
 * @param lever a lever's id
 * @param direction which way
 * @param gain the sum of its parts, with the loss of a wrong trial of disputed claims capped
 */
public record Sum(String lever, String direction, int gain) {

  /** What a wrong trial of a disputed claim costs: one undo. Provisional. */
  public static final int WRONG_TRIAL = 4;

  /** The sum of what nobody disputes, of what a camp promises, and of what another denies. */
  public static Sum of(
      String lever, String direction, Number sure, Number promised, Number denied) {
    int loss = Math.max(-WRONG_TRIAL, denied.intValue());
    return new Sum(lever, direction, sure.intValue() + promised.intValue() + loss);
  }
}
