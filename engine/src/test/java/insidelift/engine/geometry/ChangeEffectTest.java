package insidelift.engine.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChangeEffectTest {

  private static final KartGeometry TYPICAL = KartGeometry.typical();

  @Test
  void more_caster_is_told_in_one_sentence() {
    assertThat(ChangeEffect.of(TYPICAL, 0, 1).sentence())
        .isEqualTo(
            "Caster +1.0°: in a slow corner the inside rear carries 219 N instead of 225 and lifts"
                + " at 1.30 g instead of 1.33; the steering gets heavier by 0.7 N·m at the"
                + " kingpins; the trail gets 2.4 mm longer and the wheelbase gets 0.5 mm"
                + " shorter.");
  }

  @Test
  void more_camber_is_told_by_the_lean_of_both_fronts_and_the_toe_to_reset() {
    assertThat(ChangeEffect.of(TYPICAL, 0.5, 0).sentence())
        .isEqualTo(
            "Camber +0.5°: in a slow corner the outer front leans 2.89° into the turn instead of"
                + " 3.35° and the inner 4.57° into the turn instead of 4.09°; toe moves out by 1.5 mm,"
                + " both wheels together over a 280 mm disc: reset it.");
  }

  @Test
  void nothing_changed_is_said_too() {
    assertThat(ChangeEffect.of(TYPICAL, 0, 0).sentence()).isEqualTo("Nothing is changed.");
    assertThat(ChangeEffect.of(TYPICAL, 0, 0).drawing().sentence()).isEqualTo("Nothing moves.");
  }

  @Test
  void the_table_shows_both_corners_before_and_after() {
    List<String> table = ChangeEffect.of(TYPICAL, 0, 1).table();

    assertThat(table).allMatch(line -> line.length() <= 80);
    assertThat(table.get(0))
        .isEqualTo(
            "before -> after                          slow 20°, 0.4 g          fast 8°, 1.2 g");
    assertThat(table)
        .contains(
            "inside rear, load N                           225 -> 219                78 -> 75",
            "inside rear lifts at, g                     1.33 -> 1.30            1.52 -> 1.51");
  }

  @Test
  void the_change_there_and_back_is_no_change() {
    ChangeEffect there = ChangeEffect.of(TYPICAL, 0.5, 1);
    ChangeEffect back = ChangeEffect.of(there.after(), -0.5, -1);

    assertThat(back.after().trailMm()).isCloseTo(TYPICAL.trailMm(), within(1e-9));
    assertThat(back.corners().get(0).after().loads().rearInnerN())
        .isCloseTo(there.corners().get(0).before().loads().rearInnerN(), within(1e-6));
  }

  @Test
  void toe_and_wheelbase_follow_the_steering_arm_given() {
    SteeringArm ahead = new SteeringArm(20, 80, false, 40, 60, MovedPivots.TOP, 300);
    ChangeEffect effect = ChangeEffect.of(TYPICAL, 1, 1, ahead, List.of(Corner.SLOW));

    assertThat(effect.toeOutTotalMm())
        .isCloseTo(-2 * 300 * Math.sin(Math.toRadians(0.25)), within(1e-9));
    assertThat(effect.wheelbaseChangeMm())
        .isCloseTo(-40 * Math.tan(Math.toRadians(1)), within(1e-9));
    assertThat(effect.sentence())
        .contains("toe moves in by 2.6 mm, both wheels together over a 300 mm disc");
  }

  @Test
  void a_tall_kart_is_judged_below_where_it_tips() {
    KartGeometry tall = TYPICAL.with(Dimension.CG_HEIGHT, 500);

    ChangeEffect effect = ChangeEffect.of(tall, 0, 1);

    assertThat(effect.corners().get(1).corner().lateralG())
        .isCloseTo(0.9 * tall.tipsOverAtG(), within(1e-12));
  }

  @Test
  void an_inside_rear_in_the_air_is_told_by_its_height() {
    ChangeEffect effect =
        ChangeEffect.of(
            TYPICAL, 0, 1, SteeringArm.TYPICAL, List.of(new Corner("hairpin", 25, 1.4)));

    assertThat(effect.sentence())
        .startsWith("Caster +1.0°: in a hairpin the inside rear is ")
        .contains(" mm off the ground instead of ");
  }

  @Test
  void the_json_has_both_corners() {
    JsonNode json = ChangeEffect.of(TYPICAL, 0.5, 1).json();

    assertThat(json.get("corners")).hasSize(2);
    assertThat(json.get("corners").get(0).get("before").get("liftOffG").doubleValue())
        .isCloseTo(1.33, within(0.005));
    assertThat(json.get("trailMm").get("after").doubleValue())
        .isGreaterThan(json.get("trailMm").get("before").doubleValue());
  }

  @Test
  void a_change_that_leaves_the_range_is_refused() {
    assertThatThrownBy(() -> ChangeEffect.of(TYPICAL, 0, 30))
        .isInstanceOf(RefusedInputException.class)
        .hasMessageStartingWith("geometry.casterDeg: 42.8 is outside 0 to 35 °");
  }

  @Test
  void a_steering_arm_that_cannot_be_is_refused() {
    assertThatThrownBy(() -> new SteeringArm(30, 0, true, 30, 60, MovedPivots.TOP, 280))
        .hasMessage("steeringArm.armLengthMm: 0 is outside 50 to 200 mm (provisional)");
  }
}
