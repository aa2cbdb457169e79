package insidelift.engine.geometry.plausible;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import insidelift.engine.geometry.kart.Corner;
import insidelift.engine.geometry.kart.Dimension;
import insidelift.engine.geometry.kart.KartGeometry;
import insidelift.engine.geometry.kart.LoadModel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class MechanismTest {

  @ParameterizedTest
  @EnumSource(Mechanism.class)
  void each_holds_on_nearly_every_plausible_kart_in_every_corner_it_is_said_of(
      Mechanism mechanism) {
    assertThat(mechanism.corners()).isNotEmpty();
    for (Corner corner : mechanism.corners()) {
      assertThat(mechanism.share(corner))
          .as(corner.name())
          .isGreaterThanOrEqualTo(Mechanism.LEAST_SHARE);
    }
  }

  /**
   * Shares worked out beforehand over 60,000 random karts, by another program with a scatter of the
   * corners of its own, which moves how many karts are in the air in the dry.
   */
  @ParameterizedTest
  @CsvSource({
    "CASTER_LIFT, 1.00, 1.00, 1.00",
    "CASTER_DIAGONAL, 0.70, 0.76, 0.98",
    "WIDER_FRONT_LIFT, 1.00, 0.998, 1.00",
    "CAMBER_LEAN_OUTER, 1.00, 1.00, 1.00"
  })
  void the_shares_are_those_of_many_more_karts(
      Mechanism mechanism, double turnIn, double apex, double wet) {
    assertThat(mechanism.share(Corner.TURN_IN)).isCloseTo(turnIn, within(0.1));
    assertThat(mechanism.share(Corner.APEX)).isCloseTo(apex, within(0.1));
    assertThat(mechanism.share(Corner.WET)).isCloseTo(wet, within(0.02));
  }

  @Test
  void what_fails_with_a_wheel_in_the_air_would_be_found_out_in_the_dry() {
    assertThat(Mechanism.CASTER_DIAGONAL.share(Corner.TURN_IN)).isLessThan(Mechanism.LEAST_SHARE);
    assertThat(Mechanism.CASTER_DIAGONAL.corners()).containsExactly(Corner.WET);
  }

  @Test
  void at_walking_pace_with_the_outer_front_up_caster_moves_no_load() {
    Corner walking = new Corner("", 40, 0.05, 0);
    KartGeometry kart = KartGeometry.typical().with(Dimension.CASTER, 22);

    assertThat(LoadModel.loads(kart, 40, 0.05, 0).frontOuterN()).isZero();
    assertThat(Mechanism.CASTER_LIFT.effect(kart, walking)).isCloseTo(0, within(1e-9));
  }

  @Test
  void every_mechanism_has_a_word_for_the_notes() {
    assertThat(Mechanism.CASTER_LIFT.word()).isEqualTo("caster-lift");
    assertThat(Mechanism.named("wider-front-lift")).contains(Mechanism.WIDER_FRONT_LIFT);
    assertThat(Mechanism.named("magic")).isEmpty();
  }
}
