package insidelift.engine.geometry.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import insidelift.engine.geometry.effect.ChangeCurves.Lean;
import insidelift.engine.geometry.effect.ChangeCurves.Lift;
import insidelift.engine.geometry.kart.Corner;
import insidelift.engine.geometry.kart.CornerState;
import insidelift.engine.geometry.kart.KartGeometry;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChangeCurvesTest {

  private static final KartGeometry TYPICAL = KartGeometry.typical();
  private static final ChangeEffect MORE_CASTER =
      ChangeEffect.of(TYPICAL, 0, 2, List.of(Corner.TURN_IN));
  private static final ChangeCurves CURVES = ChangeCurves.of(MORE_CASTER);

  @Test
  void the_leans_pass_through_what_the_corner_says() {
    Lean steered =
        CURVES.leans().stream().filter(lean -> lean.steerDeg() == 10).findFirst().orElseThrow();
    assertThat(steered.innerBefore())
        .isEqualTo(CornerState.of(TYPICAL, 10, 0.9, -0.6).innerLeanDeg(), within(1e-9));
    assertThat(steered.outerAfter())
        .isEqualTo(CornerState.of(MORE_CASTER.after(), 10, 0.9, -0.6).outerLeanDeg(), within(1e-9));
  }

  @Test
  void the_harder_it_brakes_and_the_further_it_is_steered_the_earlier_the_inside_rear_lifts() {
    for (List<Lift> lifts : List.of(CURVES.overBraking(), CURVES.overSteer())) {
      assertThat(lifts)
          .isSortedAccordingTo(
              Comparator.comparingDouble((Lift lift) -> lift.before().mid()).reversed());
      assertThat(lifts).allMatch(lift -> lift.after().mid() <= lift.before().mid());
      assertThat(lifts).allMatch(lift -> lift.before().low() < lift.before().high());
    }
  }

  @Test
  void the_curves_cover_braking_to_9_tenths_of_a_g_and_steer_to_a_hairpin() {
    assertThat(CURVES.overBraking().get(9).at()).isEqualTo(0.9, within(1e-9));
    assertThat(CURVES.overSteer().get(12).at()).isEqualTo(30);
    assertThat(CURVES.leans()).hasSize(13);
  }
}
