package insidelift.console.log;

import insidelift.console.report.Glyphs;
import insidelift.console.report.Text;
import insidelift.console.terminal.ExitCode;
import insidelift.console.terminal.Outputs;
import insidelift.engine.disk.DataFolder;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.file.LogbookWriter;
import insidelift.engine.proof.laps.UnreadableLapTimes;
import insidelift.shared.situation.CaseProblem;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** A command that adds to the logbook and says what is on disk. */
abstract class LogWriting implements Callable<Integer> {

  /** What is left to do once the user's own words and files have been read. */
  interface Job {
    /** Adds to the logbook and returns what to say. */
    List<String> write(LogbookWriter writer, Path folder) throws LogbookProblem;
  }

  @Spec private CommandSpec spec;

  private void waiting() {
    spec.commandLine().getErr().println("insidelift: the logbook is in use; waiting for it ...");
  }

  /**
   * Reads words and files before the logbook is locked: someone may still be typing.
   *
   * @throws IllegalArgumentException if the words on the command line cannot be used, and why
   */
  abstract Job prepare(Path folder) throws UnreadableLapTimes, CaseProblem, LogbookProblem;

  @Override
  public final Integer call() {
    List<String> lines;
    try {
      Path folder = DataFolder.find();
      Job job = prepare(folder);
      try (LogbookWriter writer = LogbookWriter.open(folder, this::waiting)) {
        // What is added is safe whatever is wrong with the rest, so this is no failure.
        LogDamage.say(writer.logbook().notices(), spec.commandLine().getErr());
        lines = job.write(writer, folder);
      }
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), String.valueOf(e.getMessage()), e);
    } catch (LogbookProblem | UnreadableLapTimes | CaseProblem e) {
      spec.commandLine().getErr().println("insidelift: " + Text.safe(e.getMessage()));
      return ExitCode.FAILED;
    }
    Glyphs.forOutput(Outputs.charset(System.out))
        .fit(lines)
        .forEach(spec.commandLine().getOut()::println);
    spec.commandLine().getOut().flush();
    return 0;
  }
}
