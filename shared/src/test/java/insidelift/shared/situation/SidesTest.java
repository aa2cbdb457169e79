package insidelift.shared.situation;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.shared.Degrees;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Left and right. The quarter of a degree is provisional: no published figure was found. */
class SidesTest {

  private static Sides sides(double left, double right) {
    return new Sides(Degrees.of(left), Degrees.of(right));
  }

  @Test
  void aQuarterOfADegreeApartCountsAsEqual() {
    assertThat(sides(0, 0.25).equal()).isTrue();
    assertThat(sides(0.25, 0).equal()).isTrue();
    assertThat(sides(1.1, 1.35).equal()).isTrue();
  }

  @Test
  void aHundredthMoreDoesNot() {
    assertThat(sides(0, 0.26).equal()).isFalse();
    assertThat(sides(0.26, 0).equal()).isFalse();
    assertThat(sides(-0.13, 0.13).equal()).isFalse();
  }

  @Test
  void thePairReadsAsItsMiddle() {
    assertThat(sides(0.5, 0.7).middle().same(Degrees.of(0.6))).isTrue();
    assertThat(sides(0.5, 0.7).difference().same(Degrees.of(0.2))).isTrue();
    assertThat(Sides.both(Degrees.of(1))).isEqualTo(sides(1, 1));
  }

  @Test
  void absoluteCasterIsMeasuredFromItsNeutral() {
    Kart relative = Kart.UNKNOWN.with(null, sides(1, 1));
    assertThat(relative.casterFromNeutral()).contains(Degrees.of(1));

    assertThat(absolute(Optional.of(Degrees.of(12))).casterFromNeutral()).contains(Degrees.of(2));
    assertThat(absolute(Optional.empty()).casterFromNeutral()).isEmpty();
  }

  private static Kart absolute(Optional<Degrees> neutral) {
    return new Kart(
        Optional.empty(),
        Optional.of(sides(14, 14)),
        true,
        neutral,
        Eccentrics.UNKNOWN,
        Optional.empty());
  }
}
