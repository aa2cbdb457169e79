package insidelift.engine.geometry.kart;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import insidelift.engine.geometry.Karts;
import insidelift.engine.geometry.RefusedInputException;
import insidelift.engine.geometry.plausible.MeasuredKart;
import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KartGeometryTest {

  @Test
  void a_kart_file_gives_its_measures_and_leaves_the_others_typical() {
    KartGeometry kart = read("{\"schema\":1,\"geometry\":{\"casterDeg\":15,\"massKg\":150.5}}");

    assertThat(kart.value(Dimension.CASTER)).isEqualTo(15);
    assertThat(kart.value(Dimension.MASS)).isEqualTo(150.5);
    assertThat(kart.isTypical(Dimension.CASTER)).isFalse();
    assertThat(kart.isTypical(Dimension.WHEELBASE)).isTrue();
    assertThat(kart.value(Dimension.WHEELBASE)).isEqualTo(1050);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "{'wheelRadiusMm':0} | geometry.wheelRadiusMm: 0 is outside 90 to 160 mm (provisional;"
            + " from the smallest children's wheels to beyond a 280 mm front tyre)",
        "{'casterDeg':80} | geometry.casterDeg: 80 is outside 0 to 35 ° (provisional; published"
            + " baselines run from about 8 to over 20 °)",
        "{'frontTrackMm':600} | geometry.frontTrackMm: 600 is outside 700 to 1400 mm (track at"
            + " least two thirds of the wheelbase, overall width at most 1400 mm: Motorsport UK"
            + " National Competition Rules 2026, kart dimensions (as reported in an excerpt) 3.2,"
            + " 3.4)",
        "{'rollShareFront':1.2} | geometry.rollShareFront: 1.2 is outside 0 to 1 (a share)",
        "{'caster':12} | geometry.caster: unknown key",
        "{'casterDeg':'12'} | geometry.casterDeg: must be a number, not a text",
        "{'casterDeg':null} | geometry.casterDeg: must be a number, not null",
        "{'casterDeg':1e999} | geometry.casterDeg: must be a finite number",
        "[] | geometry: must be an object, not an empty list",
      })
  void impossible_measures_are_refused_with_the_place_the_range_and_its_source(
      String geometry, String message) {
    String file = "{\"schema\":1,\"geometry\":" + geometry.replaceAll("'(\\w*)'", "\"$1\"") + "}";

    assertThatThrownBy(() -> read(file))
        .isInstanceOf(RefusedInputException.class)
        .hasMessage("kart.json: " + message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "{} | schema: is missing",
        "{\"schema\":2,\"geometry\":{}} | schema: must be 1, not 2",
        "{\"schema\":\"1\",\"geometry\":{}} | schema: must be 1, not \"1\"",
        "{\"schema\":1} | geometry: is missing",
        "{\"schema\":1,\"geometry\":{},\"notes\":1} | notes: unknown key",
        "[] | document: must be an object, not an empty list",
      })
  void a_file_of_another_shape_is_refused(String file, String message) {
    assertThatThrownBy(() -> read(file)).hasMessage("kart.json: " + message);
  }

  @Test
  void a_key_written_twice_is_refused() {
    assertThatThrownBy(
            () -> read("{\"schema\":1,\"geometry\":{\"casterDeg\":12,\"casterDeg\":13}}"))
        .hasMessage("kart.json: the key \"casterDeg\" stands twice (line 1, column 51)");
  }

  @Test
  void what_is_not_json_is_refused() {
    assertThatThrownBy(() -> read("{\"schema\":1,\"geometry\":{\"casterDeg\":NaN}}"))
        .hasMessage("kart.json: this is not JSON (line 1, column 40)");
    assertThatThrownBy(() -> read("{\"schema\":1,\"geometry\":{}} {}"))
        .hasMessageStartingWith("kart.json: this is not JSON");
    assertThatThrownBy(() -> read("")).hasMessage("kart.json: the file is empty");
    assertThatThrownBy(() -> read("[".repeat(5000)))
        .hasMessage("kart.json: the file nests deeper than 16 levels");
    assertThatThrownBy(() -> read(" ".repeat(1_100_000)))
        .hasMessage("kart.json: the file is larger than 1 MB, which no case needs");
  }

  @Test
  void a_key_that_would_steer_the_terminal_is_quoted_harmlessly() {
    assertThatThrownBy(() -> read("{\"schema\":1,\"geometry\":{},\"\\u001b[2J\":1}"))
        .hasMessage("kart.json: \\u{1b}[2J: unknown key");
  }

  @Test
  void a_long_thing_in_a_small_place_is_quoted_in_part() {
    assertThatThrownBy(
            () -> read("{\"schema\":{\"" + "x\\u007f".repeat(500) + "\":1},\"geometry\":{}}"))
        .hasMessageStartingWith("kart.json: schema: must be 1, not {\"x")
        .message()
        .endsWith("...")
        .hasSizeLessThan(500);
  }

  @Test
  void a_missing_file_is_refused() {
    assertThatThrownBy(() -> MeasuredKart.read(Path.of("nowhere", "kart.json")))
        .isInstanceOf(RefusedInputException.class)
        .hasMessage(Path.of("nowhere", "kart.json") + ": no such file");
  }

  @Test
  void the_bounds_themselves_are_accepted_and_just_beyond_is_not() {
    KartGeometry kart = KartGeometry.typical();
    for (Dimension dimension : Dimension.values()) {
      assertThat(kart.with(dimension, dimension.most()).value(dimension))
          .isEqualTo(dimension.most());
      assertThatThrownBy(() -> kart.with(dimension, Math.nextUp(dimension.most())))
          .hasMessageStartingWith("geometry." + dimension.key() + ": ");
      assertThatThrownBy(() -> kart.with(dimension, Math.nextDown(dimension.least())))
          .hasMessageStartingWith("geometry." + dimension.key() + ": ");
    }
  }

  @Test
  void every_measure_tells_where_its_range_and_its_typical_value_come_from() {
    for (Dimension dimension : Dimension.values()) {
      assertThat(dimension.rangeSource()).isNotBlank();
      assertThat(dimension.typicalSource())
          .as(dimension.key())
          .containsAnyOf("2010, 461-469", "2016", "common practice", "provisional");
      assertThat(dimension.typical()).isBetween(dimension.least(), dimension.most());
    }
  }

  /** Statics, worked by hand: (0.42 × 1050 + 0.58 × 1180) ÷ 2 ÷ (250 + 20). */
  @Test
  void the_typical_kart_tips_at_2_1_g() {
    assertThat(KartGeometry.typical().tipsOverAtG(0)).isCloseTo(2.084, within(5e-4));
  }

  @Test
  void a_height_given_alone_is_the_whole_height_and_no_measure_moves_with_another() {
    KartGeometry old = read("{\"schema\":1,\"geometry\":{\"cgHeightMm\":290}}");
    KartGeometry raised = KartGeometry.typical().with(Dimension.CG_HEIGHT, 290);

    assertThat(old.value(Dimension.OVERTURN)).isZero();
    assertThat(raised.value(Dimension.OVERTURN)).isEqualTo(20);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "{'wheelbaseMm':950} | 105 | 870",
        "{'massKg':105} | 105 | 870",
        "{'massKg':140} | 140 | 1050",
        "{'massKg':160} | 160 | 1050",
        "{} | 160 | 1050",
      })
  void what_is_not_measured_is_typical_of_a_kart_of_its_size(
      String geometry, double massKg, double frontTrackMm) {
    KartGeometry kart = read("{\"schema\":1,\"geometry\":" + geometry.replace('\'', '"') + "}");

    assertThat(kart.value(Dimension.MASS)).isEqualTo(massKg);
    assertThat(kart.value(Dimension.FRONT_TRACK)).isEqualTo(frontTrackMm);
  }

  @ParameterizedTest
  @CsvSource({"12, 27.63", "15, 34.83", "18, 42.24"})
  void trail_is_the_reference(double caster, double trail) {
    assertThat(KartGeometry.typical().with(Dimension.CASTER, caster).trailMm())
        .isCloseTo(trail, within(5e-3));
  }

  @Test
  void scrub_radius_is_the_hub_offset_less_the_inclination_over_the_radius() {
    KartGeometry upright = Karts.front(18, 11, 160, 130);

    assertThat(upright.scrubRadiusMm())
        .isCloseTo(160 - 130 * Math.tan(Math.toRadians(11)), within(1e-9));
    assertThat(upright.with(Dimension.CAMBER, 2).scrubRadiusMm())
        .isLessThan(upright.scrubRadiusMm());
  }

  @Test
  void what_camber_gains_the_kingpin_inclination_loses() {
    KartGeometry changed = KartGeometry.typical().changed(0.5, 1);

    assertThat(changed.value(Dimension.CAMBER)).isEqualTo(0.5);
    assertThat(changed.value(Dimension.KINGPIN_INCLINATION)).isEqualTo(9.5);
    assertThat(changed.value(Dimension.CASTER)).isCloseTo(17, within(1e-12));
  }

  private static KartGeometry read(String json) {
    return MeasuredKart.read(new ByteArrayInputStream(json.getBytes(UTF_8)), "kart.json").kart();
  }
}
