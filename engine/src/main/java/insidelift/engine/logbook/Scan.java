package insidelift.engine.logbook;

import insidelift.shared.situation.CaseProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Reads the bytes of a logbook line by line and never gives up on the rest for the sake of one.
 * Only what follows the last line end can be torn: a line that has its end but fails its check was
 * written whole and damaged later.
 */
final class Scan {

  private static final String CHECK_FAILS = "its check does not match";

  /** Lines from which a second thread gains more than its start costs. */
  private static final int WORTH_SHARING = 500;

  /** Where a line stands, without its end, and whether its check is right. */
  private record Span(int from, int to, boolean intact) {}

  /** A line as read, or what is wrong with it. */
  private record Result(int number, Optional<Line> line, String damage) {}

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
    // Lines say nothing of each other until they are put together, so two cores can share them.
    IntStream rest = IntStream.range(1, spans.size());
    List<Result> results =
        (spans.size() < WORTH_SHARING ? rest : rest.parallel())
            .mapToObj(i -> result(i + 1, spans.get(i)))
            .toList();
    results.forEach(this::take);
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

  private Result result(int number, Span span) {
    if (!span.intact()) {
      return new Result(number, Optional.empty(), CHECK_FAILS);
    }
    try {
      Line line = LineFormat.read(file, span.from(), span.to());
      return line.number() == number
          ? new Result(number, Optional.of(line), "")
          : new Result(number, Optional.empty(), "it was written as line " + line.number());
    } catch (CaseProblem e) {
      return new Result(number, Optional.empty(), String.valueOf(e.getMessage()));
    }
  }

  private void take(Result result) {
    if (result.line().isEmpty()) {
      notices.add(new Notice.Damaged(result.number(), result.damage()));
      return;
    }
    Line line = result.line().get();
    Optional<String> misfit = records.misfit(line.entry());
    if (misfit.isPresent()) {
      notices.add(new Notice.DoesNotFit(result.number(), misfit.get()));
    } else {
      records.add(line);
    }
  }
}
