package insidelift.engine.logbook.entry;

import java.util.Objects;
import java.util.Optional;

/**
 * Says what an earlier record should have said. The earlier one stays where it is; of several
 * corrections of one record the last counts.
 *
 * @param of the number of the record that is corrected; never a correction
 * @param now what it should have said, of the same kind; empty to withdraw the record
 * @param reason why, at most 2,000 characters
 */
public record Correction(int of, Optional<Entry> now, String reason) implements Entry {

  /**
   * @throws RefusedEntryException if the reason is missing or too long, or a correction is put in
   *     place of the record
   */
  public Correction {
    Objects.requireNonNull(now, "now");
    if (now.filter(Correction.class::isInstance).isPresent()) {
      throw new RefusedEntryException(
          "correction", "a correction cannot stand in for another record");
    }
    if (reason.isBlank()) {
      throw new RefusedEntryException("correction", "a reason is missing");
    }
    LogLimits.text("correction", reason);
  }

  /** The record put right. */
  public static Correction of(int record, Entry now, String reason) {
    return new Correction(record, Optional.of(now), reason);
  }

  /** The record taken back altogether. */
  public static Correction withdrawn(int record, String reason) {
    return new Correction(record, Optional.empty(), reason);
  }
}
