package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import insidelift.console.Launcher.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The archive that {@code mvn -Prelease} makes, unpacked and run with neither Maven nor sources.
 */
class ReleaseIT {

  private static final String ARCHIVE = System.getProperty("release.archive", "");

  @TempDir private static Path folder;

  private static Path home;

  @BeforeAll
  static void unpack() throws IOException {
    assumeTrue(!ARCHIVE.isEmpty(), "no archive was made in this build");
    Outcome tar = Launcher.shell("tar -xzf '" + ARCHIVE + "'").from(folder).run();
    assertThat(tar.err()).isEmpty();
    try (Stream<Path> top = Files.list(folder)) {
      home =
          top.filter(path -> path.getFileName().toString().startsWith("insidelift-"))
              .findFirst()
              .orElseThrow();
    }
  }

  /** A path with Java and the tools of the launcher, but no Maven. */
  private static String barePath() throws IOException {
    Path bare = Files.createDirectories(folder.resolve("bare"));
    for (String tool : List.of("sh", "readlink", "dirname")) {
      Path link = bare.resolve(tool);
      if (!Files.exists(link)) {
        Files.createSymbolicLink(link, Path.of("/usr/bin", tool));
      }
    }
    return Path.of(System.getProperty("java.home"), "bin") + ":" + bare;
  }

  private static Outcome run(String... words) throws IOException {
    return Launcher.at(home.resolve("insidelift"), words)
        .from(home)
        .unset("JAVA_HOME")
        .set("PATH", barePath())
        .set("INSIDELIFT_DATA", folder.resolve("data").toString())
        .run();
  }

  @Test
  void itRunsWithoutMavenAndGivesTheSameAdvice() throws IOException {
    Outcome version = run("--version");
    assertThat(version.err()).isEmpty();
    assertThat(version.out()).startsWith("insidelift 0.");

    Outcome advice = run("advise", "examples/heavy-in-the-rain.json");
    assertThat(advice.exit()).isZero();
    assertThat(advice.out())
        .isEqualTo(Launcher.with("advise", "examples/heavy-in-the-rain.json").run().out());
  }

  @Test
  void itWritesAPitCardAndPlaysTheDemo() throws IOException {
    Path card = folder.resolve("card.html");
    assertThat(run("card", "examples/heavy-in-the-rain.json", "--out", card.toString()).err())
        .isEmpty();
    assertThat(card).content().startsWith("<!DOCTYPE html>");
    assertThat(run("demo").out()).contains("That was the day.");
  }

  @Test
  void itHoldsTheNotesTheManualTheCompletionAndALauncherForWindows() throws IOException {
    assertThat(home.resolve("knowledge-notes/bibliography.md")).isNotEmptyFile();
    assertThat(home.resolve("share/insidelift.1")).content().startsWith(".TH INSIDELIFT 1");
    assertThat(home.resolve("share/insidelift.bash")).content().contains("_complete_insidelift");
    assertThat(home.resolve("insidelift.cmd"))
        .content()
        .contains("%HERE%lib\\*\"")
        .contains("\r\n");
    assertThat(home.resolve("README.txt")).content().startsWith("Insidelift 0.");
  }

  /** The bill of materials is read off the dependencies, so it knows what nobody wrote down. */
  @Test
  void theBillOfMaterialsTheLibrariesAndTheListOfLicencesAgree() throws Exception {
    Map<String, String> licences =
        Map.of("Apache-2.0", "Apache License 2.0", "BSD-3-Clause", "BSD 3-Clause", "MIT", "MIT");
    List<String> listed = Files.readAllLines(home.resolve("THIRD-PARTY.txt"));
    JsonNode bom = JsonMapper.builder().build().readTree(home.resolve("share/bom.json").toFile());
    Set<String> jars = new TreeSet<>();
    for (JsonNode component : bom.get("components")) {
      String name = component.get("name").textValue();
      String jar = name + "-" + component.get("version").textValue() + ".jar";
      jars.add(jar);
      if (name.startsWith("insidelift-")) {
        continue;
      }
      // JLine's POM calls it "The BSD License" and links the one of three clauses; the plugin reads
      // the name alone and takes the oldest.
      String licence =
          component.at("/licenses/0/license/id").asText().replace("BSD-4-Clause", "BSD-3-Clause");
      assertThat(licences).as(jar).containsKey(licence);
      assertThat(listed)
          .as(jar)
          .anyMatch(
              line ->
                  !line.isBlank()
                      && name.startsWith(line.split(" ", 2)[0])
                      && line.contains("  " + licences.get(licence) + " "));
      String sha256 =
          HexFormat.of()
              .formatHex(
                  MessageDigest.getInstance("SHA-256")
                      .digest(Files.readAllBytes(home.resolve("lib").resolve(jar))));
      assertThat(component.get("hashes").findValuesAsText("content")).as(jar).contains(sha256);
    }
    try (Stream<Path> all = Files.list(home.resolve("lib"))) {
      assertThat(all.map(path -> path.getFileName().toString()))
          .filteredOn(jar -> !jar.startsWith("insidelift-console-"))
          .containsExactlyInAnyOrderElementsOf(jars);
    }
  }

  @Test
  void everyLibraryIsListedWithItsLicence() throws IOException {
    List<String> listed =
        Files.readAllLines(home.resolve("THIRD-PARTY.txt")).stream()
            .filter(line -> line.matches("[a-z0-9-]+ {2,}\\S.*"))
            .map(line -> line.split(" ", 2)[0])
            .toList();
    try (Stream<Path> jars = Files.list(home.resolve("lib"))) {
      assertThat(jars.map(jar -> jar.getFileName().toString()))
          .isNotEmpty()
          .filteredOn(jar -> !jar.startsWith("insidelift-"))
          .isNotEmpty()
          .allMatch(jar -> listed.stream().anyMatch(name -> jar.startsWith(name + "-")), "listed");
    }
  }
}
