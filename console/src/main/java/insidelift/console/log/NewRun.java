package insidelift.console.log;

import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.entry.DayEntry;
import insidelift.engine.logbook.entry.Entry;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.LogbookWriter;
import insidelift.engine.logbook.use.NextRun;
import insidelift.engine.logbook.use.WrittenText;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A run to be written, and the record of its day if there is none yet.
 *
 * @param kart the number of the kart's record, and so on
 * @param told puts what was told of the run on it
 */
public record NewRun(
    LocalDate date, int track, int kart, int driver, UnaryOperator<RunEntry> told) {

  /** Writes it, and says so in lines. */
  public List<String> write(LogbookWriter writer, Path where) throws LogbookProblem {
    Logbook book = writer.logbook();
    Optional<Integer> known = book.day(date, track);
    List<Entry> entries = new ArrayList<>();
    if (known.isEmpty()) {
      entries.add(new DayEntry(date, track, ""));
    }
    int day = known.orElseGet(writer::next);
    NextRun next = NextRun.of(book, day, date, kart, driver);
    RunEntry run = told.apply(next.run());
    entries.add(run);
    List<Integer> numbers = writer.append(entries);
    int number = numbers.get(numbers.size() - 1);
    List<String> lines =
        new ArrayList<>(WrittenText.added(writer.logbook(), where, number, next.setupFrom()));
    next.setupFrom()
        .flatMap(writer.logbook()::run)
        .filter(before -> before.entry().day() == day && !run.laps().isEmpty())
        .ifPresent(
            before ->
                lines.add(
                    "Was it quicker? insidelift prove run:%d run:%d"
                        .formatted(before.number(), number)));
    return lines;
  }
}
