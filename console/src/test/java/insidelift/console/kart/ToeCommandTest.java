package insidelift.console.kart;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import insidelift.console.Launcher.Outcome;
import insidelift.console.terminal.InProcess;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ToeCommandTest {

  @TempDir private Path folder;

  private static Outcome run(String line) {
    return InProcess.run(line.split(" "));
  }

  private static List<String> shown(String line) {
    Outcome outcome = run(line);
    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.exit()).isZero();
    assertThat(outcome.out().lines()).allMatch(one -> one.length() <= 80);
    return outcome.out().lines().toList();
  }

  private static List<String> headings(List<String> lines) {
    return IntStream.range(1, lines.size())
        .filter(at -> lines.get(at).matches("-{5,}"))
        .mapToObj(at -> lines.get(at - 1))
        .toList();
  }

  @Test
  void what_to_turn_comes_first_and_fits_one_screen() {
    List<String> lines =
        shown("toe --with discs --disc 280 --left 1.5 out --right 0.5 in --arm 95 --pitch 1.25");

    assertThat(lines.subList(0, 19))
        .containsExactly(
            "Toe over 280 mm",
            "  left wheel now:     1.50 mm out (0.31°)",
            "  right wheel now:    0.50 mm in (0.10°)",
            "  both together now:  1.00 mm out (0.20°)",
            "  wanted, a side:     1.00 mm out (0.20°), on the stand (provisional)",
            "  wanted, together:   2.00 mm out (0.41°)",
            "",
            "What to turn, with the steering held straight",
            "  left rod:  0.17 mm longer = 0.4 of a flat",
            "  right rod: 0.51 mm shorter = 1.2 flats",
            "  Turn one rod first and measure: it must have gone the way that is wanted.",
            "",
            "Arm 95 mm, behind the kingpin (typical: look at yours): a longer rod turns its",
            "  wheel to toe-in.",
            "A turn is two pitches, 2.5 mm: right-hand thread at one end, left-hand at the",
            "  other (typical: look at yours).",
            "One flat moves its wheel by 1.23 mm a side, 0.25°.",
            "",
            "The toe job, step by step");
    assertThat(headings(lines))
        .containsExactly(
            "The toe job, step by step",
            "Measuring toe with discs",
            "How much toe, and why the trade differs",
            "Words of the toe job");
    assertThat(lines).contains("Dispute", "Sources");
  }

  @Test
  void without_a_reading_it_tells_how_much_toe_and_every_way_to_measure() {
    List<String> lines = shown("toe");

    assertThat(headings(lines))
        .containsExactly(
            "How much toe, and why the trade differs",
            "The toe job, step by step",
            "Measuring toe with a laser",
            "Measuring toe with discs",
            "Measuring toe with a straight-edge",
            "Measuring toe with a tape",
            "Words of the toe job");
    assertThat(lines)
        .containsSubsequence(
            "  Ours: 1 mm out a side on the stand. Then correct it to 0 to 1 mm out a side",
            "  with the driver aboard (provisional).",
            "Dispute",
            " 1. Do toe last. Set the pressures, feel for play, and finish caster, camber and",
            "Sources",
            "  crg-2005: CRG / SSC Racing set-up guide, 2005. Seen: in full.");
    assertThat(lines.stream().filter("Sources"::equals)).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource({
    "laser, Measuring toe with a laser",
    "discs, Measuring toe with discs",
    "straight-edge, Measuring toe with a straight-edge",
    "tape, Measuring toe with a tape",
  })
  void the_way_that_was_chosen_is_the_only_one_told(String way, String heading) {
    assertThat(headings(shown("toe --with " + way)))
        .containsExactly(
            "How much toe, and why the trade differs",
            "The toe job, step by step",
            heading,
            "Words of the toe job");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--left 1.5 out --right 0",
        "--left 1,5 out --right 0 out",
        "--left 1.5out --right 0 mm",
        "--right 0 --left 1.5 mm OUT",
      })
  void a_toe_is_read_however_it_is_typed(String words) {
    assertThat(shown("toe --disc 280 " + words))
        .contains("  left wheel now:     1.50 mm out (0.31°)", "  right wheel now:    none");
  }

  @Test
  void a_toe_in_one_word_of_the_shell_is_read_too() {
    Outcome outcome =
        InProcess.run("toe", "--left", "0.2 deg in", "--right", "0", "--target", "0.1 deg out");
    assertThat(outcome.out()).contains("  left wheel now:     0.20° in");
  }

  @Test
  void a_sweep_is_corrected_without_toe() {
    assertThat(shown("toe --sweep 612 618 --beam 1000 --pitch 1 --threads both"))
        .startsWith(
            "Sweep: steered fully left the left beam reaches 612 mm, steered fully right the",
            "  right one 618 mm, with the tapes 1000 mm away.")
        .contains(
            "  left rod:  0.22 mm shorter = 0.7 of a flat",
            "  right rod: 0.22 mm longer = 0.7 of a flat");
  }

  @Test
  void a_file_says_the_same_as_the_words() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("toe.json"),
            "{\"schema\":1,\"toeJob\":{\"discMm\":280,\"total\":\"3 out\",\"wanted\":\"1 out\"}}");

    assertThat(shown("toe " + file))
        .isEqualTo(shown("toe --disc 280 --total 3 out --target 1 out"));
    assertThat(InProcess.run("toe", file.toString(), "--disc", "280").err())
        .isEqualToIgnoringNewLines(
            "insidelift: Give a FILE or the reading in words, not both.Try: insidelift toe --help");
  }

  @Test
  void the_json_has_the_answer_and_the_notes() throws IOException {
    JsonNode json =
        JsonMapper.builder()
            .build()
            .readTree(run("toe --disc 280 --total 3 out --pitch 1 --json").out());

    assertThat(json.at("/left/rod").textValue()).isEqualTo("longer");
    assertThat(json.get("notes").findValuesAsText("id"))
        .containsExactly("toe-job", "toe-target", "toe-words");
    assertThat(json.at("/notes/0/sections/Steps")).hasSize(11);
    assertThat(json.at("/notes/1/disputed").booleanValue()).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "--left 1.5 --right 0 --disc 280 | 1 | toeJob.left: \"1.5\" does not say which way: add out"
            + " or in",
        "--left -1.5 --right 0 | 1 | toeJob.left: \"-1.5\" has a sign, and signs differ in the"
            + " trade: say it as in 1.5 out",
        "--left 1 out --disc 280 | 1 | toeJob.right: is missing",
        "--total NaN | 1 | toeJob.total: \"NaN\" is not a toe such as 1.5 out, 0.2 deg in or 0",
        "--disc 280 | 1 | toeJob: has no reading: give left and right, or total, or sweep",
        "--disc NaN | 2 | Invalid value for option '--disc': \"NaN\" is not a number such as 0.4 or"
            + " 0,4",
        "--arm 1e308 | 2 | Invalid value for option '--arm': \"1e308\" is not a number such as 0.4"
            + " or 0,4",
        "--arm -5 --total 0 | 1 | toeJob.armMm: -5 is outside 50 to 200 mm (provisional)",
        "--sweep 1 2 | 2 | Give --beam with --sweep: how far the tapes are from the wheels.",
        "--beam 1000 | 2 | Give --sweep with --beam: what both tapes show.",
        "--sweep 1 2 --beam 1000 --total 0 | 1 | toeJob.sweep: give it without toe: the sweep is"
            + " first, toe is read after it",
      })
  void what_is_unclear_is_refused_in_one_sentence(String words, int exit, String message) {
    Outcome outcome = run("toe " + words);

    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err().lines().findFirst()).contains("insidelift: " + message);
    assertThat(outcome.exit()).isEqualTo(exit);
  }

  @Test
  void a_lift_test_tells_the_order_in_which_to_look() {
    assertThat(shown("gauge lift --left 12 --right 18"))
        .startsWith(
            "Left rear, steered fully left:   12 mm",
            "Right rear, steered fully right: 18 mm",
            "Uneven: the right rear comes up 6 mm higher. Repeat it; if it stays, look in the",
            "  order below. That is more than 5 mm (provisional, nobody publishes a limit):",
            "  if it still stays, ask for a jig.")
        .containsSubsequence(
            "  If it is uneven, look in this order. One: is caster the same on both sides?",
            "  Two: do both ends of the axle stand at the same height?",
            "  Three: slacken the torsion bar, and test again.",
            "  Four: are the kingpins and their brackets straight and free?",
            "  Five: ask a shop with a jig. Move no lever to hide a twist.",
            "Sources");
  }

  @Test
  void four_scales_tell_where_to_look_beside_what_is_published() {
    assertThat(shown("gauge scales --front 33 37 --rear 44 43"))
        .startsWith(
            "Look first: the right front carries 4.0 kg more than the other; more stands on",
            "  the front than is usual. Four scales hint, they prove nothing.",
            "",
            "                         read     published (crg-2005)",
            "  all four                 157.0 kg",
            "  front share                44.6 %  43.0 %",
            "  left share                 49.0 %  50.0 %",
            "  fronts apart               4.0 kg  within 2.3 kg",
            "  rears apart                1.0 kg  within 2.3 kg",
            "  right front + left rear    51.6 %  none: even is 50 %")
        .contains("Sources");
    assertThat(run("gauge scales --front 33 -3 --rear 44 43").err())
        .isEqualToIgnoringNewLines(
            "insidelift: scales.frontKg.right: -3 is outside 5 to 150 kg (provisional)");
  }
}
