package insidelift.engine.logbook.entry;

import insidelift.shared.Direction;
import insidelift.shared.Lever;
import java.util.Objects;

/**
 * A piece of advice given before a run, and what was done about it.
 *
 * @param lever the lever
 * @param direction which way
 * @param degrees how far, without sign, from 0 to 40
 * @param claim the id of the note it stands on
 * @param taken whether the run was driven with it
 * @param reason why; must be told where it was declined
 */
public record AdviceTaken(
    Lever lever, Direction direction, double degrees, String claim, boolean taken, String reason) {

  /**
   * @throws RefusedEntryException if the degrees are out of range, the claim is missing, or advice
   *     was declined without a reason
   */
  public AdviceTaken {
    Objects.requireNonNull(lever, "lever");
    Objects.requireNonNull(direction, "direction");
    LogLimits.number("advice degrees", degrees, 0, LogLimits.MOST_DEGREES, "degrees");
    LogLimits.word("advice claim", claim);
    if (!taken && reason.isBlank()) {
      throw new RefusedEntryException("advice", "say why it was declined");
    }
    LogLimits.text("advice reason", reason);
  }
}
