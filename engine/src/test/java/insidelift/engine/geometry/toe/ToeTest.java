package insidelift.engine.geometry.toe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import insidelift.engine.geometry.BothSides;
import insidelift.engine.geometry.ExactFront;
import insidelift.engine.geometry.Printed;
import insidelift.engine.geometry.Side;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ToeTest {

  /** A figure of the trade: 1 mm in all over a disc of 280 mm is 0.10 degrees a wheel. */
  @Test
  void one_mm_in_all_over_280_mm_is_a_tenth_of_a_degree_a_wheel() {
    TotalToe total = TotalToe.ofMm(1, 280);

    assertThat(total.half().outDeg()).isCloseTo(0.10, within(0.005));
    assertThat(total.half().mmOver(280)).isCloseTo(0.5, within(1e-9));
    assertThat(total.half().doubled().mmOver(280)).isCloseTo(1, within(1e-9));
  }

  @Test
  void a_reading_over_one_disc_is_told_over_another() {
    SideToe side = SideToe.ofMm(1, 280);

    // Sine by sine: mm grow with the length, 250 / 280.
    assertThat(side.mmOver(250)).isCloseTo(250.0 / 280, within(1e-12));
    assertThat(TotalToe.ofMm(-3, 300).mmOver(150)).isCloseTo(-1.5, within(1e-12));
  }

  @Test
  void a_total_is_the_sum_of_both_sides_and_a_side_is_half_of_it() {
    assertThat(TotalToe.of(new SideToe(0.3), new SideToe(-0.1)).outDeg())
        .isCloseTo(0.2, within(1e-12));
    assertThat(new TotalToe(0.4).half()).isEqualTo(new SideToe(0.2));
    assertThat(new SideToe(0.3).upTo(new SideToe(0.1)).outDeg()).isCloseTo(-0.2, within(1e-12));
  }

  @Test
  void the_whole_range_comes_back_and_more_is_refused() {
    for (double over : new double[] {100, 270, 280, 2000}) {
      double most = over * Math.sin(Math.toRadians(5));
      assertThat(SideToe.ofMm(most, over).outDeg()).isCloseTo(5, within(1e-9));
      assertThat(TotalToe.ofMm(-2 * most, over).outDeg()).isCloseTo(-10, within(1e-9));
    }
    assertThatThrownBy(() -> SideToe.ofMm(30, 280))
        .hasMessage("toe.side: 30 is outside -24.4 to 24.4 mm (5° a wheel, provisional)");
    assertThatThrownBy(() -> TotalToe.ofMm(-60, 280))
        .hasMessage("toe.total: -60 is outside -48.81 to 48.81 mm (10° in all, provisional)");
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, 1e308, Double.NEGATIVE_INFINITY, 10.5})
  void no_wheel_has_such_a_toe(double degrees) {
    assertThatThrownBy(() -> new SideToe(degrees))
        .hasMessage(
            "toe.side: " + Printed.exact(degrees) + " is outside -10 to 10 ° (provisional)");
    assertThatThrownBy(() -> new TotalToe(degrees))
        .hasMessage(
            "toe.total: " + Printed.exact(degrees) + " is outside -10 to 10 ° (provisional)");
  }

  /** What the note on measuring with a laser says of the dot. */
  @Test
  void toed_out_a_beam_across_the_kart_falls_ahead_of_square_and_a_beam_away_behind() {
    var toedOut = ExactFront.turn(Vector3D.Unit.PLUS_Z, 1);

    assertThat(toedOut.apply(Vector3D.Unit.MINUS_Y).getX()).isPositive();
    assertThat(toedOut.apply(Vector3D.Unit.PLUS_Y).getX()).isNegative();
    // Per side, over the length of the beam.
    assertThat(1000 * toedOut.apply(Vector3D.Unit.MINUS_Y).getX())
        .isCloseTo(new SideToe(1).mmOver(1000), within(1e-9));
  }

  /**
   * Both corners of a kart with unequal rods, steered fully to each side, are even after the
   * correction, with the same total toe: the right corner is the left one in a mirror.
   */
  @Test
  void the_sweep_finds_the_rods_that_make_both_sides_even() {
    ExactFront corner = ExactFront.of(30, 100, true, 0).leaned(-6.5, 12.8);
    double left = 0.6;
    double right = -0.2;
    ToeSweep sweep = sweep(reach(corner, left), reach(corner, right));
    double newLeft = left + sweep.longerMm(Side.LEFT);
    double newRight = right + sweep.longerMm(Side.RIGHT);

    assertThat(sweep.even()).isFalse();
    assertThat(sweep.longerMm(Side.LEFT)).isNegative().isEqualTo(-sweep.longerMm(Side.RIGHT));
    // Less than a twentieth is left: at full lock the rod is no longer square to the arm.
    assertThat(Math.abs(reach(corner, newLeft) - reach(corner, newRight)))
        .isLessThan(0.05 * Math.abs(reach(corner, left) - reach(corner, right)));
    assertThat(corner.longer(newLeft).toeOutDeg() + corner.longer(newRight).toeOutDeg())
        .isCloseTo(
            corner.longer(left).toeOutDeg() + corner.longer(right).toeOutDeg(), within(0.01));
  }

  private static double reach(ExactFront corner, double longer) {
    return 1000 * Math.tan(Math.toRadians(corner.longer(longer).steered(-35).toeOutDeg()));
  }

  private static ToeSweep sweep(double left, double right) {
    return new ToeSweep(
        1000,
        new BothSides(left, right),
        new ToeRods(
            new TieRod(100, true, TieRod.Threads.BOTH, OptionalDouble.empty()),
            false,
            false,
            false));
  }

  @Test
  void a_sweep_is_even_to_a_millimetre() {
    assertThat(sweep(400, 401).even()).isTrue();
    assertThat(sweep(400, 401).longerMm(Side.LEFT)).isZero();
    assertThat(sweep(400, 401.1).even()).isFalse();
    assertThat(sweep(400, 401.1).gained(Side.LEFT).outDeg()).isPositive();
    assertThat(sweep(400, 401.1).gained(Side.RIGHT).outDeg()).isNegative();
  }
}
