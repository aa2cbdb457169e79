package insidelift.engine.logbook.entry;

import java.time.LocalDate;
import java.util.Objects;

/**
 * A day at a track.
 *
 * @param date the date, from 1960 to 2199
 * @param track the number of the track's record
 * @param note what the day was, such as a race or a practice; at most 2,000 characters
 */
public record DayEntry(LocalDate date, int track, String note) implements Entry {

  /** Karts have been raced since the late nineteen-fifties; an earlier year is a typing error. */
  private static final int FIRST_YEAR = 1960;

  private static final int LAST_YEAR = 2199;

  /**
   * @throws RefusedEntryException if the date or the note is out of range
   */
  public DayEntry {
    Objects.requireNonNull(date, "date");
    if (date.getYear() < FIRST_YEAR || date.getYear() > LAST_YEAR) {
      throw new RefusedEntryException(
          "date", date + " is not from " + FIRST_YEAR + " to " + LAST_YEAR);
    }
    LogLimits.text("day note", note);
  }
}
