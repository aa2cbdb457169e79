package insidelift.console.log;

import insidelift.console.report.Glyphs;
import insidelift.console.report.Text;
import insidelift.console.terminal.ExitCode;
import insidelift.console.terminal.Outputs;
import insidelift.engine.disk.DataFolder;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.use.DemoSeason;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A command that reads the logbook and prints lines. */
abstract class LogReading implements Callable<Integer> {

  @Option(
      names = "--demo",
      description = "look at an invented season instead of your own logbook; nothing is written")
  private boolean demo;

  @Spec private CommandSpec spec;

  abstract List<String> lines(Path folder, Logbook book) throws LogbookProblem, IOException;

  @Override
  public final Integer call() {
    List<String> lines;
    int code;
    try {
      Path folder = DataFolder.find();
      Logbook book = demo ? DemoSeason.book() : Logbook.read(folder);
      lines = lines(folder, book);
      // Afterwards, because the rest of a run is read only when it is asked for.
      code = LogDamage.say(book.notices(), spec.commandLine().getErr());
    } catch (LogbookProblem | IllegalArgumentException e) {
      return failed(e.getMessage());
    } catch (IOException e) {
      return failed("it cannot be written: " + e.getMessage());
    }
    Glyphs.forOutput(Outputs.charset(System.out))
        .fit(lines)
        .forEach(spec.commandLine().getOut()::println);
    spec.commandLine().getOut().flush();
    return code;
  }

  private int failed(String message) {
    spec.commandLine().getErr().println("insidelift: " + Text.safe(message));
    return ExitCode.FAILED;
  }
}
