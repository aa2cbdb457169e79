package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.Launcher.Outcome;
import insidelift.console.Visitor.Point;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the guide for users says is what happens. */
@Execution(ExecutionMode.CONCURRENT)
class ReadmeIT {

  private static final Path README = Launcher.CONSOLE.resolveSibling("README.md");

  /**
   * Two lines of the guide are not run here: this build is the first, a terminal has the second.
   */
  private static final List<String> NOT_HERE = List.of("mvn verify", "console/insidelift");

  @TempDir private Path data;

  static Stream<String> commands() {
    return blocks("sh").stream().flatMap(List::stream).filter(line -> !NOT_HERE.contains(line));
  }

  @Test
  void theGuideHasTheTwoCommandsAndOneForEveryVerb() {
    assertThat(blocks("sh").stream().flatMap(List::stream)).containsAll(NOT_HERE);
    assertThat(commands().map(line -> line.split(" ", 3)[1]))
        .contains(
            "advise",
            "sheet",
            "predict",
            "gauge",
            "toe",
            "positions",
            "prove",
            "notes",
            "lessons",
            "cards",
            "drill");
  }

  @ParameterizedTest
  @MethodSource("commands")
  void everyCommandOfTheGuideWorksAsItStands(String line) {
    Outcome outcome = Launcher.shell(line).from(Launcher.CONSOLE.getParent()).run();
    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.exit()).isZero();
    assertThat(outcome.out()).isNotBlank();
  }

  @Test
  void theSheetOfTheGuideIsWhatIsShown() {
    Outcome sheet = Launcher.with("sheet", "examples/heron.sheet.json", "--for", "Heron 7").run();
    String day = "\\d{4}-\\d{2}-\\d{2}\n";
    assertThat(sheet.out().replaceFirst(day, "DATE\n"))
        .isEqualTo((String.join("\n", blocks("text").get(0)) + "\n").replaceFirst(day, "DATE\n"));
  }

  @Test
  void theCaseFileOfTheGuideIsACase() {
    String json = String.join("\n", blocks("json").get(0));
    Outcome outcome = Launcher.with("advise", "-").typing(json).run();
    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.exit()).isZero();
  }

  @Test
  void theFirstCommandOfTheGuideStartsTheConsultation() {
    try (Paddock paddock = Paddock.in(data).start()) {
      new Visitor(paddock).goOnTo(Point.BEGIN);
      paddock.type(Paddock.CTRL_C);
      assertThat(paddock.exit()).isEqualTo(130);
    }
  }

  @Test
  void theDialogueOfTheGuideIsWhatAPlainTerminalShows() {
    List<String> shown = blocks("").get(0);
    assertThat(shown).hasSizeBetween(20, 45).contains("...");
    List<String> real;
    try (Paddock paddock = Paddock.in(data).set("TERM", "dumb").start()) {
      Visitor visitor = DialogueIT.novice(paddock).goOnTo(Point.ANSWER);
      real = paddock.all();
      assertThat(visitor.answered()).isNotEmpty();
    }
    int at = 0;
    for (String line : shown.stream().filter(line -> !line.equals("...")).toList()) {
      int found = real.subList(at, real.size()).indexOf(line);
      assertThat(found).as("\"%s\" after line %d of %s", line, at, real).isNotNegative();
      at += found + 1;
    }
  }

  /** The blocks of the guide that are marked as such. */
  private static List<List<String>> blocks(String mark) {
    List<List<String>> blocks = new ArrayList<>();
    List<String> block = null;
    try {
      for (String line : Files.readAllLines(README)) {
        if (block == null && line.startsWith("```")) {
          block = new ArrayList<>();
          if (line.equals("```" + mark)) {
            blocks.add(block);
          }
        } else if (line.equals("```")) {
          block = null;
        } else if (block != null) {
          block.add(line);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return blocks;
  }
}
