package insidelift.engine.geometry.toe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import insidelift.engine.geometry.ExactFront;
import insidelift.engine.geometry.Printed;
import insidelift.engine.geometry.kart.MovedPivots;
import insidelift.engine.geometry.kart.SteeringArm;
import insidelift.engine.geometry.toe.TieRod.Threads;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TieRodTest {

  private static TieRod rod(double arm, boolean behind, Threads threads, double pitch) {
    return new TieRod(arm, behind, threads, OptionalDouble.of(pitch));
  }

  @Test
  void a_longer_rod_turns_the_wheel_in_with_the_arm_behind_and_out_with_it_ahead() {
    assertThat(ExactFront.of(30, 100, true, 0).longer(1).toeOutDeg()).isNegative();
    assertThat(ExactFront.of(30, 100, false, 0).longer(1).toeOutDeg()).isPositive();

    SideToe out = new SideToe(0.5);
    assertThat(rod(100, true, Threads.BOTH, 1).longerMm(out)).isNegative();
    assertThat(rod(100, false, Threads.BOTH, 1).longerMm(out)).isPositive();
  }

  @ParameterizedTest
  @CsvSource({
    "80, true, -1", "80, true, 0.1", "80, false, 1", "100, true, -0.2",
    "100, true, 1", "100, false, -1", "120, true, 0.5", "120, false, 0.1",
  })
  void the_length_is_that_of_the_exact_linkage(double arm, boolean behind, double gain) {
    double longer = rod(arm, behind, Threads.BOTH, 1).longerMm(new SideToe(gain));

    assertThat(ExactFront.of(30, arm, behind, 0).longer(longer).toeOutDeg())
        .isCloseTo(gain, within(1e-4));
  }

  /** The bound that the Javadoc names, on a kingpin that leans as on a typical kart. */
  @ParameterizedTest
  @CsvSource({"true, -1", "true, 0.2", "true, 1", "false, -1", "false, 0.2", "false, 1"})
  void on_a_leaning_kingpin_the_length_is_right_within_three_percent(boolean behind, double gain) {
    ExactFront front = ExactFront.of(30, 100, behind, 0).leaned(-6.5, 12.8);
    double longer = rod(100, behind, Threads.BOTH, 1).longerMm(new SideToe(gain));

    assertThat(front.longer(longer).toeOutDeg() - front.toeOutDeg())
        .isCloseTo(gain, within(0.03 * Math.abs(gain)));
  }

  @Test
  void a_turn_is_two_pitches_with_a_left_hand_thread_at_one_end_and_else_one() {
    assertThat(rod(100, true, Threads.BOTH, 1.25).turns(-2.5)).hasValue(1);
    assertThat(rod(100, true, Threads.ONE, 1.25).turns(2.5)).hasValue(2);
    assertThat(new TieRod(100, true, Threads.BOTH, OptionalDouble.empty()).turns(1)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.004   | leave it as it is",
        "0.1     | 0.10 mm longer = 0.3 of a flat",
        "-0.3333 | 0.33 mm shorter = 1 flat",
        "1       | 1.00 mm longer = 3 flats",
        "-1.98   | 1.98 mm shorter = 5.9 flats",
        "1.99    | 1.99 mm longer = 1 turn",
        "2.3333  | 2.33 mm longer = 1 turn and 1 flat",
        "-4.5    | 4.50 mm shorter = 2 turns and 1.5 flats",
      })
  void turns_and_flats_are_told_with_the_way(double longer, String told) {
    assertThat(rod(100, true, Threads.BOTH, 1).told(longer)).isEqualTo(told);
  }

  @Test
  void without_the_pitch_the_length_alone_is_told() {
    TieRod rod = new TieRod(100, true, Threads.BOTH, OptionalDouble.empty());

    assertThat(rod.told(-0.5)).isEqualTo("0.50 mm shorter");
    assertThat(rod.degPerFlat()).isEmpty();
  }

  @Test
  void one_flat_moves_the_wheel_by_its_length_over_the_arm() {
    // 2 x 1.25 mm / 6 over an arm of 100 mm.
    assertThat(rod(100, true, Threads.BOTH, 1.25).degPerFlat().getAsDouble())
        .isCloseTo(Math.toDegrees(Math.asin(2.5 / 600)), within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, 1e308, -1, 0, 49.9, 200.1})
  void an_arm_that_no_kart_has_is_refused(double arm) {
    assertThatThrownBy(() -> rod(arm, true, Threads.BOTH, 1))
        .hasMessage(
            "toeJob.armMm: " + Printed.exact(arm) + " is outside 50 to 200 mm (provisional)");
  }

  @Test
  void a_pitch_that_no_rod_has_is_refused() {
    assertThatThrownBy(() -> rod(100, true, Threads.BOTH, 12.5))
        .hasMessage("toeJob.pitchMm: 12.5 is outside 0.5 to 2.5 mm (provisional)");
  }

  /** What a change at the eccentrics does to toe is the exact turn that the rod forces. */
  @ParameterizedTest
  @CsvSource({
    "TOP, true",
    "TOP, false",
    "BOTTOM, true",
    "BOTTOM, false",
    "BOTH, true",
    "BOTH, false",
  })
  void a_camber_change_moves_toe_as_in_space(MovedPivots moved, boolean behind) {
    SteeringArm arm = new SteeringArm(20, 100, behind, 30, 60, moved, 280);
    double still = moved.stillShare() * 60;
    for (double camber : new double[] {-1, -0.5, 0.5, 1}) {
      double exact = ExactFront.of(20, 100, behind, still).leaned(camber, 0).toeOutDeg();

      assertThat(arm.toeOutDeg(camber)).isCloseTo(exact, within(0.01));
      // The sign flips with the pivot that stays and with the arm: out where top and behind agree.
      boolean out = (20 > still) == behind == camber > 0;
      assertThat(exact > 0).isEqualTo(out);
    }
  }

  @Test
  void a_caster_change_by_itself_hardly_moves_toe_with_a_level_rod() {
    for (double caster : new double[] {-2, -1, 1, 2}) {
      assertThat(ExactFront.of(30, 100, true, 0).leaned(0, caster).toeOutDeg())
          .isCloseTo(0, within(0.02));
    }
  }
}
