package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import insidelift.console.Launcher.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The packaged launcher from every place and with every verb. */
@Execution(ExecutionMode.CONCURRENT)
class LauncherIT {

  private static final Path WET = Launcher.CONSOLE.resolve("examples/heavy-in-the-rain.json");

  @TempDir private Path folder;

  @Test
  void adviseReadsAFileAndSaysOnOneScreenWhatToDo() {
    Outcome advice = done(Launcher.with("advise", WET.toString()).run());
    assertThat(advice.out())
        .startsWith("What to do now\n")
        .containsSubsequence("\n  do     ", "\n  how    ", "\n  care   ", "\n  undo   ")
        .endsWith("\nWith --full also: steps, why, care, other, numbers, sources.\n");
    assertThat(advice.out().lines()).hasSizeLessThanOrEqualTo(22);
  }

  @Test
  void adviseInFullHasWhatStandsBehindTheAnswerToo() {
    Outcome advice = done(Launcher.with("advise", WET.toString(), "--full").run());
    assertThat(advice.out())
        .startsWith("What to do now\n")
        .containsSubsequence("\nThe job, step by step\n", "\nWhy\n", "\nTake care\n");
  }

  @Test
  void adviseReadsStandardInputAndPrintsTheKeysOfAnAdvice() throws IOException {
    Outcome advice =
        done(Launcher.with("advise", "-", "--json").typing(Files.readString(WET)).run());
    JsonNode json = JsonMapper.builder().build().readTree(advice.out());
    assertThat(json.fieldNames())
        .toIterable()
        .contains(
            "schema",
            "status",
            "firstChecks",
            "findings",
            "suggestions",
            "alternatives",
            "unexplained",
            "wouldHelp");
    assertThat(json.get("schema").asInt()).isEqualTo(1);
    assertThat(json.get("status").asText()).isEqualTo("change");
    JsonNode camber = json.get("suggestions").get(0);
    assertThat(camber.fieldNames())
        .toIterable()
        .contains(
            "lever",
            "direction",
            "kind",
            "first",
            "degrees",
            "target",
            "positions",
            "strength",
            "summary",
            "reasons",
            "cautions",
            "steps",
            "minutes",
            "confirm",
            "undo");
    assertThat(camber.get("reasons").get(0).has("sources")).isTrue();
    assertThat(advice.out().chars()).allMatch(c -> c < 128);
  }

  @Test
  void itWorksFromAnotherFolderThroughASymbolicLinkWithARelativeFile() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("front end"), launcher());
    Path second = Files.createSymbolicLink(folder.resolve("again"), Path.of("front end"));
    Files.copy(WET, folder.resolve("my case.json"));
    assertThat(link).isSymbolicLink();
    done(Launcher.at(second, "advise", "my case.json").from(folder).run());
  }

  @Test
  void itWorksInAFolderWithSpacesInItsName() throws IOException {
    Path copy = Files.createDirectory(folder.resolve("my kart things"));
    Files.copy(launcher(), copy.resolve("insidelift"));
    Path lib = Files.createDirectories(copy.resolve("target/lib"));
    try (Stream<Path> jars = Files.list(Launcher.CONSOLE.resolve("target/lib"))) {
      for (Path jar :
          jars.filter(file -> !file.getFileName().toString().startsWith("start-")).toList()) {
        Files.copy(jar, lib.resolve(jar.getFileName()));
      }
    }
    Outcome notes = done(Launcher.at(copy.resolve("insidelift"), "notes").from(folder).run());
    assertThat(notes.out()).contains("camber-front-weak");
    try (Stream<Path> files = Files.list(lib)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .as("the archive of loaded classes, whole or not at all")
          .filteredOn(name -> name.startsWith("start-"))
          .allMatch(name -> name.endsWith(".jsa") || name.endsWith(".aot"))
          .hasSize(1);
    }
  }

  @Test
  void plainWordsAndTheSameWithAnOptionMoreSayTheSame() throws IOException {
    Path broken = Files.writeString(folder.resolve("broken.json"), "{\"schema\": 1,");
    for (String file : List.of(WET.toString(), broken.toString(), "-")) {
      Outcome one = Launcher.with("advise", file, "--json").run();
      Outcome other = Launcher.with("advise", file, "--json", "--units", "metric").run();
      assertThat(one).as(file).isEqualTo(other);
    }
  }

  @Test
  void itTakesTheJavaOfJavaHomeAndElseTheOneOnThePath() {
    String home = System.getProperty("java.home");
    done(Launcher.with("--version").set("JAVA_HOME", home).run());
    done(Launcher.with("--version").unset("JAVA_HOME").set("PATH", path()).run());
    Outcome none =
        Launcher.with("--version").set("JAVA_HOME", "/nowhere").set("PATH", path()).run();
    assertThat(done(none).out()).isEqualTo("insidelift 0.1.0\n");
  }

  @Test
  void withoutAnyJavaItSaysSo() throws IOException {
    for (String tool : List.of("readlink", "dirname", "sh")) {
      Files.createSymbolicLink(folder.resolve(tool), onPath(tool));
    }
    Outcome none =
        Launcher.with("--version").unset("JAVA_HOME").set("PATH", folder.toString()).run();
    assertThat(none.exit()).isEqualTo(1);
    assertThat(none.out()).isEmpty();
    assertThat(none.err())
        .isEqualTo("insidelift: no Java found; install Java 17 or newer, or set JAVA_HOME\n");
  }

  @Test
  void helpNamesEveryVerbAndEveryExitCode() {
    Outcome help = done(Launcher.with("--help").run());
    assertThat(help.out())
        .contains("advise", "predict", "positions", "gauge", "toe", "prove", "notes", "130")
        .doesNotContain("rehearse");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "advice  | there is no verb \"advice\"; did you mean advise? | insidelift",
        "xyzzy   | there is no verb \"xyzzy\"                 | insidelift",
        "--jsn   | Unknown option: '--jsn'                    | insidelift",
        "advise  | Missing required parameter: 'CASE'             | insidelift advise",
        "predict | Missing required parameter: 'KART'             | insidelift predict",
        "prove   | Missing required parameters: 'BEFORE', 'AFTER' | insidelift prove"
      })
  void aCommandLineThatIsNotUnderstoodIsExit2InTwoLines(String word, String what, String command) {
    Outcome outcome = Launcher.with(word).run();
    assertThat(outcome.err()).isEqualTo("insidelift: " + what + "\nTry: " + command + " --help\n");
    assertThat(outcome.exit()).isEqualTo(2);
    assertThat(outcome.out()).isEmpty();
  }

  @Test
  void aWordThatNoFeelIsIsNamedWithTheWordsThatAre() {
    String laps = Launcher.CONSOLE.resolve("examples/before.laps").toString();
    Outcome outcome = Launcher.with("prove", laps, laps, "--feel", "lovely").run();
    assertThat(outcome.err())
        .startsWith("insidelift: --feel: \"lovely\" is not one of better, same, worse, unknown\n");
    assertThat(outcome.exit()).isEqualTo(2);
    assertThat(outcome.out()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"nonsense", "../bibliography", "cam\u001b[31mber"})
  void aNoteThatIsNotThereIsNamedHarmlessly(String id) {
    Outcome outcome = Launcher.with("notes", id).run();
    assertThat(outcome.err())
        .isEqualTo(
            "insidelift: there is no note \"%s\"; \"insidelift notes\" lists them all\n"
                .formatted(id.replace("\u001b", "\\u{1b}")));
    assertThat(outcome.exit()).isEqualTo(1);
    assertThat(outcome.out()).isEmpty();
  }

  @Test
  void whatShipsHoldsNoRuleCompilerNoParserNoXmlAndNoTestLibrary() throws IOException {
    try (Stream<Path> jars = Files.list(Launcher.CONSOLE.resolve("target/lib"))) {
      List<String> names = jars.map(jar -> jar.getFileName().toString()).sorted().toList();
      assertThat(names)
          .anyMatch(name -> name.startsWith("drools-core-"))
          .anyMatch(name -> name.startsWith("insidelift-console-"))
          .contains("complete");
      assertThat(names)
          .noneMatch(
              name ->
                  name.matches(
                      "(drools-(compiler|drl|ecj|mvel|model-codegen|codegen|xml|decision|templates)"
                          + "|kie-(dmn|util-xml|maven|ci)|mvel|antlr|ecj|xstream|xerces|xalan|xmlpull"
                          + "|junit|assertj|archunit|byte-buddy|hamcrest|mockito|pty4j|jna|kotlin).*"));
    }
  }

  private static Outcome done(Outcome outcome) {
    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.exit()).isZero();
    assertThat(outcome.out()).isNotBlank();
    return outcome;
  }

  private static Path launcher() {
    return Launcher.CONSOLE.resolve("insidelift");
  }

  private static String path() {
    return Path.of(System.getProperty("java.home"), "bin") + ":" + System.getenv("PATH");
  }

  private static Path onPath(String tool) {
    return Stream.of(System.getenv("PATH").split(":"))
        .map(place -> Path.of(place, tool))
        .filter(Files::isExecutable)
        .findFirst()
        .orElseThrow();
  }
}
