package insidelift.engine.logbook.entry;

import java.time.LocalDate;
import java.util.Objects;

/**
 * One answer of a trainee to one card or lesson.
 *
 * @param trainee the name the trainee goes by, at most 80 characters
 * @param card the id of what was answered, at most 60 characters
 * @param quality how well, from 0 (nothing came) to 5 (at once)
 * @param day the day on which it was answered
 */
public record ReviewEntry(String trainee, String card, int quality, LocalDate day)
    implements Entry {

  /** The best quality of an answer. */
  public static final int BEST = 5;

  /**
   * @throws RefusedEntryException if a part is out of its range
   */
  public ReviewEntry {
    LogLimits.name("trainee", trainee);
    LogLimits.word("card", card);
    LogLimits.number("quality", quality, 0, BEST, "");
    Objects.requireNonNull(day, "day");
  }
}
