package insidelift.engine.geometry.toe;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ToeJobTest {

  private static ToeJob job(String json) {
    String document = "{'schema':1,'toeJob':{" + json + "}}";
    return ToeJob.read(
        new ByteArrayInputStream(document.replace('\'', '"').getBytes(UTF_8)), "toe.json");
  }

  @Test
  void what_to_turn_is_told_rod_by_rod() {
    assertThat(job("'discMm':280,'left':'1.5 out','right':'0,5 in','pitchMm':1.25").lines())
        .containsExactly(
            "Toe over 280 mm",
            "  left wheel now:     1.50 mm out (0.31°)",
            "  right wheel now:    0.50 mm in (0.10°)",
            "  both together now:  1.00 mm out (0.20°)",
            "  wanted, a side:     1.00 mm out (0.20°), on the stand (provisional)",
            "  wanted, together:   2.00 mm out (0.41°)",
            "",
            "What to turn, with the steering held straight",
            "  left rod:  0.18 mm longer = 0.4 of a flat",
            "  right rod: 0.54 mm shorter = 1.3 flats",
            "  Turn one rod first and measure: it must have gone the way that is wanted.",
            "",
            "Arm 100 mm (typical, provisional: measure yours), behind the kingpin (typical:",
            "  look at yours): a longer rod turns its wheel to toe-in.",
            "A turn is two pitches, 2.5 mm: right-hand thread at one end, left-hand at the",
            "  other (typical: look at yours).",
            "One flat moves its wheel by 1.17 mm a side, 0.24°.");
  }

  @Test
  void a_total_is_shared_by_both_rods_and_a_wanted_total_by_both_wheels() {
    assertThat(
            job("'discMm':280,'total':'3 out','wantedTotal':'2 out','armMm':95,'arm':'ahead',"
                    + "'threads':'one','pitchMm':1")
                .lines())
        .containsExactly(
            "Toe over 280 mm",
            "  both together now:  3.00 mm out (0.61°)",
            "  wanted, a side:     1.00 mm out (0.20°)",
            "  wanted, together:   2.00 mm out (0.41°)",
            "",
            "What to turn, with the steering held straight",
            "  left rod:  0.17 mm shorter = 1 flat",
            "  right rod: 0.17 mm shorter = 1 flat",
            "  Only the total was read, so both rods share it: sweep the steering first.",
            "  Turn one rod first and measure: it must have gone the way that is wanted.",
            "",
            "Arm 95 mm, ahead of the kingpin: a longer rod turns its wheel to toe-out.",
            "A turn is one pitch, 1 mm: one joint turns on its thread. Off its bolt it goes",
            "  back after half turns only: take the nearest, and measure.",
            "One flat moves its wheel by 0.49 mm a side, 0.10°.");
  }

  @Test
  void toe_in_degrees_needs_no_disc_and_a_toe_that_is_right_is_left() {
    assertThat(job("'left':'0.2 deg out','right':'0','wanted':'0.2 ° out','armMm':90").lines())
        .containsExactly(
            "Toe in degrees",
            "  left wheel now:     0.20° out",
            "  right wheel now:    none",
            "  both together now:  0.20° out",
            "  wanted, a side:     0.20° out",
            "  wanted, together:   0.40° out",
            "",
            "What to turn, with the steering held straight",
            "  left rod:  leave it as it is",
            "  right rod: 0.31 mm shorter",
            "  Turn one rod first and measure: it must have gone the way that is wanted.",
            "",
            "Arm 90 mm, behind the kingpin (typical: look at yours): a longer rod turns its",
            "  wheel to toe-in.",
            "Turns are missing: they need the pitch of the thread. Measure over ten threads",
            "  and divide by ten.");
  }

  @Test
  void a_sweep_changes_both_rods_against_each_other() {
    assertThat(
            job("'sweep':{'beamMm':1000,'left':612,'right':618},'armMm':100,'arm':'behind',"
                    + "'pitchMm':1.25,'threads':'both'")
                .lines())
        .containsExactly(
            "Sweep: steered fully left the left beam reaches 612 mm, steered fully right the",
            "  right one 618 mm, with the tapes 1000 mm away.",
            "The right wheel turns 0.25° farther. Toe in all stays: both rods take half, one",
            "  each way.",
            "",
            "What to turn, with the steering held straight",
            "  left rod:  0.22 mm shorter = 0.5 of a flat",
            "  right rod: 0.22 mm longer = 0.5 of a flat",
            "  Centre the steering again, sweep again, and only then measure toe.",
            "  Turn one rod first and measure: it must have gone the way that is wanted.",
            "",
            "Arm 100 mm, behind the kingpin: a longer rod turns its wheel to toe-in.",
            "A turn is two pitches, 2.5 mm: right-hand thread at one end, left-hand at the",
            "  other.",
            "Assumed: both locks are reached alike, the arms are alike, and both tapes are at",
            "  the same distance and count from where a beam straight ahead falls. If not,",
            "  put that right first: the rods are not to blame.");
  }

  @Test
  void an_even_sweep_leaves_the_rods() {
    assertThat(job("'sweep':{'beamMm':1000,'left':612,'right':613}").lines())
        .containsExactly(
            "Sweep: steered fully left the left beam reaches 612 mm, steered fully right the",
            "  right one 613 mm, with the tapes 1000 mm away.",
            "Even within 1 mm (provisional): leave the rods as they are, and go on to toe.");
  }

  @Test
  void the_json_has_sides_and_totals_under_names_of_their_own() {
    ObjectNode json =
        job("'with':'discs','discMm':280,'left':'1 out','right':'0 in','pitchMm':1").json();

    assertThat(json.get("with").textValue()).isEqualTo("discs");
    assertThat(json.at("/left/mm").doubleValue()).isCloseTo(1, within(1e-9));
    assertThat(json.at("/left/rod").textValue()).isEqualTo("leave");
    assertThat(json.at("/right/direction").textValue()).isEqualTo("none");
    assertThat(json.at("/right/rod").textValue()).isEqualTo("shorter");
    assertThat(json.at("/right/turns").doubleValue()).isCloseTo(100.0 / 280 / 2, within(1e-9));
    assertThat(json.at("/total/mm").doubleValue()).isCloseTo(1, within(1e-4));
    assertThat(json.at("/wantedPerSide/provisional").booleanValue()).isTrue();
    assertThat(json.at("/wantedTotal/mm").doubleValue()).isCloseTo(2, within(1e-9));
    assertThat(json.at("/rod/armTypical").booleanValue()).isTrue();
    assertThat(job("'sweep':{'beamMm':1000,'left':612,'right':618}").json().at("/sweep/even"))
        .hasToString("false");
  }

  @Test
  void nothing_read_is_no_task() {
    assertThat(job("").lines()).isEmpty();
    assertThat(job("'with':'tape'").method()).contains(ToeMethod.TAPE);
    assertThat(job("'with':'tape'").lines()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "'left':'1.5','right':'0' | toeJob.left: \"1.5\" does not say which way: add out or in",
        "'left':'-1.5 out' | toeJob.left: \"-1.5 out\" has a sign, and signs differ in the trade:"
            + " say it as in 1.5 out",
        "'left':'out' | toeJob.left: \"out\" is not a toe such as 1.5 out, 0.2 deg in or 0",
        "'left':'NaN out' | toeJob.left: \"NaN out\" is not a toe such as 1.5 out, 0.2 deg in or 0",
        "'left':'1e308 in' | toeJob.left: \"1e308 in\" is not a toe such as 1.5 out, 0.2 deg in or"
            + " 0",
        "'left':1.5 | toeJob.left: must be a text, not a number",
        "'left':'1 out','right':'1 out' | toeJob.discMm: is missing: mm of toe need the length that"
            + " they are over, as the disc's diameter",
        "'left':'1 deg out' | toeJob.right: is missing",
        "'right':'1 deg out' | toeJob.left: is missing",
        "'left':'5.1 deg in' | toeJob.left: 5.1 is outside 0 to 5 ° (provisional)",
        "'total':'10.1 deg in' | toeJob.total: 10.1 is outside 0 to 10 ° (provisional)",
        "'discMm':280,'left':'25 out' | toeJob.left: 25 is outside 0 to 24.4 mm (5° over that"
            + " length, provisional)",
        "'discMm':280,'total':'49 out' | toeJob.total: 49 is outside 0 to 48.81 mm (10° over that"
            + " length, provisional)",
        "'total':'1 deg out' | toeJob.wanted: is missing, and our own is in mm: say what is wanted,"
            + " or discMm",
        "'total':'0','left':'0' | toeJob.total: give left and right, or total, not both",
        "'sweep':{},'total':'0' | toeJob.sweep: give it without toe: the sweep is first, toe is"
            + " read after it",
        "'sweep':{},'wanted':'0','discMm':280 | toeJob.sweep: give it without toe: the sweep is"
            + " first, toe is read after it",
        "'sweep':{'left':1,'right':2} | toeJob.sweep.beamMm: is missing",
        "'sweep':{'beamMm':1,'left':1,'right':2} | toeJob.sweep.beamMm: 1 is outside 100 to 5000 mm"
            + " (provisional)",
        "'sweep':{'beamMm':1000,'left':-1,'right':2} | toeJob.sweep.left: -1 is outside 0 to 5000"
            + " mm (provisional)",
        "'sweep':{'beamMm':100,'left':0,'right':5000} | toeJob.sweep: left and right are 88.9°"
            + " apart: no rod makes more than 5° (provisional), so read again",
        "'sweep':{'beamMm':1000,'left':1,'right':2,'middle':3} | toeJob.sweep.middle: unknown key",
        "'wanted':'0','wantedTotal':'0' | toeJob.wanted: give either wanted, for each side, or"
            + " wantedTotal",
        "'with':'string' | toeJob.with: \"string\" is not one of laser, discs, straight-edge, tape",
        "'arm':'up' | toeJob.arm: \"up\" is not one of behind, ahead",
        "'threads':'none' | toeJob.threads: \"none\" is not one of both, one",
        "'discMm':280 | toeJob: has no reading: give left and right, or total, or sweep",
        "'with':'tape','discMm':280 | toeJob: has no reading: give left and right, or total, or"
            + " sweep",
        "'discMm':1e308 | toeJob.discMm: 1"
            + "000000000000000000000000000000000000000000000000000000000000000000000000000000000000"
            + "000000000000000000000000000000000000000000000000000000000000000000000000000000000000"
            + "000000000000000000000000000000000000000000000000000000000000000000000000000000000000"
            + "00000000000000000000000000000000000000000000000000000000 is outside 100 to 2000 mm"
            + " (provisional)",
        "'lefty':'1 out' | toeJob.lefty: unknown key",
      })
  void what_is_unclear_is_refused(String json, String message) {
    assertThatThrownBy(() -> job(json)).hasMessage("toe.json: " + message);
  }

  @Test
  void everything_fits_the_screen() {
    for (String json :
        new String[] {
          "'discMm':1999.875,'left':'123.4567 out','right':'123.4567 in','pitchMm':0.5123",
          "'discMm':1999.875,'total':'223.4567 in','pitchMm':2.4999,'threads':'one'",
          "'sweep':{'beamMm':4999.1234567,'left':4999.1234567,'right':4899.1234567}"
        }) {
      assertThat(job(json).lines()).allMatch(line -> line.length() <= 80).hasSizeLessThan(24);
    }
  }
}
