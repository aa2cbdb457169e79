package insidelift.console.dialogue;

import insidelift.console.log.TypedSheet;
import insidelift.console.report.AdviceWords;
import insidelift.console.report.Text;
import insidelift.console.terminal.Screen;
import insidelift.console.terminal.UserLeftException;
import insidelift.engine.consultation.session.Session;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.entry.BaselineEntry;
import insidelift.engine.logbook.entry.Entry;
import insidelift.engine.logbook.entry.KartEntry;
import insidelift.engine.logbook.entry.RefusedEntryException;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.LogbookWriter;
import insidelift.engine.logbook.use.WrittenText;
import insidelift.shared.Answer;
import insidelift.shared.Status;
import insidelift.shared.Vocabulary;
import insidelift.shared.advice.Advice.Kept;
import insidelift.shared.situation.Baseline;
import insidelift.shared.situation.Baseline.Measured;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Printable;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Writes down how the kart stands as its own setting: its name, and what else is on the sheet. */
final class KeepPage {

  /** The name of the step that this page notes. */
  static final String STEP = "keep";

  private final Screen screen;
  private final Session session;
  private final Vocabulary vocabulary;
  private final Path folder;

  KeepPage(Screen screen, Session session, Vocabulary vocabulary, Path folder) {
    this.screen = screen;
    this.session = session;
    this.vocabulary = vocabulary;
    this.folder = folder;
  }

  /**
   * Asks and writes.
   *
   * @param known what the logbook calls the kart; empty if that was not said
   */
  void ask(Optional<String> known) throws UserLeftException {
    if (session.status() == Status.FIX_FIRST) {
      screen.say("", "A fault comes first: put it right, then keep a setting.");
      return;
    }
    Optional<Kept> good = Optional.ofNullable(session.advice().baseline());
    Text text = new Text(screen.width()).line("").heading("This kart's own sheet");
    good.ifPresent(kept -> text.paragraph(AdviceWords.keep(kept)));
    if (good.isEmpty()) {
      text.paragraph(
          offered()
              ? "Neither camber nor caster was told: type them below, as in camber=0.5."
              : "The advice is not to keep this setting: only what you type here is kept.");
    }
    screen.say(text.lines());
    String condition = good.map(Kept::condition).orElse("");
    while (condition.isEmpty()) {
      String line =
          screen.ask("For a dry or a wet track? (Enter: leave it)", List.of("dry", "wet"));
      if (line.isEmpty()) {
        return;
      }
      condition = "dry".startsWith(line) ? "dry" : "wet".startsWith(line) ? "wet" : "";
    }
    String name = name(known);
    if (name.isEmpty()) {
      screen.say("Nothing is kept.");
      return;
    }
    Optional<Baseline> typed = typed();
    if (typed.isEmpty()) {
      screen.say("Nothing is kept.");
      return;
    }
    keep(name, condition, typed.get().or(good.isPresent() ? standing() : Baseline.UNKNOWN));
  }

  /** Whether the kart is good as it stands: measured, or with nothing read and no complaint. */
  boolean offered() {
    Kart kart = session.situation().kart();
    return session.advice().baseline() != null
        || (session.status() == Status.HOLD
            && kart.camber().isEmpty()
            && kart.caster().isEmpty()
            && session.situation().facts(vocabulary).stream().noneMatch(Answer::complaint));
  }

  private String name(Optional<String> known) throws UserLeftException {
    String shown = known.map(name -> Printable.shown(name, 80)).orElse("");
    String line =
        screen.ask(
            "What do you call this kart? "
                + (known.isEmpty() ? "(Enter: leave it)" : "(Enter: %s)".formatted(shown)),
            List.of());
    return line.isEmpty() ? known.orElse("") : line;
  }

  /** What else is on the sheet, one thing a line; empty if the user wants none of it. */
  private Optional<Baseline> typed() throws UserLeftException {
    TypedSheet sheet = new TypedSheet(vocabulary);
    screen.say(
        new Text(screen.width())
            .paragraph(
                "What else shall stand on it? One thing a line, as in toe=0.8 (mm a side, out),"
                    + " hubs=long or by=Ada. Enter keeps it, names lists the names, no keeps"
                    + " nothing.")
            .lines());
    while (true) {
      String line = screen.ask(":", sheet.names());
      switch (line) {
        case "" -> {
          try {
            return Optional.of(sheet.baseline());
          } catch (IllegalArgumentException e) {
            screen.say(Text.safe(e.getMessage()));
          }
        }
        case "no", "quit" -> {
          return Optional.empty();
        }
        case "?", "help", "names" ->
            screen.say(
                new Text(screen.width()).paragraph(String.join(", ", sheet.names())).lines());
        default -> {
          try {
            sheet.put(line);
          } catch (IllegalArgumentException e) {
            screen.say(new Text(screen.width()).paragraph(Text.safe(e.getMessage())).lines());
          }
        }
      }
    }
  }

  private Baseline standing() {
    return new Baseline(
        new Measured(session.situation().kart().front(), Optional.empty()),
        Measured.UNKNOWN,
        Map.of(),
        Map.of());
  }

  private void keep(String name, String condition, Baseline told) {
    List<String> said;
    try (LogbookWriter writer = LogbookWriter.open(folder)) {
      Logbook book = writer.logbook();
      List<Entry> entries = new ArrayList<>();
      Optional<Integer> kart = book.kart(name);
      if (kart.isEmpty()) {
        entries.add(KartEntry.named(name));
      }
      int number = kart.orElseGet(writer::next);
      Baseline before =
          kart.map(book::baselines)
              .map(own -> own.get(condition))
              .map(Baseline::lasting)
              .orElse(Baseline.UNKNOWN);
      Baseline today =
          new Baseline(
              Measured.UNKNOWN,
              Measured.UNKNOWN,
              Map.of(),
              Map.of("date", LocalDate.now(ZoneId.systemDefault()).toString()));
      Baseline kept = told.or(before).or(today);
      entries.add(new BaselineEntry(number, condition, Optional.empty(), kept));
      List<Integer> numbers = writer.append(entries);
      said =
          new ArrayList<>(
              WrittenText.added(writer.logbook(), folder, numbers.get(numbers.size() - 1)));
      Kart now = session.situation().kart();
      session.begin(STEP);
      session.note(now.with(now.past().keeping(condition, kept)));
      said.add("To see it: insidelift sheet last");
    } catch (LogbookProblem | RefusedEntryException e) {
      said = List.of("Not kept: " + Text.safe(e.getMessage()));
    }
    screen.say(new Text(screen.width()).paragraph(String.join(" ", said)).lines());
  }
}
