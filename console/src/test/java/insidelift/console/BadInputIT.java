package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import insidelift.console.Launcher.Outcome;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that cannot be used: one sentence that names the place, and nothing else. */
@Execution(ExecutionMode.CONCURRENT)
class BadInputIT {

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{'schema': 1, 'answers': {'watter': 'wet'}} | answers: \"watter\" is not a key here; the keys are...",
        "{'schema': 1, 'answers': {'water': 'soaked'}}"
            + " | answers.water: \"soaked\" is not one of dry, damp, wet, standing",
        "{'schema': 1, 'answers': {'water': 3}}"
            + " | answers.water: this must be a word in quotation marks, but it is the number 3",
        "{'schema': 1, 'answers': ['wet']}"
            + " | answers: this must be an object in braces, but it is a list",
        "{'schema': 1, 'answers': {'water': 'wet', 'water': 'dry'}}"
            + " | the key \"water\" stands twice (line 1, column 50)",
        "{'schema': 1, 'answers': {'powerKw': NaN}} | this is not JSON (line 1, column 41)",
        "{'schema': 1, 'answers': {'powerKw': 600}}"
            + " | answers.powerKw: 600 is outside 1 to 60 kW",
        "{'schema': 1, 'kart': {'camber': {'left': 1, 'right': 1e999}}}"
            + " | kart.camber.right: Infinity is outside -10 to 10 degrees",
        "{'schema': 1, 'answers': {'water': 'we | the file ends in the middle (line 1, column 39)",
        "{'schema': 2, 'answers': {}} | schema: 2 is not known; this build reads schema 1",
        "{'schema': '1', 'answers': {}}"
            + " | schema: \"1\" is not known; this build reads schema 1",
        "{'schema': 1} {'schema': 1} | this is not JSON (line 1, column 15)",
        "[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]"
            + " | the file nests deeper than 16 levels",
        "`  ` | the file is empty",
        "{'schema': 1, 'answers': {'water': 'w\\u001b[31met\\u202e'}}"
            + " | answers.water: \"w\\u{1b}[31met\\u{202e}\" is not one of dry, damp, wet, standing",
        "{'schema': 1, 'answers': {'wa\\u0007ter': 'wet'}}"
            + " | answers: \"wa\\u{7}ter\" is not a key here; the keys are...",
        "{'schema': 1, 'kart': {'eccentrics': {'pivots': 'sideways'}}} | kart.eccentrics...",
        "{'schema': 1, 'kart': {'geometry': {'kpiDeg': 'steep'}}} | kart.geometry...",
      })
  void aCaseFileThatCannotBeUsedIsRefusedInOneSentenceWithThePlace(String json, String sentence) {
    Path file = Launcher.file(folder, "case.json", json.replace('\'', '"'));
    assertRefused(Launcher.with("advise", file.toString()).run(), file.toString(), sentence);
  }

  @Test
  void aKartThatCannotBeIsRefusedInOneSentenceHoweverTheAdviceIsPrinted() {
    Path file =
        Launcher.file(
            folder,
            "case.json",
            "{\"schema\": 1, \"answers\": {\"water\": \"wet\"},"
                + " \"kart\": {\"eccentrics\": {\"throwMm\": 2, \"pivotSpacingMm\": 60}}}");
    String sentence = "kart.eccentrics.pivots: is missing";
    assertRefused(
        Launcher.with("advise", file.toString(), "--json").run(), file.toString(), sentence);
    assertRefused(Launcher.with("advise", file.toString()).run(), file.toString(), sentence);
  }

  @Test
  void tenMegabytesAreRefusedFromAFileAndFromStandardInput() {
    String ten = "{\"schema\": 1, \"answers\": {" + " ".repeat(10 << 20) + "}}";
    Path file = Launcher.file(folder, "large.json", ten);
    String sentence = "the file is larger than 1 MB, which no case needs";
    assertRefused(Launcher.with("advise", file.toString()).run(), file.toString(), sentence);
    assertRefused(
        Launcher.with("advise", "-", "--json").typing(ten).run(), "standard input", sentence);
  }

  @Test
  void aHundredThousandLevelsAreRefusedAsDeep() {
    Path file = Launcher.file(folder, "deep.json", "{\"schema\":".repeat(50_000));
    assertRefused(
        Launcher.with("advise", file.toString()).run(),
        file.toString(),
        "the file nests deeper than 16 levels");
  }

  @Test
  void bytesThatAreNoTextAreRefused() throws IOException {
    Path file = Files.write(folder.resolve("case.json"), new byte[] {'{', (byte) 0xff, '}'});
    assertRefused(
        Launcher.with("advise", file.toString()).run(),
        file.toString(),
        "the file is not UTF-8 text");
  }

  @Test
  void aFolderIsNoFileAndAMissingFileIsMissing() {
    assertRefused(
        Launcher.with("advise", folder.toString()).run(),
        folder.toString(),
        "this is a folder, not a file");
    String missing = folder.resolve("none.json").toString();
    assertRefused(Launcher.with("advise", missing).run(), missing, "there is no such file");
  }

  @Test
  void aFileWithoutPermissionIsSaidToHaveNone() throws IOException {
    Path file = Launcher.file(folder, "locked.json", "{}");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
    assumeFalse(Files.isReadable(file), "the superuser may read every file");
    assertRefused(
        Launcher.with("advise", file.toString()).run(),
        file.toString(),
        "there is no permission to read it");
  }

  @Test
  void controlCharactersInAFileNameAreSpeltOut() {
    assertRefused(
        Launcher.with("advise", "no\u001b[2Jne\r.json").run(),
        "no\\u{1b}[2Jne\\u{d}.json",
        "there is no such file");
  }

  @ParameterizedTest
  @ValueSource(strings = {"predict", "gauge", "toe", "positions"})
  void theOtherVerbsRefuseAsShortly(String verb) {
    String missing = folder.resolve("no\u001b[2Jne.json").toString();
    assertOneSentence(Launcher.with(verb, missing).run(), "no such file");
    Path file = Launcher.file(folder, "kart.json", "{\"schema\": 1, \"nonsense\u001b\": 1");
    assertOneSentence(Launcher.with(verb, file.toString()).run(), "kart.json");
    assertOneSentence(Launcher.with(verb, folder.toString()).run(), "a folder, not a file");
  }

  @Test
  void lapTimesThatAreNoneAreRefusedWithTheirLine() {
    String good = Launcher.CONSOLE.resolve("examples/before.laps").toString();
    Path bad = Launcher.file(folder, "bad.laps", "62.9\n54.4\nfifty\u001b[31mfour\n54.2\n");
    assertOneSentence(Launcher.with("prove", good, bad.toString()).run(), "line 3");
    String missing = folder.resolve("no\u001b[2Jne.laps").toString();
    assertOneSentence(Launcher.with("prove", good, missing).run(), "there is no such file");
    assertOneSentence(Launcher.with("prove", good, folder.toString()).run(), "a folder");
  }

  /** A sentence that ends in three dots is only the beginning of what is said. */
  private static void assertRefused(Outcome outcome, String name, String sentence) {
    assertOneSentence(outcome, "");
    String said = "insidelift: " + name + ": " + sentence;
    if (sentence.endsWith("...")) {
      assertThat(outcome.err()).startsWith(said.substring(0, said.length() - 3));
    } else {
      assertThat(outcome.err()).isEqualTo(said + "\n");
    }
  }

  private static void assertOneSentence(Outcome outcome, String part) {
    assertThat(outcome.exit()).isEqualTo(1);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err()).startsWith("insidelift: ").endsWith("\n").contains(part);
    assertThat(outcome.err().lines()).hasSize(1);
    assertThat(outcome.err()).doesNotContain("Exception", "\tat ", "null");
    assertThat(outcome.err().strip().getBytes(StandardCharsets.UTF_8))
        .doesNotContain((byte) 0x1b, (byte) 7, (byte) '\r');
  }
}
