package insidelift.console.cli;

import com.fasterxml.jackson.databind.JsonNode;
import insidelift.console.report.Glyphs;
import insidelift.console.report.Text;
import insidelift.console.terminal.ExitCode;
import insidelift.console.terminal.Outputs;
import insidelift.engine.geometry.RefusedInputException;
import insidelift.shared.casefile.JsonOutput;
import insidelift.shared.situation.Printable;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.InvalidPathException;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** A command that computes something and prints it as text or as JSON. */
public abstract class JsonFileCommand implements Callable<Integer> {

  /** What was computed, both ways of showing it. */
  public record Result(JsonNode json, List<String> lines) {}

  @Option(names = "--json", description = "print the result as JSON")
  private boolean json;

  @Spec private CommandSpec spec;

  /** The command line is not understood, and why. */
  public final ParameterException misunderstood(String why) {
    return new ParameterException(spec.commandLine(), why);
  }

  /** Computes the result; what it refuses is told to the user in the refusal's own words. */
  public abstract Result compute() throws IOException;

  @Override
  public final Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    Result result;
    try {
      result = compute();
    } catch (InvalidPathException e) {
      // A name that this locale cannot even spell.
      spec.commandLine()
          .getErr()
          .println("insidelift: " + Printable.shown(e.getInput(), 200) + ": no such file");
      return ExitCode.FAILED;
    } catch (RefusedInputException e) {
      spec.commandLine().getErr().println("insidelift: " + Text.safe(e.getMessage()));
      return ExitCode.FAILED;
    }
    if (json) {
      out.println(JsonOutput.pretty(result.json()));
    } else {
      Glyphs.forOutput(Outputs.charset(System.out)).fit(result.lines()).forEach(out::println);
    }
    out.flush();
    return 0;
  }
}
