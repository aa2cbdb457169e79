package insidelift.console.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TextTest {

  private static final String WORDS =
      "Do exactly the same on the other side, measure camber, caster and toe again on both sides,"
          + " and only then let the driver go out for a first slow lap.";

  @ParameterizedTest
  @ValueSource(ints = {20, 40, 80})
  void aParagraphFillsItsWidthAndKeepsEveryWord(int width) {
    var lines = new Text(width).paragraph(WORDS).lines();
    assertThat(lines).allMatch(line -> line.length() <= width);
    assertThat(String.join(" ", lines)).isEqualTo(WORDS);
    for (int i = 1; i < lines.size(); i++) {
      String next = lines.get(i).split(" ", 2)[0];
      assertThat(lines.get(i - 1).length() + 1 + next.length())
          .as("the first word of line %d has no room in the line before", i)
          .isGreaterThan(width);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {20, 40, 80})
  void anItemIsIndentedByTheWidthOfItsMark(int width) {
    var lines = new Text(width).item(" 10. ", WORDS).lines();
    assertThat(lines.get(0)).startsWith(" 10. Do");
    assertThat(lines.subList(1, lines.size())).allMatch(line -> line.matches(" {5}\\S.*"));
    assertThat(lines).allMatch(line -> line.length() <= width);
  }

  @Test
  void aWordLongerThanTheLineStandsAloneAndWhole() {
    assertThat(new Text(20).paragraph("see antidisestablishmentarianism there").lines())
        .containsExactly("see", "antidisestablishmentarianism", "there");
  }

  @Test
  void aWidthUnderTwentyCountsAsTwenty() {
    assertThat(new Text(3).paragraph("twelve chars and more").lines())
        .isEqualTo(new Text(20).paragraph("twelve chars and more").lines());
  }

  @Test
  void aHeadingHasARuleOfItsOwnLengthAndOneBlankLineAbove() {
    assertThat(new Text(40).heading("Why").blank().blank().heading("Take care").lines())
        .containsExactly("Why", "---", "", "Take care", "---------");
    assertThat(new Text(20).heading("A heading longer than its screen").lines().get(1))
        .isEqualTo("-".repeat(20));
  }

  @Test
  void textFromOutsideIsOneHarmlessLine() {
    assertThat(Text.safe("one\n  two\u001b[31m\r\nthree\u202e"))
        .isEqualTo("one two\\u{1b}[31m three\\u{202e}");
    assertThat(Text.safe("x".repeat(600))).isEqualTo("x".repeat(500) + "...");
  }
}
