package insidelift.engine.logbook.entry;

import insidelift.shared.situation.Situation;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

/**
 * One case that a trainee worked on: what was hidden, and every move in order. What it was worth is
 * not written down: whoever replays it judges it by the rules of the day.
 *
 * @param trainee the name the trainee goes by, at most 80 characters
 * @param source where the case came from: its number, or the name of its file; at most 60
 *     characters
 * @param hidden what was true of the kart, the track and the driver
 * @param moves the moves in words, at most 200 of at most 60 characters
 * @param day the day on which it was finished
 */
public record AttemptEntry(
    String trainee, String source, Situation hidden, List<String> moves, LocalDate day)
    implements Entry {

  /** Moves of one attempt: each question twice, and some. */
  private static final int MOVES = 200;

  /**
   * @throws RefusedEntryException if a part is out of its range
   */
  public AttemptEntry {
    LogLimits.name("trainee", trainee);
    LogLimits.word("case", source);
    Objects.requireNonNull(hidden, "hidden");
    moves = List.copyOf(moves);
    if (moves.size() > MOVES) {
      throw new RefusedEntryException("moves", "there are more than " + MOVES);
    }
    moves.forEach(move -> LogLimits.word("move", move));
    Objects.requireNonNull(day, "day");
  }
}
