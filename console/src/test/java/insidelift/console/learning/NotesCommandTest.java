package insidelift.console.learning;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.CommandRun;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NotesCommandTest {

  @TempDir private Path folder;

  @Test
  void all_notes_go_into_one_page_which_is_not_replaced_unasked() {
    Path page = folder.resolve("notes.html");
    CommandRun run = CommandRun.of(new NotesCommand(), "--out", page.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).isEqualTo("The notes are in " + page + "." + System.lineSeparator());
    assertThat(page).content().contains("<article id=\"camber-front-weak\">");

    CommandRun again = CommandRun.of(new NotesCommand(), "--out", page.toString());
    assertThat(again.exit()).isEqualTo(1);
    assertThat(again.err())
        .isEqualTo(
            "insidelift: "
                + page
                + ": this file exists already; --force replaces it"
                + System.lineSeparator());
    assertThat(CommandRun.of(new NotesCommand(), "--out", page.toString(), "--force").exit())
        .isZero();
  }

  @Test
  void one_note_is_not_a_page() {
    Path page = folder.resolve("notes.html");
    CommandRun run =
        CommandRun.of(new NotesCommand(), "camber-front-weak", "--out", page.toString());
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).startsWith("the page has all notes; leave the words out, or --out");
    assertThat(page).doesNotExist();
  }
}
