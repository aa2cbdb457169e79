package insidelift.console.start;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code manual}: what a shell and a manual reader want to know about the command line. */
@Command(
    name = "manual",
    hidden = true,
    mixinStandardHelpOptions = true,
    header = "Prints the manual page, or what a shell needs to complete words.",
    description = {
      "",
      "For example:",
      "  insidelift manual > insidelift.1",
      "  insidelift manual --completion > insidelift.bash",
      ""
    })
final class ManualCommand implements Callable<Integer> {

  @Option(names = "--completion", description = "the completion script for bash and zsh")
  private boolean completion;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    CommandLine top = Insidelift.commandLine();
    PrintWriter out = spec.commandLine().getOut();
    if (completion) {
      out.print(AutoComplete.bash(spec.root().name(), top));
    } else {
      ManPage.of(top).forEach(out::println);
    }
    out.flush();
    return 0;
  }
}
