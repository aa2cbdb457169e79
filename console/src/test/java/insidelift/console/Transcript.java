package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * A dialogue on file, line by line. {@code -Dtranscripts.record=true} writes all of them anew; what
 * has changed is then read in the difference before it is committed.
 */
final class Transcript {

  private static final Path FOLDER = Launcher.CONSOLE.resolve("src/test/resources/transcripts");

  private Transcript() {}

  /** Compares a dialogue with the one on file, or writes it there. */
  static void compare(String name, List<String> dialogue) {
    Path file = FOLDER.resolve(name + ".txt");
    try {
      if (Boolean.getBoolean("transcripts.record")) {
        Files.createDirectories(FOLDER);
        Files.write(file, dialogue);
        return;
      }
      assertThat(dialogue)
          .as("the dialogue \"%s\" against %s", name, file.getFileName())
          .containsExactlyElementsOf(Files.readAllLines(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
