package insidelift.console.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NumbersTest {

  @Test
  void numbersStandApartByBlanksCommasOrSemicolons() {
    assertThat(Numbers.of("2 5", 9)).contains(List.of(2, 5));
    assertThat(Numbers.of("2,5;  7", 9)).contains(List.of(2, 5, 7));
    assertThat(Numbers.of("", 9)).contains(List.of());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "10", "2 10", "x", "2 x", "-1", "1.5", "111"})
  void anythingElseIsNoListOfNumbers(String line) {
    assertThat(Numbers.of(line, 9)).isEmpty();
  }
}
