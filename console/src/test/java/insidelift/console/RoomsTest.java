package insidelift.console;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A room is a package: not too small, not too large, with a sentence, and in no circle. */
class RoomsTest {

  private static final Path ROOT = Path.of("..");
  private static final int FEWEST = 2;
  private static final int MOST = 17;

  /** What the rule compiler generates. */
  private static final Pattern GENERATED =
      Pattern.compile(".*/insidelift/rules/(weigh/)?P[0-9A-F]{2}/.*");

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new DoNotIncludeTests())
          .withImportOption(location -> !location.matches(GENERATED))
          .importPackages("insidelift");

  @Test
  void everyRoomHoldsTwoToSeventeenFilesAndSaysInASentenceWhatTheyShare() throws IOException {
    Map<Path, Integer> sizes = new TreeMap<>();
    for (String module : List.of("shared", "rules", "rules/indexer", "engine", "console")) {
      try (Stream<Path> files = Files.walk(ROOT.resolve(module).resolve("src/main/java"))) {
        files
            .filter(file -> file.toString().endsWith(".java"))
            .filter(file -> !file.endsWith("package-info.java"))
            .forEach(file -> sizes.merge(file.getParent(), 1, Integer::sum));
      }
    }
    assertThat(sizes).hasSizeGreaterThan(FEWEST);
    sizes.forEach(
        (room, size) -> {
          assertThat(size).as("files in %s", room).isBetween(FEWEST, MOST);
          assertThat(room.resolve("package-info.java")).isRegularFile();
        });
  }

  @Test
  void noCircleOfClassesRunsThroughTwoRooms() {
    slices().matching("insidelift.(**)").should().beFreeOfCycles().check(CLASSES);
  }
}
