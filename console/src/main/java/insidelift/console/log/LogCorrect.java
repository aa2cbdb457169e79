package insidelift.console.log;

import insidelift.console.cli.NamedFacts;
import insidelift.console.cli.UnitsOption;
import insidelift.engine.logbook.entry.Correction;
import insidelift.engine.logbook.entry.DayEntry;
import insidelift.engine.logbook.entry.DriverEntry;
import insidelift.engine.logbook.entry.Entry;
import insidelift.engine.logbook.entry.KartEntry;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.entry.TrackEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.Numbered;
import insidelift.engine.logbook.use.WrittenText;
import insidelift.engine.proof.laps.UnreadableLapTimes;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Printable;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.function.UnaryOperator;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code log correct}: says what an earlier record should have said; nothing is overwritten. */
@Command(
    name = "correct",
    mixinStandardHelpOptions = true,
    header = "Corrects a record of the logbook; what it said before stays in the file.",
    subcommands = {
      LogCorrect.Kart.class,
      LogCorrect.Driver.class,
      LogCorrect.Track.class,
      LogCorrect.Day.class,
      LogCorrect.Run.class
    })
final class LogCorrect implements Runnable {

  private static final String LAST = "last";

  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(), "Say what to correct: kart, driver, track, day or run.");
  }

  /** The number of a run; {@code last} is the one written last. */
  static int run(Logbook book, String number) {
    if (number.equals(LAST)) {
      return book.lastWritten()
          .map(Numbered::number)
          .orElseThrow(() -> new IllegalArgumentException("the logbook has no run yet"));
    }
    return record(number);
  }

  /** The number of a record. */
  static int record(String number) {
    if (!number.matches("\\d{1,9}")) {
      throw new IllegalArgumentException(Printable.quoted(number) + " is no number of a record");
    }
    return Integer.parseInt(number);
  }

  /** The record of that number, which must be of that kind. */
  static <E extends Entry> E need(Logbook book, int number, Class<E> kind, String word) {
    return book.entry(number, kind)
        .orElseThrow(() -> new IllegalArgumentException("record " + number + " is no " + word));
  }

  /** A correction, and why. */
  abstract static class Correcting extends LogWriting {
    @Parameters(paramLabel = "N", description = "the number of the record; for a run also \"last\"")
    private String number;

    @Option(
        names = "--because",
        required = true,
        paramLabel = "TEXT",
        description = "why it was wrong")
    private String because;

    /** What was told, read before the logbook is locked. */
    interface Change {
      Entry of(Logbook book, int number);
    }

    abstract Change change(Path folder) throws UnreadableLapTimes, CaseProblem;

    @Override
    final Job prepare(Path folder) throws UnreadableLapTimes, CaseProblem {
      Change change = change(folder);
      return (writer, where) -> {
        Logbook book = writer.logbook();
        int record = run(book, number);
        writer.append(Correction.of(record, change.of(book, record), because));
        return WrittenText.corrected(writer.logbook(), where, record);
      };
    }
  }

  /** A correction of a record with a name. */
  abstract static class Renaming extends Correcting {
    @Option(names = "--name", paramLabel = "NAME", description = "what you call it")
    private String name;

    @Mixin private NamedFacts facts;

    final String name(String before) {
      return name == null ? before : name;
    }

    final Map<String, String> answers(Map<String, String> before) {
      return facts.answers(before);
    }

    final String note(String before) {
      return facts.note(before);
    }
  }

  /** A kart. */
  @Command(name = "kart", mixinStandardHelpOptions = true, header = "Corrects a kart.")
  static final class Kart extends Renaming {
    @Override
    Change change(Path folder) {
      return (book, number) -> {
        KartEntry was = need(book, number, KartEntry.class, "kart");
        return new KartEntry(name(was.name()), answers(was.answers()), note(was.note()));
      };
    }
  }

  /** A driver. */
  @Command(name = "driver", mixinStandardHelpOptions = true, header = "Corrects a driver.")
  static final class Driver extends Renaming {
    @Override
    Change change(Path folder) {
      return (book, number) -> {
        DriverEntry was = need(book, number, DriverEntry.class, "driver");
        return new DriverEntry(name(was.name()), answers(was.answers()), note(was.note()));
      };
    }
  }

  /** A track. */
  @Command(name = "track", mixinStandardHelpOptions = true, header = "Corrects a track.")
  static final class Track extends Renaming {
    @Override
    Change change(Path folder) {
      return (book, number) -> {
        TrackEntry was = need(book, number, TrackEntry.class, "track");
        return new TrackEntry(name(was.name()), answers(was.answers()), note(was.note()));
      };
    }
  }

  /** A day. */
  @Command(name = "day", mixinStandardHelpOptions = true, header = "Corrects a day.")
  static final class Day extends Correcting {
    @Option(
        names = "--date",
        paramLabel = "DATE",
        converter = RunPlace.Date.class,
        description = "as in 2026-04-12, or as is usual in your country")
    private LocalDate date;

    @Option(names = "--track", paramLabel = "NAME", description = "the track")
    private String track;

    @Option(names = "--note", paramLabel = "TEXT", description = "what the day is")
    private String note;

    @Override
    Change change(Path folder) {
      return (book, number) -> {
        DayEntry was = need(book, number, DayEntry.class, "day");
        return new DayEntry(
            date == null ? was.date() : date,
            track == null ? was.track() : RunPlace.need("track", track, book::track),
            note == null ? was.note() : note);
      };
    }
  }

  /** A run. */
  @Command(
      name = "run",
      mixinStandardHelpOptions = true,
      header = "Corrects a run; what is not told stays as it was.")
  static final class Run extends Correcting {
    @Option(names = "--kart", paramLabel = "NAME", description = "the kart")
    private String kart;

    @Option(names = "--driver", paramLabel = "NAME", description = "the driver")
    private String driver;

    @Mixin private RunFacts facts;
    @Mixin private UnitsOption units;

    @Override
    Change change(Path folder) throws UnreadableLapTimes, CaseProblem {
      UnaryOperator<RunEntry> told = facts.read(folder, units.chosen());
      return (book, number) -> {
        RunEntry was = need(book, number, RunEntry.class, "run");
        return told.apply(
            was.drivenBy(
                kart == null ? was.kart() : RunPlace.need("kart", kart, book::kart),
                driver == null ? was.driver() : RunPlace.need("driver", driver, book::driver)));
      };
    }
  }
}
