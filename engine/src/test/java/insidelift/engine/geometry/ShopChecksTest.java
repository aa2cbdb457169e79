package insidelift.engine.geometry;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import insidelift.engine.geometry.gauge.FourScales;
import insidelift.engine.geometry.gauge.Gauge;
import insidelift.engine.geometry.gauge.GaugeReading;
import insidelift.engine.geometry.gauge.ToeOverDisc;
import java.io.ByteArrayInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShopChecksTest {

  private static GaugeReading read(String json) {
    return Gauge.read(
        new ByteArrayInputStream(json.replace('\'', '"').getBytes(UTF_8)), "gauge.json");
  }

  private static GaugeReading lift(double left, double right) {
    return read("{'schema':1,'lift':{'heightMm':{'left':%s,'right':%s}}}".formatted(left, right));
  }

  private static GaugeReading scales(double fl, double fr, double rl, double rr) {
    return read(
        "{'schema':1,'scales':{'frontKg':{'left':%s,'right':%s},'rearKg':{'left':%s,'right':%s}}}"
            .formatted(fl, fr, rl, rr));
  }

  @Test
  void a_lift_test_is_even_to_what_a_hand_can_tell() {
    assertThat(lift(12, 14).lines())
        .containsExactly(
            "Left rear, steered fully left:   12 mm",
            "Right rear, steered fully right: 14 mm",
            "Even within 2 mm (provisional): nothing speaks for a twist.");
    assertThat(lift(12, 14).json().get("higher").textValue()).isEqualTo("none");
    assertThat(lift(12, 14.1).json().get("higher").textValue()).isEqualTo("right");
  }

  @Test
  void an_uneven_lift_test_names_the_higher_rear_and_asks_for_a_jig_above_five() {
    assertThat(lift(17, 12).lines())
        .contains(
            "Uneven: the left rear comes up 5 mm higher. Repeat it; if it stays, look in the",
            "  order below.");
    assertThat(lift(17, 12).json().get("jig").booleanValue()).isFalse();
    assertThat(lift(12, 17.5).lines())
        .containsExactly(
            "Left rear, steered fully left:   12 mm",
            "Right rear, steered fully right: 17.5 mm",
            "Uneven: the right rear comes up 5.5 mm higher. Repeat it; if it stays, look in",
            "  the order below. That is more than 5 mm (provisional, nobody publishes a",
            "  limit): if it still stays, ask for a jig.");
    assertThat(lift(12, 17.5).json().get("jig").booleanValue()).isTrue();
  }

  /** CRG / SSC Racing's guide of 2005: 43/57, 50/50, both fronts and both rears within 2.3 kg. */
  @Test
  void four_scales_as_published_ask_for_nothing() {
    assertThat(scales(43, 43, 57, 57).lines())
        .containsExactly(
            "As published within 2.3 kg an axle, and the shares within 1 % (ours,",
            "  provisional). Four scales hint, they prove nothing.",
            "",
            "                         read     published (crg-2005)",
            "  all four                 200.0 kg",
            "  front share                43.0 %  43.0 %",
            "  left share                 50.0 %  50.0 %",
            "  fronts apart               0.0 kg  within 2.3 kg",
            "  rears apart                0.0 kg  within 2.3 kg",
            "  right front + left rear    50.0 %  none: even is 50 %");
  }

  @Test
  void scales_apart_are_told_by_corner_and_share() {
    assertThat(scales(40, 36, 42, 46.4).lines())
        .startsWith(
            "Look first: the left front carries 4.0 kg more than the other; the right rear",
            "  carries 4.4 kg more than the other; more stands on the front than is usual.",
            "  Four scales hint, they prove nothing.")
        .contains("  right front + left rear    47.4 %  none: even is 50 %");
    assertThat(scales(30, 30, 50, 50).lines().get(0))
        .isEqualTo(
            "Look first: less stands on the front than is usual. Four scales hint, they prove");
    assertThat(scales(33, 31, 43, 41).lines().get(0))
        .isEqualTo("Look first: more stands on the left. Four scales hint, they prove nothing.");
    assertThat(scales(31, 33, 41, 43).lines().get(0))
        .isEqualTo("Look first: more stands on the right. Four scales hint, they prove nothing.");
  }

  @Test
  void the_limit_of_an_axle_is_still_even_and_a_little_more_is_not() {
    assertThat(scales(41.2, 38.9, 55, 55).json().get("frontEven").booleanValue()).isTrue();
    assertThat(scales(41.3, 38.9, 55, 55).json().get("frontEven").booleanValue()).isFalse();
    assertThat(scales(43, 43, 55.0, 57.3).json().get("rearEven").booleanValue()).isTrue();
    assertThat(scales(43, 43, 55.0, 57.4).json().get("rearEven").booleanValue()).isFalse();
  }

  @Test
  void the_numbers_of_four_scales_add_up() {
    FourScales scales = new FourScales(new BothSides(33, 37), new BothSides(44, 43));

    assertThat(scales.totalKg()).isEqualTo(157);
    assertThat(scales.frontPercent()).isCloseTo(7000.0 / 157, within(1e-9));
    assertThat(scales.leftPercent()).isCloseTo(7700.0 / 157, within(1e-9));
    assertThat(scales.crossPercent()).isCloseTo(8100.0 / 157, within(1e-9));
  }

  @Test
  void each_check_names_the_note_that_says_what_to_look_at() {
    assertThat(lift(1, 1).note()).contains("lift-test");
    assertThat(scales(43, 43, 57, 57).note()).contains("four-scales");
    assertThat(new ToeOverDisc(280, 1).note()).isEmpty();
  }

  @Test
  void everything_fits_the_screen() {
    assertThat(lift(299.123456, 0.000123).lines()).allMatch(line -> line.length() <= 80);
    assertThat(scales(149.9999, 5, 5, 149.9999).lines()).allMatch(line -> line.length() <= 80);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "{'lift':{'heightMm':{'left':-1,'right':3}}} | lift.heightMm.left: -1 is outside 0 to 300 mm"
            + " (provisional)",
        "{'lift':{'heightMm':{'left':1}}} | lift.heightMm.right: is missing",
        "{'lift':{'heightMm':{'left':'NaN','right':3}}} | lift.heightMm.left: must be a number, not"
            + " a text",
        "{'lift':{'heightMm':{'left':1,'right':3}},'scales':{}} | document: must have one of laser,"
            + " sweep, toe, lift, scales",
        "{'lift':{'heightMm':{'left':1,'right':3},'by':'me'}} | lift.by: unknown key",
        "{'scales':{'frontKg':{'left':33,'right':33}}} | scales.rearKg: is missing",
        "{'scales':{'frontKg':{'left':0,'right':33}}} | scales.frontKg.left: 0 is outside 5 to 150"
            + " kg (provisional)",
        "{'scales':{'frontKg':{'left':33,'right':1e999}}} | scales.frontKg.right: must be a finite"
            + " number",
      })
  void a_check_that_cannot_be_is_refused(String json, String message) {
    assertThatThrownBy(() -> read(json.replaceFirst("\\{", "{'schema':1,")))
        .hasMessage("gauge.json: " + message);
  }
}
