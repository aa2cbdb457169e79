package insidelift.console;

import java.io.PrintWriter;
import java.io.StringWriter;
import picocli.CommandLine;

/**
 * A verb run in this process, which is much quicker than a process of its own.
 *
 * @param exit the exit code
 * @param out what it printed
 * @param err its messages
 */
public record CommandRun(int exit, String out, String err) {

  public static CommandRun of(Object command, String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int exit =
        new CommandLine(command)
            .setOut(new PrintWriter(out, true))
            .setErr(new PrintWriter(err, true))
            .execute(words);
    return new CommandRun(exit, out.toString(), err.toString());
  }
}
