package insidelift.engine.training.card;

import java.time.LocalDate;

/**
 * How well one card is known, by the algorithm SM-2 (P. A. Wozniak, "Optimization of learning",
 * University of Technology in Poznan, 1990, section 3.2): the first interval is one day, the second
 * six, every further one the one before times the card's easiness factor, rounded up to whole days.
 * The factor begins at 2.5, changes with every answer by 0.1 - (5 - q) (0.08 + (5 - q) 0.02), where
 * q is the quality from 0 to 5, and never falls below 1.3. An answer below 3 is a lapse: the card
 * begins again with the first interval and keeps its factor.
 *
 * @param successes how many answers of 3 or more in a row
 * @param interval the days from the last answer that counted to the next; 0 for a new card
 * @param easiness the easiness factor, 1.3 or more
 * @param last the day of the last answer that counted; null for a new card
 * @param again whether the last answer of that day was below 4, so that the card comes back the
 *     same day until it is not
 */
public record Repetition(
    int successes, int interval, double easiness, LocalDate last, boolean again) {

  /** A card that nobody has seen. */
  public static final Repetition NEW = new Repetition(0, 0, 2.5, null, false);

  /** The least easiness factor. */
  public static final double LEAST_EASINESS = 1.3;

  /** An answer below this is a lapse. */
  public static final int PASSED = 3;

  /** An answer below this is asked again on the same day. */
  public static final int SURE = 4;

  private static final int BEST = 5;
  private static final int FIRST_DAYS = 1;
  private static final int SECOND_DAYS = 6;

  /** A century: beyond it a date means nothing, and no sum can overflow. */
  private static final int MOST_DAYS = 36_525;

  /** Whether it has never been answered. */
  public boolean isNew() {
    return last == null;
  }

  /**
   * The day on which it is to be asked next.
   *
   * @throws IllegalStateException if it is new: then any day will do
   */
  public LocalDate due() {
    if (isNew()) {
      throw new IllegalStateException("a new card is due on no day");
    }
    return again ? last : last.plusDays(interval);
  }

  /**
   * What it is after one more answer. A second answer on the same day only settles whether the card
   * comes back that day; a success before its day proves nothing yet and changes nothing.
   *
   * @param quality from 0 (nothing came) to 5 (at once)
   * @param day the day of the answer
   * @throws IllegalArgumentException if the quality is out of its range
   */
  public Repetition after(int quality, LocalDate day) {
    if (quality < 0 || quality > BEST) {
      throw new IllegalArgumentException("quality " + quality + " is not from 0 to " + BEST);
    }
    if (!isNew() && !day.isAfter(last)) {
      return new Repetition(successes, interval, easiness, last, quality < SURE);
    }
    if (quality < PASSED) {
      return new Repetition(0, FIRST_DAYS, easiness, day, true);
    }
    if (!isNew() && day.isBefore(last.plusDays(interval))) {
      return new Repetition(successes, interval, easiness, last, quality < SURE);
    }
    double missing = BEST - quality;
    double easier = Math.max(LEAST_EASINESS, easiness + 0.1 - missing * (0.08 + missing * 0.02));
    int days =
        switch (successes) {
          case 0 -> FIRST_DAYS;
          case 1 -> SECOND_DAYS;
          default -> (int) Math.min(MOST_DAYS, Math.ceil(interval * easier - 1e-9));
        };
    return new Repetition(successes + 1, days, easier, day, quality < SURE);
  }
}
