package insidelift.console.log;

import insidelift.console.cli.NamedFacts;
import insidelift.console.cli.UnitsOption;
import insidelift.engine.logbook.entry.DayEntry;
import insidelift.engine.logbook.entry.DriverEntry;
import insidelift.engine.logbook.entry.Entry;
import insidelift.engine.logbook.entry.KartEntry;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.entry.TrackEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.use.WrittenText;
import insidelift.engine.proof.laps.UnreadableLapTimes;
import insidelift.shared.situation.CaseProblem;
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

/** {@code log add}: new records. */
@Command(
    name = "add",
    mixinStandardHelpOptions = true,
    header = "Adds a kart, a driver, a track, a day or a run to the logbook.",
    subcommands = {
      LogAdd.Kart.class,
      LogAdd.Driver.class,
      LogAdd.Track.class,
      LogAdd.Day.class,
      LogAdd.Run.class
    })
final class LogAdd implements Runnable {

  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(), "Say what to add: kart, driver, track, day or run.");
  }

  /** A record with a name. */
  abstract static class Named extends LogWriting {
    @Parameters(paramLabel = "NAME", description = "what you call it")
    private String name;

    @Mixin private NamedFacts facts;

    abstract Entry entry(String named, Map<String, String> answers, String note);

    @Override
    final Job prepare(Path folder) {
      Entry entry = entry(name, facts.answers(Map.of()), facts.note(""));
      return (writer, where) -> {
        int number = writer.append(entry);
        return WrittenText.added(writer.logbook(), where, number);
      };
    }
  }

  /** A kart. */
  @Command(name = "kart", mixinStandardHelpOptions = true, header = "Adds a kart.")
  static final class Kart extends Named {
    @Override
    Entry entry(String named, Map<String, String> answers, String note) {
      return new KartEntry(named, answers, note);
    }
  }

  /** A driver. */
  @Command(name = "driver", mixinStandardHelpOptions = true, header = "Adds a driver.")
  static final class Driver extends Named {
    @Override
    Entry entry(String named, Map<String, String> answers, String note) {
      return new DriverEntry(named, answers, note);
    }
  }

  /** A track. */
  @Command(name = "track", mixinStandardHelpOptions = true, header = "Adds a track.")
  static final class Track extends Named {
    @Override
    Entry entry(String named, Map<String, String> answers, String note) {
      return new TrackEntry(named, answers, note);
    }
  }

  /** A day. */
  @Command(
      name = "day",
      mixinStandardHelpOptions = true,
      header = "Adds a day at a track; a run adds its day by itself.")
  static final class Day extends LogWriting {
    @Mixin private RunPlace place;

    @Option(
        names = "--date",
        paramLabel = "DATE",
        converter = RunPlace.Date.class,
        description = "as in 2026-04-12, or as is usual in your country; else today")
    private LocalDate date;

    @Option(names = "--note", paramLabel = "TEXT", description = "what the day is")
    private String note = "";

    @Override
    Job prepare(Path folder) {
      return (writer, where) -> {
        int track = place.track(writer.logbook());
        int number = writer.append(new DayEntry(RunPlace.date(date), track, note));
        return WrittenText.added(writer.logbook(), where, number);
      };
    }
  }

  /** A run. */
  @Command(
      name = "run",
      mixinStandardHelpOptions = true,
      header = "Adds a run.",
      description = {
        "",
        "What is left out of kart, driver, track, set-up and settings is as in the run before;"
            + " answers, tyres and feel are not: they are of one run.",
        ""
      })
  static final class Run extends LogWriting {
    @Mixin private RunPlace place;

    @Option(
        names = "--date",
        paramLabel = "DATE",
        converter = RunPlace.Date.class,
        description = "as in 2026-04-12, or as is usual in your country; else today")
    private LocalDate date;

    @Mixin private RunFacts facts;
    @Mixin private UnitsOption units;

    @Override
    Job prepare(Path folder) throws UnreadableLapTimes, CaseProblem {
      UnaryOperator<RunEntry> told = facts.read(folder, units.chosen());
      LocalDate when = RunPlace.date(date);
      return (writer, where) -> {
        Logbook book = writer.logbook();
        return new NewRun(when, place.track(book), place.kart(book), place.driver(book), told)
            .write(writer, where);
      };
    }
  }
}
