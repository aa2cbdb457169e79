package insidelift.engine.geometry.positions;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import insidelift.engine.geometry.Side;
import insidelift.engine.geometry.StrictJson;
import java.io.ByteArrayInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PositionsTest {

  private static final String EIGHT =
      "{'pivots':'both','throwMm':1,'pivotSpacingMm':55,'positions':8}";
  private static final String TOP_ONLY =
      "{'pivots':'top','throwMm':2,'pivotSpacingMm':60,'anglesDeg':[0,45,90,135,180,225,270,315]}";

  @ParameterizedTest
  @CsvSource({"1, 55, 1.042", "2, 60, 1.909"})
  void one_washer_gives_the_angle_of_the_reference(double thrown, double spacing, double degrees) {
    WasherPosition rearward = WasherPosition.clocked("1", 0, thrown / spacing, false, 1);

    assertThat(Math.toDegrees(Math.atan(rearward.casterTan()))).isCloseTo(degrees, within(5e-4));
    assertThat(rearward.camberTan()).isZero();
  }

  @Test
  void opposed_top_and_bottom_washers_double_the_change() {
    PositionAdvice left = solve(EIGHT, "'want':{'camberDeg':2.083}").sides().get(0);

    assertThat(left.reach()).isEqualTo(PositionAdvice.Reach.REACHED);
    assertThat(left.best().to()).isEqualTo(new PositionPair("3", "7"));
    assertThat(left.best().camberDeg()).isCloseTo(2 * 1.042, within(2e-3));
    assertThat(left.best().casterDeg()).isCloseTo(0, within(1e-9));
  }

  @Test
  void one_washer_turned_for_camber_moves_caster_and_the_answer_says_so() {
    Positions positions =
        solve(TOP_ONLY, "'now':{'left':{'top':'1'},'right':{'top':'1'}},'want':{'camberDeg':1}");
    PositionAdvice left = positions.sides().get(0);

    assertThat(left.reach()).isEqualTo(PositionAdvice.Reach.OUT_OF_REACH);
    assertThat(left.limit()).startsWith("This hardware cannot do it: its nearest pair misses");
    assertThat(positions.lines()).contains("  It costs caster: -0.56° where none was wanted.");
  }

  @Test
  void both_levers_are_solved_together() {
    PositionAdvice left =
        solve(
                "{'pivots':'both','throwMm':2,'pivotSpacingMm':60,'positions':24}",
                "'want':{'camberDeg':0.5,'casterDeg':1}")
            .sides()
            .get(0);

    assertThat(left.reach()).isNotEqualTo(PositionAdvice.Reach.OUT_OF_REACH);
    assertThat(left.best().camberDeg()).isCloseTo(0.5, within(0.2));
    assertThat(left.best().casterDeg()).isCloseTo(1, within(0.2));
    assertThat(left.choices()).hasSize(3);
    assertThat(left.choices().get(1).missDeg()).isGreaterThanOrEqualTo(left.best().missDeg());
  }

  @Test
  void no_pair_of_positions_comes_nearer_than_the_best() {
    EccentricHardware hardware = EccentricHardware.from(parse(EIGHT));
    WantedChange wanted = new WantedChange(0.7, -0.4);
    double best =
        PositionAdvice.of(Side.LEFT, hardware, hardware.neutral(), wanted, 1).best().missDeg();
    for (int top = 0; top < 8; top++) {
      for (int bottom = 0; bottom < 8; bottom++) {
        double outward = Math.sin(Math.PI / 4 * top) - Math.sin(Math.PI / 4 * bottom);
        double rearward = Math.cos(Math.PI / 4 * top) - Math.cos(Math.PI / 4 * bottom);
        double camber = Math.toDegrees(Math.atan(outward / 55));
        double caster = Math.toDegrees(Math.atan(rearward / 55));
        assertThat(Math.hypot(camber - 0.7, caster + 0.4)).isGreaterThanOrEqualTo(best - 1e-9);
      }
    }
  }

  @Test
  void left_and_right_take_the_same_positions_and_turn_mirrored() {
    Positions positions = solve(EIGHT, "'want':{'camberDeg':2.083}");

    assertThat(positions.sides().get(0).best().to())
        .isEqualTo(positions.sides().get(1).best().to());
    assertThat(positions.lines())
        .contains(
            "  - Top washer from position 1 to 3: 90° clockwise seen from above.",
            "  - Bottom washer from position 1 to 7: 90° anticlockwise seen from above.",
            "  - Top washer from position 1 to 3: 90° anticlockwise seen from above.",
            "  - Bottom washer from position 1 to 7: 90° clockwise seen from above.");
  }

  @Test
  void hardware_that_moves_camber_only_says_that_the_caster_stays() {
    Positions positions =
        solve(
            "{'pivots':'both','throwMm':1,'pivotSpacingMm':55,'positions':4,'camberOnly':true}",
            "'want':{'camberDeg':1.04,'casterDeg':1}");

    assertThat(positions.sides().get(0).best().casterDeg()).isZero();
    assertThat(positions.sides().get(0).limit())
        .isEqualTo(
            "This hardware moves camber only: the caster stays. This hardware cannot do it: its"
                + " nearest pair misses camber by 0.00° and caster by -1.00°.");
  }

  @Test
  void a_table_of_measured_positions_is_taken_as_measured() {
    PositionAdvice right =
        solve(
                "{'pivots':'top','table':[{'name':'A','camberDeg':0,'casterDeg':0},"
                    + "{'name':'B','camberDeg':0.5,'casterDeg':-0.1},"
                    + "{'name':'C','camberDeg':1.1,'casterDeg':-0.4}]}",
                "'now':{'left':{'top':'A'},'right':{'top':'B'}},'want':{'camberDeg':0.6}")
            .sides()
            .get(1);

    assertThat(right.best().to().top()).isEqualTo("C");
    assertThat(right.best().camberDeg()).isCloseTo(0.6, within(1e-9));
    assertThat(right.best().casterDeg()).isCloseTo(-0.3, within(1e-9));
    assertThat(PositionsText.steps(right, right.best()))
        .containsExactly("Top washer from position B to C.");
  }

  @Test
  void bottom_readings_are_signed_as_readings() {
    PositionAdvice left =
        solve(
                "{'pivots':'bottom','table':[{'name':'A','camberDeg':0,'casterDeg':0},"
                    + "{'name':'B','camberDeg':0.5,'casterDeg':0}]}",
                "'want':{'camberDeg':0.5}")
            .sides()
            .get(0);

    assertThat(left.best().to()).isEqualTo(new PositionPair("fixed", "B"));
  }

  @Test
  void each_side_may_want_something_else() {
    Positions positions = solve(EIGHT, "'want':{'camberDeg':{'left':2.083,'right':-2.083}}");

    assertThat(positions.sides().get(0).best().to()).isEqualTo(new PositionPair("3", "7"));
    assertThat(positions.sides().get(1).best().to()).isEqualTo(new PositionPair("7", "3"));
  }

  @Test
  void wanting_nothing_leaves_both_washers() {
    PositionAdvice left = solve(EIGHT, "'want':{}").sides().get(0);

    assertThat(left.best().to()).isEqualTo(left.now());
    assertThat(PositionsText.steps(left, left.best()))
        .containsExactly("Leave both washers where they are.");
  }

  @Test
  void positions_not_given_are_assumed_and_the_answer_says_so() {
    assertThat(solve(EIGHT, "'want':{}").lines())
        .contains("Present positions were not given: each washer is taken to be in its first.");
  }

  @Test
  void the_json_gives_residuals_and_the_next_best_choices() {
    JsonNode left = solve(EIGHT, "'want':{'camberDeg':2.083}").json().get("left");

    assertThat(left.get("reach").textValue()).isEqualTo("reached");
    assertThat(left.get("choices")).hasSize(3);
    assertThat(left.get("choices").get(0).get("top").textValue()).isEqualTo("3");
    assertThat(left.get("choices").get(0).get("camberResidualDeg").doubleValue())
        .isCloseTo(0, within(2e-3));
  }

  @Test
  void the_text_fits_80_columns() {
    assertThat(solve(TOP_ONLY, "'want':{'camberDeg':0.6,'casterDeg':0.3}").lines())
        .allMatch(line -> line.length() <= 80);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "{'pivots':'side'} | eccentrics.pivots: \"side\" is not one of top, bottom, both",
        "{'pivots':'top','throwMm':0,'pivotSpacingMm':55,'positions':8} | eccentrics.throwMm: 0 is"
            + " outside 0.1 to 10 mm (provisional)",
        "{'pivots':'top','throwMm':1,'pivotSpacingMm':55,'positions':2.5} | eccentrics.positions:"
            + " 2.5 is not a whole number",
        "{'pivots':'top','throwMm':1,'pivotSpacingMm':55} | eccentrics.positions: is missing",
        "{'pivots':'both','table':[{'name':'A','camberDeg':0,'casterDeg':0}]} |"
            + " eccentrics.bottomTable: is missing",
        "{'pivots':'top','table':[{'name':'A','camberDeg':0,'casterDeg':0},"
            + "{'name':'A','camberDeg':1,'casterDeg':0}]} | eccentrics.table[1].name: \"A\" is"
            + " there twice",
        "{'pivots':'top','table':[{'name':'the seventeenth..','camberDeg':0,'casterDeg':0}]} |"
            + " eccentrics.table[0].name: must be at most 16 printable characters",
        "{'pivots':'top','table':[{'name':'\u202eA','camberDeg':0,'casterDeg':0}]} |"
            + " eccentrics.table[0].name: must be at most 16 printable characters",
        "{'pivots':'top','throwMm':1,'pivotSpacingMm':55,'positions':8,'marks':3} |"
            + " eccentrics.marks: unknown key",
      })
  void hardware_that_cannot_be_is_refused(String eccentrics, String message) {
    assertThatThrownBy(() -> solve(eccentrics, "'want':{}"))
        .hasMessage("positions.json: " + message);
  }

  @Test
  void a_position_that_the_washer_has_not_is_refused() {
    assertThatThrownBy(
            () -> solve(TOP_ONLY, "'now':{'left':{'top':'9'},'right':{'top':'1'}},'want':{}"))
        .hasMessage("positions.json: now.left.top: \"9\" is not one of 1, 2, 3, 4, 5, 6, 7, 8");
  }

  private static Positions solve(String eccentrics, String rest) {
    String json = "{'schema':1,'eccentrics':" + eccentrics + "," + rest + "}";
    return Positions.read(stream(json), "positions.json");
  }

  private static JsonNode parse(String json) {
    return StrictJson.read(stream(json), "test", node -> node);
  }

  private static ByteArrayInputStream stream(String json) {
    return new ByteArrayInputStream(json.replace('\'', '"').getBytes(UTF_8));
  }
}
