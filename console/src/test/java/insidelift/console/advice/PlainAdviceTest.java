package insidelift.console.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which words ask for advice so plainly that no library need understand them. */
class PlainAdviceTest {

  private static boolean plain(String words) {
    return CaseAdvice.plain(Stream.of(words.split(" ")).toArray(String[]::new)).isPresent();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"advise a.json", "advise a.json --json", "advise --json a.json", "advise -"})
  void aCaseFileAndNothingElseButJson(String words) {
    assertThat(plain(words)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "advise",
        "advise --json",
        "advise a.json b.json",
        "advise a.json --json --json",
        "advise a.json --log",
        "advise a.json --units us",
        "advise --help",
        "advise @words",
        "advice a.json",
        "card a.json",
        "--units us advise a.json"
      })
  void anythingElseIsNot(String words) {
    assertThat(plain(words)).isFalse();
  }

  @Test
  void noWordIsNot() {
    assertThat(CaseAdvice.plain()).isEmpty();
  }
}
