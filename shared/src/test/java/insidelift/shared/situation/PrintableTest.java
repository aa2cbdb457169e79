package insidelift.shared.situation;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PrintableTest {

  @Test
  void plainTextStaysAsItIs() {
    assertThat(Printable.shown("wet, +1.0° größer 雨 \uD83D\uDE00"))
        .isEqualTo("wet, +1.0° größer 雨 \uD83D\uDE00");
    assertThat(Printable.quoted("wet")).isEqualTo("\"wet\"");
  }

  @Test
  void anEscapeSequenceIsSpeltOut() {
    assertThat(Printable.shown("\u001B[31mred\u001B[0m")).isEqualTo("\\u{1b}[31mred\\u{1b}[0m");
    assertThat(Printable.shown("a\u009B31mb")).isEqualTo("a\\u{9b}31mb");
  }

  @Test
  void controlCharactersAreSpeltOut() {
    assertThat(Printable.shown("a\nb\rc\td\u0000e\u0008f\u007F"))
        .isEqualTo("a\\u{a}b\\u{d}c\\u{9}d\\u{0}e\\u{8}f\\u{7f}");
  }

  @Test
  void whatTurnsTheReadingDirectionOrHidesIsSpeltOut() {
    assertThat(Printable.shown("a\u202Eb\u2066c\u200Bd\uFEFFe"))
        .isEqualTo("a\\u{202e}b\\u{2066}c\\u{200b}d\\u{feff}e");
  }

  @Test
  void lineSeparatorsPrivateAndBrokenCharactersAreSpeltOut() {
    assertThat(Printable.shown("a\u2028b\u2029c\uE000d\uD800e"))
        .isEqualTo("a\\u{2028}b\\u{2029}c\\u{e000}d\\u{d800}e");
  }

  @Test
  void aFifthAccentOnOneLetterIsSpeltOut() {
    String four = "o" + "\u0301".repeat(4);
    assertThat(Printable.shown(four + four)).isEqualTo(four + four);
    assertThat(Printable.shown(four + "\u0316o")).isEqualTo(four + "\\u{316}o");
  }

  @Test
  void aLongTextIsCutAfterSixtyCharacters() {
    assertThat(Printable.shown("x".repeat(60))).isEqualTo("x".repeat(60));
    assertThat(Printable.shown("x".repeat(61))).isEqualTo("x".repeat(60) + "...");
    assertThat(Printable.quoted("x".repeat(70))).isEqualTo('"' + "x".repeat(60) + "...\"");
    assertThat(Printable.shown("abcdef", 3)).isEqualTo("abc...");
  }

  @Test
  void aCharacterOutsideTheFirstPlaneIsNotCutInHalf() {
    assertThat(Printable.shown("\uD83D\uDE00\uD83D\uDE00", 1)).isEqualTo("\uD83D\uDE00...");
  }
}
