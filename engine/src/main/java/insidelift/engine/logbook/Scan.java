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

  private static final String CHECK_FAILS = "its check does not match";

  /** Where a line stands, without its end, and whether its check is right. */
  private record Span(int from, int to, boolean intact) {}

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
    List<Span> spans = spans();
    if (spans.isEmpty()) {
      return;
    }
    first(spans);
    for (int i = 1; i < spans.size(); i++) {
      take(i + 1, spans.get(i));
    }
  }

  /** The whole lines; what follows them is unfinished. */
  private List<Span> spans() {
    List<Span> spans = new ArrayList<>();
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
        break;
      }
      spans.add(new Span(from, to, intact));
      whole = ended ? end + 1 : end;
      endMissing = !ended;
      from = end + 1;
    }
    lines = spans.size();
    return spans;
  }

  private void first(List<Span> spans) throws LogbookProblem {
    Span first = spans.get(0);
    if (!first.intact()) {
      // Where the next line is a logbook's, the first is only damaged.
      if (spans.size() < 2 || !spans.get(1).intact()) {
        throw new LogbookProblem(shown + " is no logbook; nothing in it was changed");
      }
      notices.add(new Notice.Damaged(1, CHECK_FAILS));
      return;
    }
    int version;
    try {
      version = LineFormat.version(file, first.from(), first.to());
    } catch (CaseProblem e) {
      throw new LogbookProblem(shown + " is no logbook; nothing in it was changed", e);
    }
    if (version != LineFormat.VERSION) {
      throw new LogbookProblem(
          "%s was written by a newer Insidelift (format %d, this one knows %d); nothing in it was changed"
              .formatted(shown, version, LineFormat.VERSION));
    }
  }

  private void take(int number, Span span) {
    Optional<String> damage = span.intact() ? Optional.empty() : Optional.of(CHECK_FAILS);
    try {
      if (damage.isEmpty()) {
        damage = kept(number, LineFormat.read(file, span.from(), span.to()));
      }
    } catch (CaseProblem e) {
      damage = Optional.of(String.valueOf(e.getMessage()));
    }
    damage.ifPresent(what -> notices.add(new Notice.Damaged(number, what)));
  }

  /** Takes a line, or tells why it is not the one that belongs here. */
  private Optional<String> kept(int number, Line line) {
    if (line.number() != number) {
      return Optional.of("it was written as line " + line.number());
    }
    Optional<String> misfit = records.misfit(line.held());
    if (misfit.isPresent()) {
      notices.add(new Notice.DoesNotFit(number, misfit.get()));
    } else {
      records.add(line);
    }
    return Optional.empty();
  }
}
