package insidelift.engine.training.card;

import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.entry.AttemptEntry;
import insidelift.engine.logbook.entry.Entry;
import insidelift.engine.logbook.entry.ReviewEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.LogbookWriter;
import insidelift.engine.logbook.file.Notice;
import insidelift.engine.logbook.file.Numbered;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/**
 * What trainees answered and tried: a logbook of its own in the folder {@code training} of the data
 * folder, only ever added to. Names are compared whatever the case of their letters.
 */
public final class StudyLog {

  private static final String FOLDER = "training";

  private final Path folder;

  /** The log below a data folder, which need not exist yet. */
  public StudyLog(Path data) {
    this.folder = data.resolve(FOLDER);
  }

  /**
   * A trainee's name as the log takes it.
   *
   * @throws IllegalArgumentException if it takes no such name; the message says why
   */
  public static String name(String trainee) {
    return new ReviewEntry(trainee.strip(), "name", 0, LocalDate.EPOCH).trainee();
  }

  /**
   * What was answered by a trainee.
   *
   * @throws LogbookProblem if the log cannot be read
   */
  public List<ReviewEntry> reviews(String trainee) throws LogbookProblem {
    return Logbook.read(folder).reviews().stream()
        .map(Numbered::entry)
        .filter(review -> same(review.trainee(), trainee))
        .toList();
  }

  /**
   * The attempts of a trainee, in order.
   *
   * @throws LogbookProblem if the log cannot be read
   */
  public List<Numbered<AttemptEntry>> attempts(String trainee) throws LogbookProblem {
    return attempts().stream().filter(attempt -> same(attempt.entry().trainee(), trainee)).toList();
  }

  /**
   * All attempts, in order; the number of a record is what it is replayed by.
   *
   * @throws LogbookProblem if the log cannot be read
   */
  public List<Numbered<AttemptEntry>> attempts() throws LogbookProblem {
    return Logbook.read(folder).attempts();
  }

  /**
   * What was found wrong with the file; empty if nothing.
   *
   * @throws LogbookProblem if the log cannot be read
   */
  public List<Notice> notices() throws LogbookProblem {
    return Logbook.read(folder).notices();
  }

  /**
   * Adds an answer or an attempt, and returns its number when it is on the disk.
   *
   * @throws LogbookProblem if the disk refuses or another program is writing
   */
  public int add(Entry entry) throws LogbookProblem {
    try (LogbookWriter writer = LogbookWriter.open(folder)) {
      return writer.append(entry);
    }
  }

  private static boolean same(String one, String other) {
    return one.strip().equalsIgnoreCase(other.strip());
  }
}
