package insidelift.console.dialogue;

import insidelift.console.log.NewRun;
import insidelift.console.log.RunPlace;
import insidelift.console.log.RunSituation;
import insidelift.console.report.Text;
import insidelift.console.terminal.Screen;
import insidelift.console.terminal.UserLeftException;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.entry.DriverEntry;
import insidelift.engine.logbook.entry.Entry;
import insidelift.engine.logbook.entry.KartEntry;
import insidelift.engine.logbook.entry.RefusedEntryException;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.entry.TrackEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.LogbookWriter;
import insidelift.engine.logbook.file.Numbered;
import insidelift.engine.logbook.use.LapImport;
import insidelift.engine.proof.laps.LapTimes;
import insidelift.engine.proof.laps.UnreadableLapTimes;
import insidelift.shared.situation.Printable;
import insidelift.shared.situation.Situation;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** Writes the run that was told of into the logbook: which kart, who drove, where, and the laps. */
final class LogPage {

  /** How to find the record of a name, and to make one. */
  private record Kind(
      String ask,
      Function<Logbook, Function<String, Optional<Integer>>> find,
      Function<String, Entry> made) {}

  private static final List<Kind> KINDS =
      List.of(
          new Kind("Which kart?", book -> book::kart, KartEntry::named),
          new Kind("Who drove?", book -> book::driver, DriverEntry::named),
          new Kind("Which track?", book -> book::track, TrackEntry::named));

  private final Screen screen;
  private final Path folder;

  LogPage(Screen screen, Path folder) {
    this.screen = screen;
    this.folder = folder;
  }

  /** Asks and writes. */
  void ask(Situation situation) throws UserLeftException {
    screen.say(new Text(screen.width()).line("").heading("This run, for the logbook").lines());
    try {
      List<String> names = new ArrayList<>();
      List<String> last = last(Logbook.read(folder));
      for (int i = 0; i < KINDS.size(); i++) {
        String name = name(KINDS.get(i).ask(), last.isEmpty() ? "" : last.get(i));
        if (name.isEmpty()) {
          screen.say("Nothing is written.");
          return;
        }
        names.add(name);
      }
      Optional<LapTimes> laps = laps();
      UnaryOperator<RunEntry> told = RunSituation.told(situation);
      say(write(names, run -> told.apply(laps.map(run::with).orElse(run))));
    } catch (LogbookProblem | RefusedEntryException e) {
      say(List.of("Not written: " + Text.safe(e.getMessage())));
    }
  }

  /** The kart, the driver and the track of the run that was written last, as outside text. */
  private static List<String> last(Logbook book) {
    return book.lastWritten()
        .map(Numbered::entry)
        .map(
            run ->
                List.of(
                    book.name(run.kart()),
                    book.name(run.driver()),
                    book.name(book.day(run.day()).track())))
        .orElse(List.of());
  }

  private String name(String ask, String last) throws UserLeftException {
    String offer =
        last.isEmpty() ? "(Enter: leave it)" : "(Enter: %s)".formatted(Printable.shown(last, 80));
    String line = screen.ask(ask + " " + offer, List.of());
    return line.isEmpty() ? last : line;
  }

  private Optional<LapTimes> laps() throws UserLeftException {
    while (true) {
      String line =
          screen.ask("Lap times, the out-lap first, as in 61.2 52.3 52.1 (Enter: none)", List.of());
      if (line.isEmpty()) {
        return Optional.empty();
      }
      try {
        return Optional.of(LapImport.typed(line));
      } catch (UnreadableLapTimes e) {
        say(List.of(Text.safe(e.getMessage())));
      }
    }
  }

  private List<String> write(List<String> names, UnaryOperator<RunEntry> told)
      throws LogbookProblem {
    try (LogbookWriter writer = LogbookWriter.open(folder)) {
      List<Integer> numbers = new ArrayList<>();
      for (int i = 0; i < KINDS.size(); i++) {
        Optional<Integer> known = KINDS.get(i).find().apply(writer.logbook()).apply(names.get(i));
        numbers.add(
            known.isPresent()
                ? known.get()
                : writer.append(KINDS.get(i).made().apply(names.get(i))));
      }
      return new NewRun(RunPlace.date(null), numbers.get(2), numbers.get(0), numbers.get(1), told)
          .write(writer, folder);
    }
  }

  private void say(List<String> lines) {
    Text text = new Text(screen.width());
    lines.forEach(text::paragraph);
    screen.say(text.lines());
  }
}
