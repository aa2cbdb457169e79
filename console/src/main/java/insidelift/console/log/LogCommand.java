package insidelift.console.log;

import insidelift.console.cli.OutputFile;
import insidelift.console.cli.UnitsOption;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.file.LogCheck;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.learning.Experience;
import insidelift.engine.logbook.learning.LearningSwitch;
import insidelift.engine.logbook.use.DemoSeason;
import insidelift.engine.logbook.use.LogExport;
import insidelift.engine.logbook.use.LogTables;
import insidelift.engine.logbook.use.TrendPlot;
import insidelift.shared.situation.CaseProblem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code log}: what has been driven, and what it taught. */
@Command(
    name = "log",
    mixinStandardHelpOptions = true,
    header = "The logbook: days, runs, lap times, and what they taught.",
    description = {
      "",
      "Without a verb it lists the days. The logbook is a file of plain lines in your own data"
          + " folder (INSIDELIFT_DATA names another); nothing of it ever leaves this machine.",
      ""
    },
    subcommands = {
      LogAdd.class,
      LogLaps.class,
      LogCorrect.class,
      LogKeep.class,
      LogWithdraw.class,
      LogCommand.Day.class,
      LogCommand.Run.class,
      LogCommand.Learned.class,
      LogCommand.Learning.class,
      LogCommand.Export.class,
      LogCommand.Check.class,
      LogCommand.Demo.class
    })
public final class LogCommand extends LogReading {

  @Override
  List<String> lines(Path folder, Logbook book) {
    return book.isEmpty()
        ? List.of(
            "The logbook is empty. \"insidelift log add run --help\" says how to fill it,",
            "\"insidelift log demo\" shows an invented season.")
        : LogTables.days(book);
  }

  /** The runs of a day. */
  @Command(
      name = "day",
      mixinStandardHelpOptions = true,
      header = "The runs of a day, with the trend of their lap times.")
  static final class Day extends LogReading {
    @Parameters(paramLabel = "N", description = "the day's number, as the list of days has it")
    private int number;

    @Override
    List<String> lines(Path folder, Logbook book) throws LogbookProblem {
      List<String> lines = new ArrayList<>(LogTables.day(book, number));
      lines.add("");
      lines.addAll(TrendPlot.lines(book.runsOf(number)));
      return lines;
    }
  }

  /** One run. */
  @Command(name = "run", mixinStandardHelpOptions = true, header = "One run, whole.")
  static final class Run extends LogReading {
    @Parameters(
        paramLabel = "N",
        description = "the run's number (rec in the day's table), or \"last\"")
    private String number;

    @Mixin private UnitsOption units;

    @Override
    List<String> lines(Path folder, Logbook book) throws LogbookProblem {
      return LogTables.run(book, LogCorrect.run(book, number), units.chosen());
    }
  }

  /** What the log taught about a kart on a track. */
  @Command(
      name = "learned",
      mixinStandardHelpOptions = true,
      header = "Which advice has worked for a kart on a track, and how often.")
  static final class Learned extends LogReading {
    @Parameters(index = "0", paramLabel = "KART", description = "the kart's name in the logbook")
    private String kart;

    @Parameters(index = "1", paramLabel = "TRACK", description = "the track's name")
    private String track;

    @Override
    List<String> lines(Path folder, Logbook book) throws LogbookProblem {
      return Experience.of(folder, book)
          .lines(
              RunPlace.need("kart", kart, book::kart), RunPlace.need("track", track, book::track));
    }
  }

  /** The switch of learning. */
  @Command(
      name = "learning",
      mixinStandardHelpOptions = true,
      header = "Switches learning from the log on or off.")
  static final class Learning extends LogReading {
    /** The two states. */
    enum State {
      on,
      off
    }

    @Parameters(paramLabel = "STATE", description = "on or off")
    private State state;

    @Override
    List<String> lines(Path folder, Logbook book) throws LogbookProblem {
      LearningSwitch.set(folder, state == State.on);
      return List.of("Learning from the log is " + state + ".");
    }
  }

  /** Everything as files. */
  @Command(
      name = "export",
      mixinStandardHelpOptions = true,
      header = "Writes the whole logbook as JSON and CSV files into a folder.",
      description = {
        "",
        "Files are for programs: always bar, °C, kW, ISO dates and decimal points.",
        ""
      })
  static final class Export extends LogReading {
    @Parameters(paramLabel = "FOLDER", description = "where to write; it is made if needed")
    private Path target;

    @Option(names = "--force", description = "write over files that are there")
    private boolean force;

    @Override
    List<String> lines(Path folder, Logbook book) throws IOException {
      if (target.toString().isBlank()) {
        throw new IllegalArgumentException("this is no name for a folder; name one, as in export");
      }
      Files.createDirectories(target);
      List<String> written = new ArrayList<>();
      write("logbook.json", LogExport.json(book), written);
      for (Map.Entry<String, String> table : LogExport.csv(book).entrySet()) {
        write(table.getKey(), table.getValue(), written);
      }
      return written;
    }

    private void write(String name, String text, List<String> written) throws IOException {
      Path file = target.resolve(name);
      // A link counts as a file: what it points to is not in this folder.
      if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !force) {
        written.add(name + ": it is there already; --force writes over it");
        return;
      }
      if (Files.isSymbolicLink(file)) {
        Files.delete(file);
      }
      try {
        OutputFile.write(file.toString(), text, force);
      } catch (CaseProblem e) {
        throw new IOException(name + ": " + e.getMessage(), e);
      }
      written.add(name + ": written");
    }
  }

  /** Whether all of it can be read. */
  @Command(
      name = "check",
      mixinStandardHelpOptions = true,
      header = "Says how much of the logbook is whole, and what is damaged or missing.",
      description = {"", "Exits with 1 if anything that was written down cannot be read.", ""})
  static final class Check extends LogReading {
    @Override
    List<String> lines(Path folder, Logbook book) {
      return LogCheck.lines(book);
    }
  }

  /** An invented season to look at. */
  @Command(
      name = "demo",
      mixinStandardHelpOptions = true,
      header = "Fills an empty logbook with an invented club season.")
  static final class Demo extends LogReading {
    @Override
    List<String> lines(Path folder, Logbook book) throws LogbookProblem {
      return LogTables.days(DemoSeason.load(folder));
    }
  }
}
