package insidelift.shared.casefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.shared.Vocabulary;
import insidelift.shared.situation.CaseProblem;
import java.io.ByteArrayInputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Files that are broken before a word of them can be understood. */
class JsonInputTest {

  private static JsonPlace read(byte[] bytes) throws Exception {
    return JsonInput.read(new ByteArrayInputStream(bytes));
  }

  private static JsonPlace read(String text) throws Exception {
    return read(text.getBytes(StandardCharsets.UTF_8));
  }

  private static void refused(String text, String message) {
    assertThatThrownBy(() -> read(text)).isInstanceOf(CaseProblem.class).hasMessage(message);
  }

  @Test
  void anEmptyFileIsRefused() {
    refused("", "the file is empty");
    refused(" \n\t\n", "the file is empty");
    refused("\uFEFF", "the file is empty");
  }

  @Test
  void aByteOrderMarkIsNoFault() throws Exception {
    assertThat(read("\uFEFF{\"a\": 1}").node().path("a").asInt()).isEqualTo(1);
  }

  @Test
  void aTruncatedFileIsRefusedWhereItEnds() {
    refused("{\"a\": 1", "the file ends in the middle (line 1, column 8)");
    refused("{\n  \"a\": [", "the file ends in the middle (line 2, column 9)");
    refused("{\"a\": \"we", "the file ends in the middle (line 1, column 10)");
  }

  @Test
  void whatIsNotJsonIsRefusedWhereItBegins() {
    refused("water: wet", "this is not JSON (line 1, column 1)");
    refused("{'a': 1}", "this is not JSON (line 1, column 2)");
    refused("{\"a\": 1,}", "this is not JSON (line 1, column 9)");
    refused("{\n\"a\" 1}", "this is not JSON (line 2, column 5)");
  }

  @Test
  void whatJsonHasNoNumberForIsRefused() {
    refused("{\"a\": NaN}", "this is not JSON (line 1, column 10)");
    refused("{\"a\": Infinity}", "this is not JSON (line 1, column 15)");
    refused("{\"a\": -Infinity}", "this is not JSON (line 1, column 16)");
  }

  @Test
  void aKeyThatStandsTwiceIsRefused() {
    refused("{\"a\": 1, \"a\": 2}", "the key \"a\" stands twice (line 1, column 13)");
  }

  @Test
  void whatFollowsTheDocumentIsRefused() {
    refused("{} {}", "this is not JSON (line 1, column 4)");
    refused("{}x", "this is not JSON (line 1, column 3)");
  }

  @Test
  void aFileOfAMegabyteIsReadAndOneByteMoreIsRefused() throws Exception {
    String most = "{}" + " ".repeat((1 << 20) - 2);
    assertThat(read(most).node().isObject()).isTrue();
    refused(most + " ", "the file is larger than 1 MB, which no case needs");
  }

  @Test
  void sixteenLevelsAreReadAndOneMoreIsRefused() throws Exception {
    assertThat(read("[".repeat(16) + "]".repeat(16)).node().isArray()).isTrue();
    refused("[".repeat(17) + "]".repeat(17), "the file nests deeper than 16 levels");
    refused("{\"a\":".repeat(100_000), "the file nests deeper than 16 levels");
  }

  @Test
  void longWordsAreRefused() throws Exception {
    assertThat(read("\"" + "x".repeat(10_000) + "\"").word()).hasSize(10_000);
    refused("\"" + "x".repeat(10_001) + "\"", "a word is longer than 10000 characters");
    refused("{\"" + "x".repeat(300_000) + "\": 1}", "a word is longer than 10000 characters");
  }

  @Test
  void longNumbersAreRefused() throws Exception {
    assertThat(read("1".repeat(40)).node().isNumber()).isTrue();
    refused("1".repeat(41), "a number has more than 40 digits");
    refused("1." + "1".repeat(60), "a number has more than 40 digits");
  }

  @Test
  void otherEncodingsAreRefused() {
    for (Charset charset : List.of(StandardCharsets.UTF_16, StandardCharsets.ISO_8859_1)) {
      assertThatThrownBy(() -> read("{\"a\": \"größer\"}".getBytes(charset)))
          .isInstanceOf(CaseProblem.class)
          .hasMessage("the file is not UTF-8 text");
    }
  }

  @Test
  void nothingFromOutsideIsEchoedRaw() {
    CaseReader reader = new CaseReader(Vocabulary.load());
    String evil = "\\u001b[2J\\u202e\\u0007";
    String shown = "\\u{1b}[2J\\u{202e}\\u{7}";

    assertThatThrownBy(
            () -> reader.read("{\"schema\": 1, \"answers\": {\"water\": \"" + evil + "\"}}"))
        .hasMessage("answers.water: \"" + shown + "\" is not one of dry, damp, wet, standing");
    assertThatThrownBy(() -> reader.read("{\"schema\": 1, \"" + evil + "\": 1}"))
        .hasMessage(
            "\"" + shown + "\" is not a key here; the keys are answers, history, kart, schema");
    assertThatThrownBy(() -> reader.read("{\"schema\": \"" + evil + "\"}")).message().isPrintable();
    refused(
        "{\"" + evil + "\": 1, \"" + evil + "\": 2}",
        "the key \"" + shown + "\" stands twice (line 1, column 53)");
    assertThatThrownBy(() -> read("{\u001B[31m}"))
        .hasMessage("this is not JSON (line 1, column 3)");
  }

  @Test
  void aLongWordIsEchoedInPart() {
    assertThatThrownBy(
            () ->
                new CaseReader(Vocabulary.load())
                    .read(
                        "{\"schema\": 1, \"answers\": {\"water\": \"" + "x".repeat(5000) + "\"}}"))
        .hasMessage(
            "answers.water: \"%s...\" is not one of dry, damp, wet, standing"
                .formatted("x".repeat(60)));
  }
}
