package insidelift.engine.consultation.session;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.shared.Degrees;
import insidelift.shared.Status;
import insidelift.shared.casefile.CaseReader;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Driven;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class NextHeatTest {

  private static final String PUSHES =
      """
      {"answers": {"water": "dry", "tyres": "slicks", "rubber": "normal", "turn-in": "understeer",
         "mid-corner": "good", "severity": "clear", "power": "mid", "driver-strength": "average",
         "adjustable": "both", "play": "none", "time-left": 40},
       "schema": 1,
       "kart": {"camber": {"left": 0.0, "right": 0.0},
         "caster": {"left": 0.0, "right": 0.0, "reference": "neutral"},
         "levers": {"front-width": "widest", "toe": "fixed", "rear-width": "fixed", "bars": "fixed"}}}
      """;

  private static Advisor advisor;

  @BeforeAll
  static void load() {
    advisor = Advisor.load();
  }

  @Test
  void whatIsOfTheKartAndTheDriverStaysAndWhatWasFeltIsForgotten() throws CaseProblem {
    Situation next = after(PUSHES, true, true);
    assertThat(next.answers())
        .containsEntry("power", "mid")
        .containsEntry("driver-strength", "average")
        .containsEntry("adjustable", "both")
        .containsEntry("water", "dry")
        .containsEntry("tyres", "slicks")
        .doesNotContainKeys(
            "turn-in", "mid-corner", "severity", "play", "time-left", "last-effect");
    assertThat(next.numbers()).isEmpty();
    assertThat(next.kart().past().levers()).containsEntry("front-width", "widest");
  }

  @Test
  void anotherTrackIsAskedAnew() throws CaseProblem {
    assertThat(after(PUSHES, true, false).answers()).doesNotContainKeys("water", "tyres", "rubber");
  }

  @Test
  void aChangeThatWasMadeMovesTheReadingsAndIsTheLastChange() throws CaseProblem {
    Situation next = after(PUSHES, true, true);
    assertThat(next.answer("last-change")).contains("caster-more");
    assertThat(next.kart().caster()).contains(Sides.both(Degrees.of(1)));
    assertThat(next.kart().camber()).contains(Sides.both(Degrees.ZERO));
    assertThat(next.kart().past().before().orElseThrow().caster())
        .contains(Sides.both(Degrees.ZERO));
  }

  @Test
  void aChangeThatWasNotMadeMovesNothingAndWhatWasDoneInsteadIsAsked() throws CaseProblem {
    Situation next = after(PUSHES, false, true);
    assertThat(next.answer("last-change")).isEmpty();
    assertThat(next.kart().caster()).contains(Sides.both(Degrees.ZERO));
    assertThat(next.kart().past().before()).isEmpty();
  }

  /** The spacer comes first: whether it was that, or both, only the driver's crew knows. */
  @Test
  void whereAnotherLeverCameFirstWhatWasChangedIsAsked() throws CaseProblem {
    String free = PUSHES.replaceFirst(",\\s+\"levers\": \\{[^}]*\\}", "");
    assertThat(advisor.advise(read(free)).lead()).isPresent();
    assertThat(after(free, true, true).answer("last-change")).isEmpty();
    assertThat(after(free, true, true).kart().caster()).contains(Sides.both(Degrees.of(1)));
  }

  @Test
  void theRunThatWasToldOfIsTheNewestOfThoseBefore() throws CaseProblem {
    assertThat(after(PUSHES, true, true).history())
        .singleElement()
        .satisfies(
            run -> {
              assertThat(run.answers())
                  .containsEntry("turn-in", "understeer")
                  .containsOnlyKeys("water", "turn-in", "mid-corner");
              assertThat(run.caster()).contains(Degrees.ZERO);
              assertThat(run.undo()).isFalse();
            });
  }

  @Test
  void aSetupForAnotherConditionIsForThatOneOnceItIsMade() throws CaseProblem {
    String rain =
        """
        {"answers": {"water": "wet", "tyres": "wets", "power": "mid", "driver-strength": "average",
           "setup-for": "dry"},
         "kart": {"camber": {"left": 0.0, "right": 0.0},
           "caster": {"left": 0.0, "right": 0.0, "reference": "neutral"}}}
        """;
    Situation next = after(rain, true, true);
    assertThat(next.answer("setup-for")).contains("wet");
    // Two levers at once: no clock can tell them apart.
    assertThat(next.answer("last-change")).contains("other");
    assertThat(after(rain, false, true).answer("setup-for")).contains("dry");
  }

  @Test
  void aDayIsToldRoundAfterRoundUntilTheKartIsGoodAndThenItIsLeft() throws CaseProblem {
    Session session = new Session(advisor);
    session.resume(read(PUSHES));
    assertThat(session.status()).isEqualTo(Status.CHANGE);

    session.nextHeat(true, true);
    told(session, Map.of("last-effect", "worse", "turn-in", "understeer", "mid-corner", "good"));
    assertThat(session.advice().suggestions().get(0).summary()).startsWith("Take caster back");

    session.nextHeat(true, true);
    assertThat(session.situation().kart().caster()).contains(Sides.both(Degrees.ZERO));
    told(session, Map.of("last-effect", "better", "turn-in", "good", "mid-corner", "good"));
    assertThat(session.status()).isEqualTo(Status.HOLD);
    assertThat(session.advice().baseline()).isNotNull();

    session.nextHeat(true, true);
    assertThat(session.situation().answer("last-change")).isEmpty();
    assertThat(session.situation().history())
        .extracting(Driven::undo)
        .containsExactly(false, false, true);
  }

  private static void told(Session session, Map<String, String> answers) {
    answers.forEach(session::answer);
    session.answer("severity", "clear");
  }

  private static Situation after(String json, boolean made, boolean sameTrack) throws CaseProblem {
    Situation before = read(json);
    return new NextHeat(before, advisor.vocabulary())
        .after(advisor.advise(before), made, sameTrack);
  }

  private static Situation read(String json) throws CaseProblem {
    String text = json.contains("\"schema\"") ? json : json.replaceFirst("\\{", "{\"schema\": 1, ");
    return new CaseReader(advisor.vocabulary()).read(text);
  }
}
