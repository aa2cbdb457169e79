package insidelift.console.advice;

import insidelift.console.cli.LapColumnsOption;
import insidelift.console.cli.LapFile;
import insidelift.console.log.LogDamage;
import insidelift.console.report.Glyphs;
import insidelift.console.report.Text;
import insidelift.console.terminal.ExitCode;
import insidelift.console.terminal.Outputs;
import insidelift.engine.disk.DataFolder;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.use.DemoSeason;
import insidelift.engine.proof.Feel;
import insidelift.engine.proof.Proof;
import insidelift.engine.proof.laps.LapTimes;
import insidelift.engine.proof.laps.UnreadableLapTimes;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Printable;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code prove BEFORE AFTER [AGAIN]}: whether a change made the laps quicker. */
@Command(
    name = "prove",
    mixinStandardHelpOptions = true,
    header = "Compares laps before and after a change: keep, undo, cannot tell.",
    description = {
      "",
      "A lap file has one time a line, or \"lap,time\", in driving order with the out-lap first;"
          + " run:12 is run 12 of the logbook.",
      "AGAIN is a third run with the change taken back; it is the best guard against a track that"
          + " changes by itself.",
      ""
    })
public final class ProveCommand implements Callable<Integer> {

  @Parameters(index = "0", paramLabel = "BEFORE", description = "lap times before the change")
  private String before;

  @Parameters(index = "1", paramLabel = "AFTER", description = "lap times with the change")
  private String after;

  @Parameters(
      index = "2",
      arity = "0..1",
      paramLabel = "AGAIN",
      description = "lap times with the change taken back")
  private String again;

  @Option(
      names = "--feel",
      paramLabel = "WORD",
      defaultValue = "unknown",
      description = "what the driver felt: better, same, worse or unknown")
  private String feel;

  @Mixin private LapColumnsOption columns;

  @Option(names = "--demo", description = "run:12 is of the invented season, not of your logbook")
  private boolean demo;

  @Option(names = "--json", description = "print the result as JSON")
  private boolean json;

  @Spec private CommandSpec spec;

  /** The logbook; null until a run of it is asked for. */
  private Logbook book;

  @Override
  public Integer call() {
    Feel felt =
        Feel.of(feel)
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(),
                        "--feel: "
                            + Printable.quoted(feel)
                            + " is not one of better, same, worse, unknown"));
    PrintWriter out = spec.commandLine().getOut();
    Proof proof;
    try {
      proof =
          Proof.of(
              laps(before),
              laps(after),
              again == null ? Optional.empty() : Optional.of(laps(again)),
              felt);
    } catch (UnreadableLapTimes | LogbookProblem | CaseProblem | IllegalArgumentException e) {
      if (book != null) {
        LogDamage.say(book.notices(), spec.commandLine().getErr());
      }
      return failed(e.getMessage());
    }
    if (json) {
      out.println(proof.toJson());
    } else {
      Glyphs.forOutput(Outputs.charset(System.out)).fit(proof.text()).forEach(out::println);
    }
    out.flush();
    return book == null ? 0 : LogDamage.say(book.notices(), spec.commandLine().getErr());
  }

  private LapTimes laps(String name) throws UnreadableLapTimes, LogbookProblem, CaseProblem {
    if (name.matches("run:\\d{1,9}")) {
      return logged(Integer.parseInt(name.substring("run:".length())));
    }
    return LapFile.read(name, columns.read());
  }

  /** The laps of a run of the logbook, named {@code run:12}. */
  private LapTimes logged(int number) throws LogbookProblem {
    if (book == null) {
      book = demo ? DemoSeason.book() : Logbook.read(DataFolder.find());
    }
    return book.lapTimes(number)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "run:" + number + ": the logbook has no lap times of such a run"));
  }

  private int failed(String message) {
    spec.commandLine().getErr().println("insidelift: " + Text.safe(message));
    return ExitCode.FAILED;
  }
}
