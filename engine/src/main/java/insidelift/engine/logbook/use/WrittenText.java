package insidelift.engine.logbook.use;

import insidelift.engine.disk.Disk;
import insidelift.engine.logbook.entry.BaselineEntry;
import insidelift.engine.logbook.entry.DayEntry;
import insidelift.engine.logbook.entry.Entry;
import insidelift.engine.logbook.entry.Plain;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.Numbered;
import insidelift.engine.logbook.json.EntryJson;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Says what is on disk now, once it is, and where. */
public final class WrittenText {

  private WrittenText() {}

  /** A kart, driver, track or day that was added, in lines of at most 80 columns. */
  public static List<String> added(Logbook book, Path folder, int number) {
    return lines(title(book, number) + " is on disk", folder);
  }

  /**
   * A run that was added.
   *
   * @param setupFrom the run that its set-up was taken from, if it was
   */
  public static List<String> added(
      Logbook book, Path folder, int number, Optional<Integer> setupFrom) {
    String from = setupFrom.map(run -> "; what was not told is as in run " + run).orElse("");
    return lines(title(book, number) + " is on disk" + from, folder);
  }

  /** A record that was corrected. */
  public static List<String> corrected(Logbook book, Path folder, int number) {
    return lines(
        title(book, number) + " is corrected on disk; what it said before stays in the file",
        folder);
  }

  /** A record that was withdrawn. */
  public static List<String> withdrawn(Path folder, int number) {
    return lines(
        "Record " + number + " is withdrawn on disk; what it said stays in the file", folder);
  }

  private static List<String> lines(String what, Path folder) {
    return Plain.wrapped(what + " (" + Disk.shown(folder.resolve(Logbook.FILE)) + ").", "  ");
  }

  private static String title(Logbook book, int number) {
    Optional<Numbered<RunEntry>> run = book.run(number);
    if (run.isPresent()) {
      return run(book, number, run.get().entry());
    }
    Optional<DayEntry> day = book.entry(number, DayEntry.class);
    if (day.isPresent()) {
      return "Day "
          + number
          + ", "
          + Plain.fullDay(day.get().date())
          + " at "
          + Plain.line(book.name(day.get().track()))
          + ",";
    }
    Optional<BaselineEntry> baseline = book.entry(number, BaselineEntry.class);
    if (baseline.isPresent()) {
      return "The %s setting of %s (record %d)"
          .formatted(
              baseline.get().condition(), Plain.line(book.name(baseline.get().kart())), number);
    }
    String kind = EntryJson.kind(book.entry(number, Entry.class).orElseThrow().getClass());
    return "The " + kind + " " + Plain.line(book.name(number)) + " (record " + number + ")";
  }

  private static String run(Logbook book, int number, RunEntry run) {
    DayEntry day = book.day(run.day());
    OptionalDouble best = Flying.of(run).best();
    return "Run "
        + number
        + ", run "
        + run.runOfDay()
        + " of "
        + Plain.fullDay(day.date())
        + " at "
        + Plain.line(book.name(day.track()))
        + ", "
        + Plain.line(book.name(run.kart()))
        + " driven by "
        + Plain.line(book.name(run.driver()))
        + ", with "
        + laps(run.laps().size())
        + (best.isPresent() ? " (best " + Plain.fixed(best.getAsDouble(), 3) + ")" : "")
        + ",";
  }

  private static String laps(int count) {
    return switch (count) {
      case 0 -> "no laps yet";
      case 1 -> "1 lap";
      default -> count + " laps";
    };
  }
}
