package insidelift.engine.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import insidelift.engine.geometry.ChangeCurves.Lean;
import insidelift.engine.geometry.ChangeCurves.Load;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChangeCurvesTest {

  private static final KartGeometry TYPICAL = KartGeometry.typical();
  private static final ChangeEffect MORE_CASTER = ChangeEffect.of(TYPICAL, 0, 2);
  private static final ChangeCurves CURVES = ChangeCurves.of(MORE_CASTER);

  @Test
  void the_curves_pass_through_what_a_prediction_says() {
    Prediction before = Prediction.of(TYPICAL, List.of(20.0), List.of(0.0, 0.4));
    assertThat(CURVES.loads().get(0).beforeN())
        .isEqualTo(before.corners().get(0).loads().rearInnerN(), within(1e-6));
    Lean twenty =
        CURVES.leans().stream().filter(lean -> lean.steerDeg() == 20).findFirst().orElseThrow();
    assertThat(twenty.innerBefore())
        .isEqualTo(before.corners().get(1).innerLeanDeg(), within(1e-9));
    assertThat(twenty.outerAfter())
        .isEqualTo(MORE_CASTER.corners().get(0).after().outerLeanDeg(), within(1e-9));
  }

  @Test
  void the_inside_rear_gets_lighter_the_harder_the_corner_until_it_is_off_the_ground() {
    assertThat(CURVES.loads())
        .isSortedAccordingTo(Comparator.comparingDouble(Load::beforeN).reversed());
    double lifts = CURVES.liftOffBefore().orElseThrow();
    assertThat(CURVES.loads()).allMatch(load -> (load.beforeN() > 0) == (load.lateralG() < lifts));
  }

  @Test
  void both_curves_cover_the_range_that_is_judged() {
    assertThat(CURVES.loads().get(24).lateralG())
        .isEqualTo(0.9 * TYPICAL.tipsOverAtG(), within(1e-12));
    assertThat(CURVES.leans()).hasSize(13);
    assertThat(CURVES.leans().get(12).steerDeg()).isEqualTo(30);
  }
}
