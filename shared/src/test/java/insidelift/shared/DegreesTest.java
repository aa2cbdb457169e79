package insidelift.shared;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class DegreesTest {

  @Test
  void oneDecimalIsAlwaysWrittenAndASecondOnlyIfItSaysSomething() {
    assertThat(Degrees.of(0.5)).hasToString("0.5°");
    assertThat(Degrees.of(2)).hasToString("2.0°");
    assertThat(Degrees.of(0.25)).hasToString("0.25°");
    assertThat(Degrees.of(-1.5)).hasToString("-1.5°");
  }

  @Test
  void aHundredthIsTheLastFigure() {
    assertThat(Degrees.of(0.126)).hasToString("0.13°");
    assertThat(Degrees.of(0.1 + 0.2)).hasToString("0.3°");
  }

  @Test
  void thereIsNoMinusZero() {
    assertThat(Degrees.of(-0.001)).hasToString("0.0°");
    assertThat(Degrees.of(-0.0).signed()).isEqualTo("0.0°");
  }

  @Test
  void aSignedAngleShowsItsSignButZeroHasNone() {
    assertThat(Degrees.of(1).signed()).isEqualTo("+1.0°");
    assertThat(Degrees.of(-0.5).signed()).isEqualTo("-0.5°");
    assertThat(Degrees.ZERO.signed()).isEqualTo("0.0°");
  }

  @Test
  void anAngleIsFinite() {
    assertThatThrownBy(() -> Degrees.of(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("an angle must be a finite number of degrees: NaN");
    assertThatThrownBy(() -> Degrees.of(Double.NEGATIVE_INFINITY))
        .hasMessage("an angle must be a finite number of degrees: -Infinity");
  }

  @Test
  void anglesAddScaleAndCompare() {
    assertThat(Degrees.of(1).plus(Degrees.of(0.5))).isEqualTo(Degrees.of(1.5));
    assertThat(Degrees.of(1).minus(Degrees.of(1.5))).isEqualTo(Degrees.of(-0.5));
    assertThat(Degrees.of(0.5).times(-2)).isEqualTo(Degrees.of(-1));
    assertThat(Degrees.of(-0.5).size()).isEqualTo(Degrees.of(0.5));
    assertThat(Degrees.of(0).middle(Degrees.of(0.5))).isEqualTo(Degrees.of(0.25));
    assertThat(Degrees.of(0.5)).isGreaterThan(Degrees.of(-0.5));
  }

  @Test
  void theNoiseOfArithmeticIsNoDifference() {
    assertThat(Degrees.of(0.1 + 0.2).exceeds(Degrees.of(0.3))).isFalse();
    assertThat(Degrees.of(0.1 + 0.2).same(Degrees.of(0.3))).isTrue();
    assertThat(Degrees.of(0.31).exceeds(Degrees.of(0.3))).isTrue();
    assertThat(Degrees.of(0.31).same(Degrees.of(0.3))).isFalse();
  }
}
