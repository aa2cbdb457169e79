package insidelift.engine.geometry.gauge;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import insidelift.engine.geometry.BothSides;
import java.io.ByteArrayInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GaugeTest {

  @ParameterizedTest
  @CsvSource({"0.5, 8.727", "1, 17.455", "-0.5, -8.727"})
  void the_dot_on_a_board_one_metre_away_is_the_reference(double camber, double dot) {
    CamberByLaser reading =
        CamberByLaser.ofCamber(Beam.INBOARD, 1000, new BothSides(camber, camber));

    assertThat(reading.dotMm().left()).isCloseTo(dot, within(5e-4));
    assertThat(CamberByLaser.ofDots(Beam.INBOARD, 1000, reading.dotMm()).camberDeg().right())
        .isCloseTo(camber, within(1e-9));
  }

  @Test
  void a_beam_outboard_reads_the_other_way_round() {
    CamberByLaser reading = CamberByLaser.ofDots(Beam.OUTBOARD, 1000, new BothSides(-8.727, 8.727));

    assertThat(reading.camberDeg().left()).isCloseTo(0.5, within(1e-4));
    assertThat(reading.camberDeg().right()).isCloseTo(-0.5, within(1e-4));
  }

  @Test
  void an_advised_change_gives_the_dot_to_aim_at() {
    CamberByLaser reading =
        CamberByLaser.ofDots(Beam.INBOARD, 1000, new BothSides(0, 0)).withTarget(0.5);

    assertThat(reading.target().orElseThrow().sentence())
        .isEqualTo("dot 8.7 mm above the line on a board 1.0 m away, both sides");
    assertThat(reading.lines())
        .containsExactly(
            "Beam inboard, across the kart: above the line is positive camber of the emitting",
            "  wheel.",
            "left:  dot on the line, camber 0.00°",
            "right: dot on the line, camber 0.00°",
            "Aim at: dot 8.7 mm above the line on a board 1.0 m away, both sides.");
  }

  @Test
  void sides_that_aim_at_different_dots_are_told_apart() {
    CamberByLaser reading = CamberByLaser.ofCamber(Beam.OUTBOARD, 1500, new BothSides(0.5, -0.25));

    assertThat(reading.sentence())
        .isEqualTo(
            "left dot 13.1 mm below the line, right dot 6.5 mm above the line on a board 1.5 m"
                + " away");
  }

  @Test
  void a_difference_of_a_quarter_degree_is_equal_and_more_is_flagged() {
    assertThat(
            CamberByLaser.ofCamber(Beam.INBOARD, 1000, new BothSides(0.75, 0.5))
                .camberDeg()
                .complaint("camber"))
        .isEmpty();
    assertThat(new BothSides(0.76, 0.5).complaint("camber"))
        .isEqualTo(
            "Left and right camber differ by 0.26°, more than 0.25° (provisional): make them"
                + " equal before anything else.");
  }

  @Test
  void a_sweep_of_camber_readings_gives_the_caster_of_the_reference() {
    CasterBySweep reading =
        new CasterBySweep(
            20, new BothSides(8.8933 / 2, -8.8933 / 2), new BothSides(-8.8933 / 2, 8.8933 / 2));

    assertThat(reading.casterDeg().left()).isCloseTo(12.81, within(5e-3));
    assertThat(reading.casterDeg().right()).isCloseTo(12.81, within(5e-3));
    assertThat(reading.lines())
        .containsExactly(
            "Each wheel turned 20° left and right, seen from above: caster left 12.81°, right",
            "  12.81°.");
  }

  @ParameterizedTest
  @CsvSource({"5, 0", "5, 12", "9, 11", "12.8, 6.5", "18, 0", "18, 12"})
  void the_sweep_finds_the_caster_within_0_05_degrees(double caster, double inclination) {
    CasterBySweep reading =
        new CasterBySweep(
            20,
            new BothSides(camberSeenFromAbove(caster, inclination, 20), 0),
            new BothSides(camberSeenFromAbove(caster, inclination, -20), 0));

    assertThat(reading.casterDeg().left()).isCloseTo(caster, within(0.05));
  }

  /**
   * Camber over the wheel's own steer seen from above, upright straight ahead: the exact formula.
   */
  private static double camberSeenFromAbove(double caster, double inclination, double steer) {
    double psi = Math.toRadians(steer);
    double tanC = Math.tan(Math.toRadians(caster));
    double tanS = Math.tan(Math.toRadians(inclination));
    double a = tanC * Math.sin(psi) - tanS * Math.cos(psi);
    return Math.toDegrees(Math.atan(a) - Math.asin(-tanS / Math.sqrt(1 + a * a)));
  }

  @Test
  void toe_over_the_disc_is_the_reference_and_comes_back() {
    ToeOverDisc toe = ToeOverDisc.ofDegrees(280, 0.3);

    assertThat(toe.totalOutMm()).isCloseTo(1.47, within(5e-3));
    assertThat(new ToeOverDisc(280, toe.totalOutMm()).totalOutDeg()).isCloseTo(0.3, within(1e-9));
    assertThat(toe.lines())
        .containsExactly(
            "Toe-out 1.47 mm in all over a 280 mm disc = 0.300° in all, 0.150° a wheel: the",
            "  discs stand wider at the front than at the rear.");
    assertThat(ToeOverDisc.ofDegrees(280, -0.3).lines().get(0)).startsWith("Toe-in 1.47 mm");
    assertThat(new ToeOverDisc(280, 0).lines())
        .containsExactly("No toe: the discs stand parallel.");
  }

  @Test
  void a_gauge_file_is_answered() {
    assertThat(
            read("{'schema':1,'laser':{'distanceMm':1000,'beam':'inboard',"
                    + "'dotMm':{'left':0,'right':0},'changeDeg':0.5}}")
                .json()
                .get("target")
                .get("dotMm")
                .get("left")
                .doubleValue())
        .isCloseTo(8.727, within(5e-4));
    assertThat(
            read("{'schema':1,'sweep':{'steerDeg':20,'turnedLeftDeg':{'left':4.6,'right':-4},"
                    + "'turnedRightDeg':{'left':-4.3,'right':4.7}}}")
                .json()
                .get("casterDeg")
                .get("left")
                .doubleValue())
        .isCloseTo(12.82, within(0.01));
    assertThat(
            read("{'schema':1,'toe':{'discMm':280,'totalMm':2,'direction':'in'}}")
                .json()
                .get("direction")
                .textValue())
        .isEqualTo("in");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "{'schema':1} | document: must have one of laser, sweep, toe," + " lift, scales",
        "{'schema':1,'laser':{'distanceMm':1000,'dotMm':{'left':0,'right':0}}} | laser.beam: is"
            + " missing",
        "{'schema':1,'laser':{'distanceMm':1000,'beam':'up'}} | laser.beam: \"up\" is not one of"
            + " inboard, outboard",
        "{'schema':1,'laser':{'distanceMm':0,'beam':'inboard'}} | laser.distanceMm: 0 is outside"
            + " 100 to 5000 mm (provisional)",
        "{'schema':1,'laser':{'distanceMm':1000,'beam':'inboard'}} | laser.dotMm: give either"
            + " dotMm or camberDeg",
        "{'schema':1,'toe':{'discMm':280,'totalMm':2,'direction':'left'}} | toe.direction:"
            + " \"left\" is not one of out, in",
        "{'schema':1,'toe':{'discMm':280,'totalMm':150,'direction':'out'}} | toe.totalMm: 150 is"
            + " outside -48.81 to 48.81 mm (10° in all, provisional)",
      })
  void a_gauge_file_that_cannot_be_answered_is_refused(String file, String message) {
    assertThatThrownBy(() -> read(file)).hasMessage("gauge.json: " + message);
  }

  private static GaugeReading read(String json) {
    return Gauge.read(
        new ByteArrayInputStream(json.replace('\'', '"').getBytes(UTF_8)), "gauge.json");
  }
}
