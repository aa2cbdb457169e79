package insidelift.console.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalTest {

  @ParameterizedTest
  @CsvSource({"0.4, 0.4", "'0,4', 0.4", "-3, -3", "+20, 20", "'1200,', 1200", "'-,5', -0.5"})
  void aPointOrACommaParts(String typed, double number) {
    assertThat(new Decimal().convert(typed)).isEqualTo(number);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "x", "NaN", "1e3", "1.200,5", "3f", "0x1p3", "1 2"})
  void anythingElseIsRefused(String typed) {
    assertThatThrownBy(() -> new Decimal().convert(typed))
        .hasMessage("\"%s\" is not a number such as 0.4 or 0,4".formatted(typed));
  }
}
