package insidelift.engine.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;

class MechanismTest {

  @ParameterizedTest
  @EnumSource(
      mode = Mode.EXCLUDE,
      names = {"CASTER_LIFT", "CASTER_DIAGONAL", "CASTER_EFFORT"})
  void these_signs_hold_over_the_whole_documented_range(Mechanism mechanism) {
    Agreement agreement = mechanism.overDocumentedRange();

    assertThat(agreement.throughout()).as(agreement.toString()).isTrue();
    assertThat(agreement.where()).isEmpty();
  }

  @Test
  void caster_lifts_except_where_the_outer_front_already_hangs_in_the_air() {
    Agreement agreement = Mechanism.CASTER_LIFT.overDocumentedRange();

    assertThat(agreement.opposed()).isFalse();
    assertThat(agreement.agreeing()).isGreaterThan(agreement.cases() * 95 / 100);
    assertThat(agreement.where())
        .isEqualTo("within steer 15 to 30°, lateral acceleration 0 to 0.4 g");
    for (KartGeometry kart : DocumentedRange.karts()) {
      if (Mechanism.CASTER_LIFT.effect(kart, 30, 0) > -1e-6) {
        assertThat(LoadModel.loads(kart, 30, 0).frontOuterN()).isZero();
      }
    }
  }

  @Test
  void caster_loads_the_inner_front_except_with_a_wheel_in_the_air() {
    Agreement agreement = Mechanism.CASTER_DIAGONAL.overDocumentedRange();

    assertThat(agreement.opposed()).isFalse();
    assertThat(agreement.throughout()).isFalse();
  }

  @Test
  void caster_makes_the_steering_heavier_but_for_a_corner_of_the_range_standing_still() {
    Agreement agreement = Mechanism.CASTER_EFFORT.overDocumentedRange();

    assertThat(agreement.agreeing()).isGreaterThan(agreement.cases() * 99 / 100);
    assertThat(agreement.where()).startsWith("within steer 30°, lateral acceleration 0 g");
  }

  @Test
  void a_claim_of_the_wrong_sign_would_be_found_out() {
    Agreement wrong =
        Agreement.of(
            List.of(
                new Agreement.Trial(KartGeometry.typical(), 10, 0.4, 1),
                new Agreement.Trial(KartGeometry.typical(), 20, 0.4, -1),
                new Agreement.Trial(KartGeometry.typical(), 30, 0.4, 0)),
            1,
            1e-6);

    assertThat(wrong).isEqualTo(new Agreement(3, 1, 1, "within steer 20 to 30°"));
    assertThat(wrong.opposed()).isTrue();
  }

  @Test
  void every_mechanism_has_a_word_for_the_notes() {
    assertThat(Mechanism.CASTER_LIFT.word()).isEqualTo("caster-lift");
    assertThat(Mechanism.named("wider-front-lift")).contains(Mechanism.WIDER_FRONT_LIFT);
    assertThat(Mechanism.named("magic")).isEmpty();
  }
}
