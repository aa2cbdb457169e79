package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import insidelift.console.Launcher.Outcome;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

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

  /** Every Java from 17 on that is installed beside the one that runs the tests, by its version. */
  static Stream<Named<Path>> javas() throws IOException {
    Path own = Path.of(System.getProperty("java.home")).toRealPath();
    SortedMap<Integer, Path> found = new TreeMap<>(Map.of(Runtime.version().feature(), own));
    try (Stream<Path> beside = Files.list(own.getParent())) {
      for (Path home : beside.toList()) {
        int feature = feature(home.resolve("release"));
        if (feature >= 17 && Files.isExecutable(home.resolve("bin/java"))) {
          found.putIfAbsent(feature, home);
        }
      }
    }
    return found.entrySet().stream()
        .map(java -> Named.of("Java " + java.getKey(), java.getValue()));
  }

  /** The version that a JDK tells in its file; 0 if it tells none. */
  private static int feature(Path release) throws IOException {
    if (!Files.isRegularFile(release)) {
      return 0;
    }
    try (InputStream in = Files.newInputStream(release)) {
      Properties told = new Properties();
      told.load(in);
      String version = told.getProperty("JAVA_VERSION", "\"0\"").replace("\"", "");
      return Integer.parseInt(version.split("[^0-9]", 2)[0]);
    }
  }

  /** A path with the tools of the launcher, but no Maven and no Java. */
  private static String barePath() throws IOException {
    Path bare = Files.createDirectories(folder.resolve("bare"));
    for (String tool : List.of("sh", "readlink", "mv", "rm")) {
      Path link = bare.resolve(tool);
      if (!Files.exists(link)) {
        Files.createSymbolicLink(link, Path.of("/usr/bin", tool));
      }
    }
    return bare.toString();
  }

  private static Launcher launcher(Path java, String... words) throws IOException {
    return Launcher.at(home.resolve("insidelift"), words)
        .from(home)
        .unset("JAVA_HOME")
        .set("PATH", java.resolve("bin") + ":" + barePath())
        .set("INSIDELIFT_DATA", folder.resolve("data").toString());
  }

  private static Outcome run(Path java, String... words) throws IOException {
    return launcher(java, words).run();
  }

  @ParameterizedTest
  @MethodSource("javas")
  void itRunsWithoutMavenAndGivesTheSameAdvice(Path java) throws IOException {
    Outcome version = run(java, "--version");
    assertThat(version.err()).isEmpty();
    assertThat(version.out()).startsWith("insidelift 0.");

    Outcome advice = run(java, "advise", "examples/heavy-in-the-rain.json");
    assertThat(advice.exit()).isZero();
    assertThat(advice.err()).isEmpty();
    assertThat(advice.out())
        .isEqualTo(Launcher.with("advise", "examples/heavy-in-the-rain.json").run().out());
  }

  @ParameterizedTest
  @MethodSource("javas")
  void itHoldsAConsultationWithoutAWarning(Path java) throws IOException {
    Path data = Files.createTempDirectory(folder, "data");
    Outcome held = launcher(java).set("INSIDELIFT_DATA", data.toString()).typing("\n2\n").run();
    assertThat(held.err()).isEmpty();
    assertThat(held.out()).contains("Look at the kart first", "Left. Your answers are kept.");
  }

  @ParameterizedTest
  @MethodSource("javas")
  void itWritesAPitCardConvertsUnitsAndPlaysTheDemo(Path java) throws IOException {
    Path card = folder.resolve("card.html");
    Outcome written =
        run(java, "card", "examples/heavy-in-the-rain.json", "--out", card.toString(), "--force");
    assertThat(written.err()).isEmpty();
    assertThat(card).content().startsWith("<!DOCTYPE html>");
    Outcome note = run(java, "notes", "front-temps", "--units", "us");
    assertThat(note.err()).isEmpty();
    assertThat(note.out()).contains("9 °F counts as a difference");
    Outcome demo = run(java, "demo");
    assertThat(demo.err()).isEmpty();
    assertThat(demo.out()).contains("That was the day.");
  }

  @Test
  void anOlderJavaIsNamedBeforeItFails() throws IOException {
    Path old = Files.createDirectories(folder.resolve("old/bin")).getParent();
    Path java = Files.writeString(old.resolve("bin/java"), "#!/bin/sh\nexit 9\n");
    assertThat(java.toFile().setExecutable(true)).isTrue();
    for (String version : List.of("1.8.0_402", "9.0.4", "11.0.2", "16.0.1")) {
      Files.writeString(old.resolve("release"), "OTHER=\"x\"\nJAVA_VERSION=\"" + version + "\"\n");
      Outcome outcome = run(old, "--version");
      assertThat(outcome.exit()).isEqualTo(1);
      assertThat(outcome.err())
          .isEqualTo(
              "insidelift: this is Java %s; install Java 17 or newer, or set JAVA_HOME\n"
                  .formatted(version));
    }
    Files.writeString(old.resolve("release"), "JAVA_VERSION=\"17.0.1\"\n");
    assertThat(run(old, "--version").exit()).as("it was started").isEqualTo(9);
  }

  @Test
  void itHoldsTheNotesTheManualTheCompletionAndALauncherForWindows() throws IOException {
    assertThat(home.resolve("knowledge-notes/bibliography.md")).isNotEmptyFile();
    assertThat(home.resolve("share/insidelift.1")).content().startsWith(".TH INSIDELIFT 1");
    assertThat(home.resolve("share/insidelift.bash")).content().contains("_complete_insidelift");
    assertThat(home.resolve("insidelift.cmd"))
        .content()
        .contains("%HERE%lib\\insidelift-console-*.jar")
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
          .filteredOn(jar -> jar.endsWith(".jar") && !jar.startsWith("insidelift-console-"))
          .containsExactlyInAnyOrderElementsOf(jars);
    }
  }

  @Test
  void everyLibraryIsListedWithItsLicence() throws IOException {
    List<String> listed =
        Files.readAllLines(home.resolve("THIRD-PARTY.txt")).stream()
            .filter(line -> line.matches("[a-z0-9.-]+ {2,}\\S.*"))
            .map(line -> line.split(" ", 2)[0])
            .toList();
    try (Stream<Path> jars = Files.list(home.resolve("lib"))) {
      assertThat(jars.map(jar -> jar.getFileName().toString()))
          .filteredOn(jar -> jar.endsWith(".jar") && !jar.startsWith("insidelift-"))
          .isNotEmpty()
          .allMatch(jar -> listed.stream().anyMatch(name -> jar.startsWith(name + "-")), "listed");
    }
  }
}
