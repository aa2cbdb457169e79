package insidelift.console.kart;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.CommandRun;
import insidelift.console.Launcher;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PicturesCommandTest {

  @TempDir private Path folder;

  @Test
  void measured_tyre_faces_are_drawn_and_words_are_not() {
    assertThat(CommandRun.of(new PicturesCommand(), "examples/hot-edges.json").out())
        .contains("Steering sweep", "Braking and the inside rear", "Front tyre faces");
    assertThat(CommandRun.of(new PicturesCommand(), "examples/heavy-in-the-rain.json").out())
        .contains("Steering sweep")
        .doesNotContain("Front tyre faces");
  }

  @Test
  void a_reader_who_does_not_see_gets_the_sentences_alone() {
    String out =
        CommandRun.of(new PicturesCommand(), "examples/hot-edges.json", "--sentences").out();
    assertThat(out)
        .startsWith("Steered from straight ahead")
        .contains("of braking the inside rear lifts at")
        .contains("Left front tyre: outer edge 72.5")
        .doesNotContain("##", "---", "|");
  }

  @Test
  void laps_are_drawn_where_two_files_of_them_are_named() {
    String[] line = {
      "examples/hot-edges.json", "--laps", "examples/before.laps", "examples/after.laps"
    };
    assertThat(CommandRun.of(new PicturesCommand(), line).out())
        .contains("Laps before and after", "before |", "keep: the laps are 0.41 s quicker");

    line[3] = folder.resolve("missing.laps").toString();
    CommandRun missing = CommandRun.of(new PicturesCommand(), line);
    assertThat(missing.exit()).isEqualTo(1);
    assertThat(missing.err())
        .isEqualTo("insidelift: " + line[3] + ": there is no such file" + System.lineSeparator());
  }

  @Test
  void a_file_that_cannot_be_used_is_refused_in_one_sentence() {
    Path missing = folder.resolve("missing.json");
    CommandRun run = CommandRun.of(new PicturesCommand(), missing.toString());
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.err())
        .isEqualTo("insidelift: " + missing + ": there is no such file" + System.lineSeparator());

    Path large = Launcher.file(folder, "large.json", " ".repeat((1 << 20) + 2));
    assertThat(CommandRun.of(new PicturesCommand(), large.toString()).err())
        .contains("the file is larger than 1 MB, which no case needs");
  }
}
