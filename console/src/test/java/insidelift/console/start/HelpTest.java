package insidelift.console.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
  void everyVerbIsSaidInOneLineOfOneOfFourGroups() {
    CommandLine top = Insidelift.commandLine();
    String usage = top.getUsageMessage(CommandLine.Help.Ansi.OFF);
    List<String> list =
        usage
            .substring(usage.indexOf("At the track:"), usage.indexOf("Exit codes:"))
            .lines()
            .filter(line -> !line.isEmpty())
            .toList();
    assertThat(list.stream().filter(line -> !line.startsWith(" ")))
        .containsExactly("At the track:", "The kart:", "Learning:", "For editors:");
    assertThat(list.stream().filter(line -> line.startsWith(" ")))
        .allMatch(line -> line.matches(" {2}[a-z]+ +\\S.*\\."))
        .allMatch(line -> line.length() <= 80);
    assertThat(
            list.stream().filter(line -> line.startsWith(" ")).map(line -> line.split(" +", 3)[1]))
        .containsExactlyInAnyOrderElementsOf(
            top.getSubcommands().entrySet().stream()
                .filter(verb -> !verb.getValue().getCommandSpec().usageMessage().hidden())
                .map(Map.Entry::getKey)
                .toList());
    assertThat(usage.lines().findFirst().orElseThrow()).endsWith("and why.");
  }

  @Test
  void everyVerbIsFoundByItsOwnName() {
    Insidelift.verbs()
        .forEach(
            (name, verb) -> assertThat(verb.getAnnotation(Command.class).name()).isEqualTo(name));
  }
}
