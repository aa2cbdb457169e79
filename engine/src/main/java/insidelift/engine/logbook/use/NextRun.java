package insidelift.engine.logbook.use;

import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.Numbered;
import insidelift.shared.situation.Situation;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/**
 * A run about to be written: its place in the day, and the set-up of the kart's run before, which
 * stands until something is changed. Answers and conditions are not carried over: they are of one
 * run.
 *
 * @param run what is known of it before anything is added
 * @param setupFrom the number of the run that the set-up and the settings come from, if there is
 *     one
 */
public record NextRun(RunEntry run, Optional<Integer> setupFrom) {

  /**
   * The next run of a kart.
   *
   * @param day the number of the day's record, which may be about to be written
   * @param date its date
   */
  public static NextRun of(Logbook book, int day, LocalDate date, int kart, int driver) {
    RunEntry started = RunEntry.started(day, kart, driver, book.nextRunOfDay(day, kart));
    Optional<Numbered<RunEntry>> before = book.lastOf(kart, date);
    if (before.isEmpty()) {
      return new NextRun(started, Optional.empty());
    }
    RunEntry old = before.get().entry();
    return new NextRun(
        started
            .with(new Situation(Map.of(), Map.of(), old.situation().kart()))
            .withSettings(old.settings()),
        Optional.of(before.get().number()));
  }
}
