package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.Launcher.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The card of the last consultation. */
class LastCardIT {

  @TempDir private Path folder;

  private Outcome last() {
    return Launcher.with("card", "last", "--out", folder.resolve("card.html").toString())
        .set("INSIDELIFT_DATA", folder.toString())
        .run();
  }

  @Test
  void itIsMadeOfTheConsultationThatWasFinishedLast() throws IOException {
    Outcome none = last();
    assertThat(none.err())
        .isEqualTo(
            "insidelift: the last consultation: there is none yet; start \"insidelift\" and finish"
                + " one\n");
    assertThat(none.exit()).isEqualTo(1);

    Files.writeString(
        folder.resolve("last-consultation.json"),
        "{\"schema\": 1, \"answers\": {\"play\": \"some\"}}");
    assertThat(last().exit()).isZero();
    assertThat(folder.resolve("card.html"))
        .content()
        .contains("Fix this first: no camber or caster change yet");
  }
}
