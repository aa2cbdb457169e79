package insidelift.engine.geometry.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import insidelift.engine.geometry.kart.Corner;
import insidelift.engine.geometry.kart.CornerState;
import insidelift.engine.geometry.kart.Dimension;
import insidelift.engine.geometry.kart.KartGeometry;
import insidelift.engine.geometry.kart.MovedPivots;
import insidelift.engine.geometry.kart.PublishedLoads;
import insidelift.engine.geometry.kart.SteeringArm;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PredictionTest {

  private static final KartGeometry TYPICAL = PublishedLoads.KART;

  @Test
  void one_steer_gives_one_row_in_each_list() {
    JsonNode json = Prediction.of(TYPICAL, List.of(20.0), List.of(), 0).json();

    assertThat(json.get("wheels")).hasSize(1);
    assertThat(json.get("loads")).hasSize(1);
    assertThat(json.get("leanToGround")).hasSize(1);
    assertThat(json.get("steeringEffort")).hasSize(1);
    assertThat(json.get("liftOffs")).hasSize(1);
    assertThat(json.get("liftOffG").doubleValue())
        .isEqualTo(json.get("liftOffs").get(0).get("liftOffG").doubleValue());
  }

  @Test
  void no_steer_gives_the_usual_sweep_and_leaves_the_one_lift_off_open() {
    JsonNode json = Prediction.of(TYPICAL, List.of(), List.of(), 0).json();

    assertThat(json.get("wheels")).hasSize(Prediction.USUAL_STEERS.size());
    assertThat(json.get("loads")).hasSize(Prediction.USUAL_STEERS.size());
    assertThat(json.get("liftOffG").isNull()).isTrue();
  }

  @Test
  void the_json_has_the_documented_shape_and_unrounded_numbers() {
    JsonNode json = Prediction.of(TYPICAL, List.of(20.0), List.of(0.39), 0).json();
    JsonNode wheels = json.get("wheels").get(0);
    JsonNode loads = json.get("loads").get(0);

    assertThat(wheels.get("steerDeg").doubleValue()).isEqualTo(20);
    assertThat(wheels.get("inner").get("camberDeg").doubleValue())
        .isCloseTo(4.690018058589633, within(1e-9));
    assertThat(wheels.get("heightDifferenceMm").doubleValue())
        .isEqualTo(
            wheels.get("outer").get("heightMm").doubleValue()
                - wheels.get("inner").get("heightMm").doubleValue());
    assertThat(json.get("trailMm").doubleValue()).isCloseTo(29.535, within(1e-3));
    assertThat(json.get("scrubRadiusMm").doubleValue()).isCloseTo(60.188, within(1e-3));
    assertThat(loads.fieldNames())
        .toIterable()
        .containsExactly(
            "steerDeg",
            "lateralG",
            "longitudinalG",
            "rearOuterN",
            "rearInnerN",
            "frontInnerN",
            "frontOuterN",
            "rearInnerLiftMm",
            "frameTwistDeg");
  }

  @Test
  void every_typical_measure_is_marked_with_its_source() {
    KartGeometry kart = new KartGeometry(Map.of(Dimension.CASTER, 12.0));
    JsonNode json = Prediction.of(kart, List.of(5.0), List.of(), 0).json();

    assertThat(json.get("typical")).hasSize(Dimension.values().length - 1);
    assertThat(json.get("typical").get(0).get("key").textValue()).isEqualTo("kpiDeg");
    assertThat(json.get("typical").findValuesAsText("source")).allMatch(s -> !s.isBlank());
  }

  @Test
  void an_unmeasured_kart_is_told_in_tenths_for_the_three_usual_corners() {
    List<String> lines = Prediction.of(KartGeometry.typical(), List.of(), List.of(), 0).lines();

    assertThat(lines).allMatch(line -> line.length() <= 80);
    assertThat(lines)
        .contains(
            "Turn-in on the brake: 12° of steer, 0.9 g, slowing by 0.6 g",
            "  inside rear  nearly nothing on it, 0 to a quarter of its standing load",
            "  in the air   on 3 of 10 karts that fit what is known",
            "Wet corner: 15° of steer, 0.6 g, slowing by 0.2 g");
    assertThat(lines).anyMatch(line -> line.startsWith("Not measured on your kart "));
  }

  /** No newton, no millimetre, and no second decimal of what nobody measured. */
  @Test
  void the_text_of_an_unmeasured_kart_has_no_false_digit() {
    List<List<String>> texts =
        List.of(
            Prediction.of(KartGeometry.typical(), List.of(), List.of(), 0).lines(),
            Prediction.of(KartGeometry.typical(), List.of(20.0), List.of(0.5), -0.3).lines(),
            ChangeEffect.of(KartGeometry.typical(), 0.5, 1, List.of(Corner.WET)).table(),
            List.of(
                ChangeEffect.of(KartGeometry.typical(), 0.5, 1, List.of(Corner.APEX)).sentence()));
    for (List<String> text : texts) {
      String all = String.join("\n", text);
      assertThat(all).doesNotContainPattern("\\d N\\b").doesNotContainPattern("lift mm");
      assertThat(all.replaceAll("[+-]?0\\.0\\d", "")).doesNotContainPattern("\\d\\.\\d\\d");
    }
  }

  @Test
  void a_kart_measured_all_over_is_told_in_tens_of_newtons_and_its_front_wheels_in_tenths() {
    List<String> lines = Prediction.of(TYPICAL, List.of(20.0), List.of(0.39), 0).lines();

    assertThat(lines).allMatch(line -> line.length() <= 80);
    assertThat(lines).anyMatch(line -> line.matches("  inside rear  about 2[0-9]0 N on it, .*"));
    assertThat(lines).anyMatch(line -> line.startsWith("Front wheels against the frame; trail 30"));
  }

  @Test
  void every_corner_has_its_bands_in_the_json() {
    JsonNode bands =
        Prediction.of(KartGeometry.typical(), List.of(), List.of(), 0).json().get("bands");

    assertThat(bands).hasSize(3);
    assertThat(bands.get(0).get("name").textValue()).isEqualTo("turn-in on the brake");
    for (JsonNode corner : bands) {
      for (String quantity : List.of("rearInnerN", "liftOffG", "outerLeanDeg", "tipsOverG")) {
        JsonNode band = corner.get(quantity);
        assertThat(band.get("low").doubleValue()).isLessThan(band.get("high").doubleValue());
      }
    }
  }

  @Test
  void both_fronts_lean_into_the_turn() {
    CornerState corner = CornerState.of(TYPICAL, 20, 0.39, 0);

    assertThat(corner.innerLeanDeg()).isPositive();
    assertThat(corner.outerLeanDeg()).isNegative();
  }

  @Test
  void the_effort_is_trail_and_jacking() {
    CornerState corner = CornerState.of(TYPICAL, 20, 0.39, 0);
    double lateral = 143.6 * 9.81 * 0.43 * 0.39;

    assertThat(corner.effort().trailNm())
        .isCloseTo(lateral * 0.130 * Math.tan(Math.toRadians(12.8)), within(1e-9));
    assertThat(corner.effort().totalNm())
        .isEqualTo(corner.effort().trailNm() + corner.effort().jackingNm());
    assertThat(CornerState.of(TYPICAL, 20, 0, 0).effort().trailNm()).isZero();
    assertThat(CornerState.of(TYPICAL, 20, 0, 0).effort().jackingNm()).isPositive();
  }

  @Test
  void a_steer_outside_the_range_is_refused() {
    assertThatThrownBy(() -> Prediction.of(TYPICAL, List.of(46.0), List.of(), 0))
        .hasMessage(
            "steer: 46 is outside 0 to 45 ° (rotation about the kingpins, left turn positive;"
                + " provisional)");
  }

  @Test
  void toe_and_wheelbase_move_as_in_the_reference() {
    SteeringArm arm = SteeringArm.TYPICAL;

    assertThat(arm.toeOutDeg(0.5)).isCloseTo(0.150, within(5e-4));
    assertThat(arm.toeOutTotalMm(0.5)).isCloseTo(1.47, within(5e-3));
    assertThat(arm.wheelbaseMm(1)).isCloseTo(-0.52, within(5e-3));
    assertThat(arm.wheelbaseMm(3)).isCloseTo(-1.57, within(5e-3));
    assertThat(new SteeringArm(30, 100, false, 30, 60, MovedPivots.TOP, 280).toeOutDeg(0.5))
        .isNegative();
  }

  @Test
  void opposed_washers_leave_the_wheelbase_and_a_bottom_washer_moves_toe_the_other_way() {
    SteeringArm low = new SteeringArm(10, 100, true, 30, 60, MovedPivots.TOP, 280);

    assertThat(low.moving(MovedPivots.BOTH).wheelbaseMm(1)).isCloseTo(0, within(1e-12));
    assertThat(low.moving(MovedPivots.BOTTOM).wheelbaseMm(1)).isCloseTo(0.52, within(5e-3));
    assertThat(low.toeOutDeg(1)).isCloseTo(0.1, within(1e-12));
    assertThat(low.moving(MovedPivots.BOTTOM).toeOutDeg(1)).isCloseTo(-0.5, within(1e-12));
  }
}
