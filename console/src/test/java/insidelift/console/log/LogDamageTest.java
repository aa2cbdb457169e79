package insidelift.console.log;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.Launcher;
import insidelift.console.Launcher.Outcome;
import insidelift.console.terminal.InProcess;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Damage of the logbook is said wherever an answer rests on it. */
class LogDamageTest {

  private static final Path FILE = InProcess.DATA.resolve("logbook.jsonl");

  @TempDir private Path temp;

  @BeforeEach
  void season() {
    InProcess.forget();
    assertThat(InProcess.run("log", "demo").exit()).isZero();
  }

  @AfterEach
  void forgotten() {
    InProcess.forget();
  }

  private static Outcome damaged(String... words) throws Exception {
    List<String> lines = new ArrayList<>(Files.readAllLines(FILE));
    lines.set(39, lines.get(39).replace("\"at\":\"20", "\"at\":\"19"));
    Files.write(FILE, lines);
    return InProcess.run(words);
  }

  @Test
  void a_whole_log_says_so() {
    Outcome check = InProcess.run("log", "check");
    assertThat(check.out()).endsWith("whole; none is damaged or missing." + System.lineSeparator());
    assertThat(check.err()).isEmpty();
    assertThat(check.exit()).isZero();
  }

  @Test
  void every_answer_from_a_damaged_log_is_given_with_a_word_and_exit_code_1() throws Exception {
    String last = InProcess.run("log", "run", "last").out().lines().findFirst().orElseThrow();
    assertThat(last).isNotBlank();
    List<List<String>> verbs =
        List.of(
            List.of("log"),
            List.of("log", "check"),
            List.of("log", "run", "last"),
            List.of("prove", "run:10", "run:11"),
            List.of("card", "run:last", "--out", temp.resolve("card.html").toString()),
            List.of("sheet", "run:last"),
            List.of("advise", example(), "--log"));
    for (List<String> verb : verbs) {
      Outcome said = damaged(verb.toArray(String[]::new));
      assertThat(said.err())
          .as("%s", verb)
          .contains(
              "insidelift: Line 40 is damaged (its check does not match); it is left as it is and"
                  + " not read.");
      assertThat(said.out()).as("%s", verb).isNotBlank();
      assertThat(said.exit()).as("%s", verb).isEqualTo(1);
    }
  }

  @Test
  void what_is_added_to_a_damaged_log_is_done() throws Exception {
    Outcome added = damaged("log", "add", "kart", "Heron 9");
    assertThat(added.err()).contains("Line 40 is damaged");
    assertThat(added.exit()).isZero();
  }

  @Test
  void an_export_needs_a_name_for_its_folder() {
    Outcome nowhere = InProcess.run("log", "export", "");
    assertThat(nowhere.err())
        .isEqualTo(
            "insidelift: this is no name for a folder; name one, as in export"
                + System.lineSeparator());
    assertThat(nowhere.exit()).isEqualTo(1);
  }

  private static String example() {
    return Launcher.CONSOLE.resolve("examples/heavy-in-the-rain.json").toString();
  }
}
