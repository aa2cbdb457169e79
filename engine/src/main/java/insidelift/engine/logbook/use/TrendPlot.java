package insidelift.engine.logbook.use;

import insidelift.engine.logbook.entry.Plain;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.file.Numbered;
import insidelift.engine.logbook.learning.SetupChange;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Lap times run by run in plain ASCII: {@code o} the middle lap of a dry run, {@code w} of one on
 * water, {@code .} the best lap; below, a new day and what was changed before the run.
 */
public final class TrendPlot {

  private static final int ROWS = 12;

  /** The label and the bar take 10 columns, so 70 are left. */
  private static final int MOST_RUNS = 70;

  private static final Set<String> ON_WATER = Set.of("damp", "wet", "standing");

  /** So that equal runs do not leave a scale without length; in seconds. */
  private static final double LEAST_SPAN = 0.2;

  private TrendPlot() {}

  /**
   * The plot of runs in the order driven; of more than 70 the last 70.
   *
   * @return lines of at most 80 columns
   */
  public static List<String> lines(List<Numbered<RunEntry>> all) {
    List<Numbered<RunEntry>> timed =
        all.stream().filter(run -> Flying.of(run.entry()).middle().isPresent()).toList();
    List<Numbered<RunEntry>> runs =
        timed.subList(Math.max(0, timed.size() - MOST_RUNS), timed.size());
    if (runs.isEmpty()) {
      return List.of("(no runs with lap times)");
    }
    int step = runs.size() * 2 <= MOST_RUNS ? 2 : 1;
    double quickest = Double.MAX_VALUE;
    double slowest = 0;
    for (Numbered<RunEntry> run : runs) {
      Flying flying = Flying.of(run.entry());
      quickest = Math.min(quickest, flying.best().orElseThrow());
      slowest = Math.max(slowest, flying.middle().orElseThrow());
    }
    double span = Math.max(LEAST_SPAN, slowest - quickest);
    char[][] field = new char[ROWS][(runs.size() - 1) * step + 1];
    for (char[] row : field) {
      Arrays.fill(row, ' ');
    }
    for (int i = 0; i < runs.size(); i++) {
      RunEntry run = runs.get(i).entry();
      Flying flying = Flying.of(run);
      field[row(flying.best().orElseThrow(), quickest, span)][i * step] = '.';
      field[row(flying.middle().orElseThrow(), quickest, span)][i * step] = mark(run);
    }
    List<String> lines = new ArrayList<>();
    for (int row = 0; row < ROWS; row++) {
      double seconds = quickest + span * (ROWS - 1 - row) / (ROWS - 1);
      lines.add(Plain.right(Plain.fixed(seconds, 2), 8) + " |" + trimmed(field[row]));
    }
    lines.add("     day |" + trimmed(days(runs, step)));
    lines.add("  change |" + trimmed(changes(runs, step)));
    lines.add(
        "Runs %d to %d, seconds: o middle lap, w on water, . best lap; d a new day;"
            .formatted(runs.get(0).number(), runs.get(runs.size() - 1).number()));
    lines.add("changed: c camber less, C camber more, k caster less, K caster more, * other.");
    return List.copyOf(lines);
  }

  private static int row(double seconds, double quickest, double span) {
    return ROWS - 1 - (int) Math.round((seconds - quickest) / span * (ROWS - 1));
  }

  private static char mark(RunEntry run) {
    return run.situation().answer("water").filter(ON_WATER::contains).isPresent() ? 'w' : 'o';
  }

  private static char[] days(List<Numbered<RunEntry>> runs, int step) {
    char[] marks = blank(runs, step);
    for (int i = 0; i < runs.size(); i++) {
      if (i == 0 || runs.get(i).entry().day() != runs.get(i - 1).entry().day()) {
        marks[i * step] = 'd';
      }
    }
    return marks;
  }

  private static char[] changes(List<Numbered<RunEntry>> runs, int step) {
    char[] marks = blank(runs, step);
    for (int i = 1; i < runs.size(); i++) {
      RunEntry before = runs.get(i - 1).entry();
      RunEntry after = runs.get(i).entry();
      if (before.kart() == after.kart()) {
        marks[i * step] = letter(SetupChange.between(before, after));
      }
    }
    return marks;
  }

  private static char letter(Optional<String> change) {
    return switch (change.orElse(SetupChange.NONE)) {
      case SetupChange.NONE -> ' ';
      case "camber-less" -> 'c';
      case "camber-more" -> 'C';
      case "caster-less" -> 'k';
      case "caster-more" -> 'K';
      default -> '*';
    };
  }

  private static char[] blank(List<Numbered<RunEntry>> runs, int step) {
    char[] marks = new char[(runs.size() - 1) * step + 1];
    Arrays.fill(marks, ' ');
    return marks;
  }

  private static String trimmed(char[] row) {
    return new String(row).stripTrailing();
  }
}
