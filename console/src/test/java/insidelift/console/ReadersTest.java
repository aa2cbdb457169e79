package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Where bytes from outside are read, and that nobody reads them past the limits. */
class ReadersTest {

  private static final Path ROOT = Launcher.CONSOLE.getParent();

  private static Set<String> classesWith(String pattern) throws IOException {
    Pattern wanted = Pattern.compile(pattern);
    Set<String> classes = new TreeSet<>();
    for (String module : List.of("shared", "rules", "engine", "console")) {
      try (Stream<Path> files = Files.walk(ROOT.resolve(module).resolve("src/main/java"))) {
        files
            .filter(file -> file.toString().endsWith(".java"))
            .filter(file -> wanted.matcher(text(file)).find())
            .forEach(file -> classes.add(file.getFileName().toString().replace(".java", "")));
      }
    }
    return classes;
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void jsonFromOutsideIsReadInTwoPlacesWithLimits() throws IOException {
    Set<String> readers = classesWith("\\.readTree\\(|\\.readValue\\(|createParser\\(");
    // These read what this build ships.
    readers.removeAll(Set.of("Allowances", "DemoSeason", "Lexicon", "ShippedJson", "Story"));
    assertThat(readers).containsExactly("JsonInput", "LineFormat");
    assertThat(text(ROOT.resolve("shared/src/main/java/insidelift/shared/casefile/JsonInput.java")))
        .contains("streamReadConstraints(InputLimits.json())");
    assertThat(
            text(
                ROOT.resolve(
                    "engine/src/main/java/insidelift/engine/logbook/file/LineFormat.java")))
        .contains("streamReadConstraints(InputLimits.logLine())");
  }

  @Test
  void whoReadsAWholeFileHasItsSizeFromTheOneClassOfLimits() throws IOException {
    Set<String> whole =
        classesWith("readAllBytes\\(|readNBytes\\(|readAllLines\\(|Files\\.readString\\(");
    // It reads what this build ships.
    whole.remove("Frames");
    assertThat(classesWith("InputLimits\\.MAX_")).containsAll(whole);
    assertThat(classesWith("StreamReadConstraints\\b")).containsExactly("InputLimits");
  }
}
