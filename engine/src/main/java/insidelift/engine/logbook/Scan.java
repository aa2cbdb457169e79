package insidelift.engine.logbook;

import insidelift.shared.situation.CaseProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads the bytes of a logbook line by line and never gives up on the rest for the sake of one.
 * Only what follows the last line end can be torn: a line that has its end but fails its check was
 * written whole and damaged later.
 */
final class Scan {

  private final String shown;
  private final byte[] file;
  private final Records records = new Records();
  private final List<Notice> notices = new ArrayList<>();
  private int lines;
  private int whole;
  private boolean endMissing;

  private Scan(String shown, byte[] file) {
    this.shown = shown;
    this.file = file;
  }

  /**
   * Reads a whole file.
   *
   * @param shown how messages call the file
   * @throws LogbookProblem if it is no logbook, or one of a newer version
   */
  static Scan of(String shown, byte[] file) throws LogbookProblem {
    Scan scan = new Scan(shown, file);
    scan.run();
    return scan;
  }

  /** The records that could be read. */
  Records records() {
    return records;
  }

  /** What is wrong with whole lines. */
  List<Notice> notices() {
    return notices;
  }

  /** How many whole lines there are, damaged ones included. */
  int lines() {
    return lines;
  }

  /** How many bytes the whole lines take. */
  int whole() {
    return whole;
  }

  /** How many bytes of an unfinished record follow them. */
  int unfinished() {
    return file.length - whole;
  }

  /** Whether the last whole line lacks its line end alone. */
  boolean endMissing() {
    return endMissing;
  }

  private void run() throws LogbookProblem {
    int from = 0;
    while (from < file.length) {
      int end = from;
      while (end < file.length && file[end] != '\n') {
        end++;
      }
      boolean ended = end < file.length;
      // An editor that ends lines its own way must not cost a season.
      int to = end > from && file[end - 1] == '\r' ? end - 1 : end;
      boolean intact = LineFormat.intact(file, from, to);
      if (!ended && !intact) {
        return;
      }
      lines++;
      whole = ended ? end + 1 : end;
      endMissing = !ended;
      if (lines == 1) {
        first(from, to, intact);
      } else {
        line(from, to, intact);
      }
      from = end + 1;
    }
  }

  private void first(int from, int to, boolean intact) throws LogbookProblem {
    if (!intact) {
      if (!secondIntact()) {
        throw new LogbookProblem(shown + " is no logbook; nothing in it was changed");
      }
      notices.add(new Notice.Damaged(1, "its check does not match"));
      return;
    }
    int version;
    try {
      version = LineFormat.version(file, from, to);
    } catch (CaseProblem e) {
      throw new LogbookProblem(shown + " is no logbook; nothing in it was changed", e);
    }
    if (version != LineFormat.VERSION) {
      throw new LogbookProblem(
          "%s was written by a newer Insidelift (format %d, this one knows %d); nothing in it was changed"
              .formatted(shown, version, LineFormat.VERSION));
    }
  }

  /** Whether the line after the first one is a logbook's; then the first is only damaged. */
  private boolean secondIntact() {
    int end = whole;
    while (end < file.length && file[end] != '\n') {
      end++;
    }
    int to = end > whole && file[end - 1] == '\r' ? end - 1 : end;
    return LineFormat.intact(file, whole, to);
  }

  private void line(int from, int to, boolean intact) {
    if (!intact) {
      notices.add(new Notice.Damaged(lines, "its check does not match"));
      return;
    }
    try {
      Line line = LineFormat.read(file, from, to);
      if (line.number() != lines) {
        notices.add(new Notice.Damaged(lines, "it was written as line " + line.number()));
        return;
      }
      Optional<String> misfit = records.misfit(line.entry());
      if (misfit.isPresent()) {
        notices.add(new Notice.DoesNotFit(lines, misfit.get()));
      } else {
        records.add(line);
      }
    } catch (CaseProblem e) {
      notices.add(new Notice.Damaged(lines, String.valueOf(e.getMessage())));
    }
  }
}
