package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** What {@code --help} says, on a screen of 80 columns. */
class HelpTest {

  private static Stream<CommandLine> commands(CommandLine line) {
    return Stream.concat(
        Stream.of(line), line.getSubcommands().values().stream().flatMap(HelpTest::commands));
  }

  @Test
  void noProseIsBrokenTwice() {
    List<String> torn = new ArrayList<>();
    commands(Insidelift.commandLine())
        .forEach(
            line -> {
              for (String part : line.getCommandSpec().usageMessage().description()) {
                // A line that only just does not fit leaves a scrap; a whole paragraph wraps well.
                if (part.length() >= 80 && part.length() < 100 && !part.endsWith(".")) {
                  torn.add(line.getCommandSpec().qualifiedName() + ": " + part);
                }
              }
            });
    assertThat(torn).isEmpty();
  }

  @Test
  void everyVerbIsSaidInOneLineOfTheList() {
    String usage = Insidelift.commandLine().getUsageMessage(CommandLine.Help.Ansi.OFF);
    String list = usage.substring(usage.indexOf("Commands:"), usage.indexOf("Exit codes:"));
    assertThat(list.lines().skip(1).filter(line -> !line.isEmpty()))
        .allMatch(line -> line.matches(" {2}[a-z]+ +\\S.*\\."))
        .allMatch(line -> line.length() <= 80);
    assertThat(usage.lines().findFirst().orElseThrow()).endsWith("and why.");
  }

  @Test
  void everyVerbIsFoundByItsOwnName() {
    Insidelift.verbs()
        .forEach(
            (name, verb) -> assertThat(verb.getAnnotation(Command.class).name()).isEqualTo(name));
  }
}
