package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import insidelift.console.Launcher.Outcome;
import insidelift.console.terminal.InProcess;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A name in a file or a record is a name: it never becomes a place to read or write. */
class NamesAndPathsTest {

  private static final List<String> NAMES =
      List.of(
          "../outside",
          "..\\outside",
          "/etc/outside",
          "~/outside",
          "C:\\outside",
          "CON",
          "NUL",
          ".",
          "..",
          "a/../../outside",
          "file:///outside",
          "x\u0000y",
          "logbook.jsonl");

  private static final String RAIN =
      Launcher.CONSOLE.resolve("examples/heavy-in-the-rain.json").toString();

  @TempDir private Path folder;

  @BeforeEach
  @AfterEach
  void nothingIsKept() {
    assertThat(InProcess.DATA).hasFileName("data-of-tests");
    InProcess.forget();
  }

  private static Outcome run(String... words) {
    Outcome outcome = InProcess.run(words);
    assertThat(outcome.err()).doesNotContain("a fault of this program", "Exception");
    return outcome;
  }

  private static Set<String> below(Path place) {
    if (Files.notExists(place)) {
      return Set.of();
    }
    try (Stream<Path> all = Files.walk(place)) {
      return new TreeSet<>(all.map(path -> place.relativize(path).toString()).toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void namesInTheLogbookAndOfTraineesNeverBecomeFiles() throws IOException {
    Set<String> around = below(Launcher.CONSOLE.resolve("src"));
    Set<String> beside = names(InProcess.DATA.getParent());
    for (String name : NAMES) {
      for (String kind : List.of("kart", "driver", "track")) {
        run("log", "add", kind, name, "--note", name);
      }
      run("log", "add", "day", "--date", "2026-04-12", "--track", name, "--note", name);
      run(
          "log",
          "add",
          "run",
          "--date",
          "2026-04-12",
          "--kart",
          name,
          "--driver",
          name,
          "--track",
          name,
          "--setting",
          name + "=" + name,
          "--said",
          name);
      run("log", "learned", name, name);
      run("drill", "--sheet", name);
      run("lessons", "--list", "--trainee", name);
      run("cards", "--progress", "--trainee", name);
      run("notes", name);
    }
    assertThat(run("log").out()).contains("2026-04-12");
    Path export = folder.resolve("export");
    assertThat(run("log", "export", export.toString()).exit()).isZero();
    assertThat(below(export)).hasSize(11);
    assertThat(below(InProcess.DATA))
        .isSubsetOf(
            "",
            "logbook.jsonl",
            "logbook.lock",
            "logbook.seal",
            "training",
            "training/logbook.jsonl");
    assertThat(below(Launcher.CONSOLE.resolve("src"))).isEqualTo(around);
    beside.add("data-of-tests");
    assertThat(names(InProcess.DATA.getParent())).isEqualTo(beside);
    assertThat(folder.resolveSibling("outside")).doesNotExist();
    assertThat(Path.of("/etc/outside")).doesNotExist();
  }

  private static Set<String> names(Path place) throws IOException {
    try (Stream<Path> all = Files.list(place)) {
      return new TreeSet<>(all.map(path -> path.getFileName().toString()).toList());
    }
  }

  @Test
  void aShopsClaimsNameNoFiles() throws IOException {
    String example = Files.readString(Launcher.CONSOLE.resolve("examples/own-knowledge.json"));
    for (String name : List.of("../outside", "/etc/outside")) {
      Path own =
          Launcher.file(folder, "own.json", example.replace("\"id\": \"", "\"id\": \"" + name));
      assertThat(run("advise", RAIN, "--overlay", own.toString()).err())
          .contains("an id is small letters, digits and single hyphens");
    }
    assertThat(names(folder)).containsExactly("own.json");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aLinkInThePlaceOfAFileIsReplacedAndNeverWrittenThrough() throws IOException {
    Path outside = Launcher.file(folder, "outside.txt", "mine");
    Path cards = Files.createDirectory(folder.resolve("cards"));
    Files.createSymbolicLink(cards.resolve(".card.html.next"), outside);
    Files.createSymbolicLink(cards.resolve("linked.html"), outside);
    assertThat(run("card", RAIN, "--out", cards.resolve("card.html").toString()).exit()).isZero();
    assertThat(run("card", RAIN, "--out", cards.resolve("linked.html").toString()).err())
        .contains("this file exists already");
    assertThat(
            run("card", RAIN, "--force", "--out", cards.resolve("linked.html").toString()).exit())
        .isZero();
    assertThat(cards.resolve("card.html")).content().contains("<html");

    run("log", "add", "kart", "Heron 7");
    Path export = Files.createDirectory(folder.resolve("export"));
    Files.createSymbolicLink(export.resolve("karts.csv"), outside);
    Files.createSymbolicLink(export.resolve("laps.csv"), folder.resolve("not-there"));
    assertThat(run("log", "export", export.toString()).out())
        .contains("karts.csv: it is there already", "laps.csv: it is there already");
    assertThat(run("log", "export", export.toString(), "--force").out())
        .contains("karts.csv: written");
    assertThat(outside).hasContent("mine");
    assertThat(folder.resolve("not-there")).doesNotExist();
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void nobodyWaitsForAPipeOrADeviceInTheDataFolder() throws IOException, InterruptedException {
    Files.createDirectories(InProcess.DATA);
    Map<String, List<String>> readers =
        Map.of(
            "logbook.jsonl", List.of("log"),
            "own-knowledge.json", List.of("advise", RAIN),
            "last-consultation.json",
                List.of("card", "last", "--out", folder.resolve("card.html").toString()));
    for (Map.Entry<String, List<String>> reader : readers.entrySet()) {
      String name = reader.getKey();
      Path pipe = InProcess.DATA.resolve(name);
      assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor()).isZero();
      assertTimeoutPreemptively(
          Duration.ofSeconds(30),
          () -> {
            Outcome outcome = run(reader.getValue().toArray(String[]::new));
            assertThat(outcome.exit()).isEqualTo(1);
            assertThat(outcome.err()).contains(name + " is no ordinary file; move it away");
          });
      Files.delete(pipe);
    }
    Files.createSymbolicLink(InProcess.DATA.resolve("logbook.jsonl"), Path.of("/dev/zero"));
    assertThat(run("log").err()).contains("logbook.jsonl is no ordinary file; move it away");
  }
}
