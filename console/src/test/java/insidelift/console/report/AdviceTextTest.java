package insidelift.console.report;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.report.AdviceText.Section;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.shared.Status;
import insidelift.shared.advice.Advice;
import insidelift.shared.casefile.CaseReader;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Situation;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AdviceTextTest {

  private static final Advisor ADVISOR = Advisor.load();

  @Test
  void aChangeIsToldAsWhatToDoHowTheMinutesTheCareTheFeelAndTheWayBack() throws CaseProblem {
    Advice advice = advice("'water': 'wet', 'tyres': 'wets', 'steering-weight': 'heavy'");
    assertThat(advice.status()).isEqualTo(Status.CHANGE);
    assertThat(labels(advice))
        .containsSubsequence("tell", "do", "how", "time", "care", "feel", "undo", "look");
    assertThat(answer(advice))
        .anyMatch(line -> line.startsWith("  do     Set camber "))
        .anyMatch(line -> line.contains("Experts split: try it and measure."));
  }

  @Test
  void theMinutesThatAreLeftStandBesideThoseOfTheJob() throws CaseProblem {
    Situation situation =
        situation("'water': 'wet', 'tyres': 'wets', 'power': 'mid', 'time-left': 45");
    Advice advice = ADVISOR.advise(situation);
    assertThat(new AdviceText(80).answer(advice, situation).lines())
        .anyMatch(line -> line.matches("  time   \\d+ to \\d+ minutes, with toe; 45 left\\. .*"));
  }

  @Test
  void whatTheAdviceStandsOnIsAskedBeforeAnythingIsTurned() throws CaseProblem {
    String told = "'water': 'dry', 'turn-in': 'understeer', 'severity': 'clear'";
    assertThat(answer(advice(told)).stream().map(String::strip).collect(joining(" ")))
        .contains("tell   Before anything is turned: ")
        .contains("How strong is the driver for this kart?")
        .contains("How powerful is the class?");
    assertThat(labels(advice(told + ", 'power': 'mid', 'driver-strength': 'average'")))
        .doesNotContain("tell")
        .contains("do");
  }

  @Test
  void whereALeverOfTheOwnSheetStaysTheSheetIsNotWhatToDo() throws CaseProblem {
    String wet = "'water': 'wet', 'tyres': 'wets', 'power': 'mid', 'setup-for': 'dry'";
    String kart =
        ", 'kart': {'camber': {'left': 0, 'right': 0}, 'caster': {'left': 0, 'right': 0},"
            + " 'baseline': {'wet': {'camber': {'left': 1, 'right': 1},"
            + " 'caster': {'left': 2, 'right': 2}}}}";
    assertThat(told(wet + "}" + kart)).contains("Over to this kart's own wet sheet");
    assertThat(told(wet + ", 'steering-weight': 'heavy'}" + kart))
        .doesNotContain("Over to this kart's own")
        .contains("  do     Set camber 1.0° toward positive on both sides, to +1.0°")
        .contains("  stay   Leave caster where it is");
  }

  @Test
  void positionsThatNobodyMeasuredAreAbout() throws CaseProblem {
    String pushes =
        "'water': 'dry', 'mid-corner': 'understeer', 'severity': 'clear', 'power': 'mid',"
            + " 'driver-strength': 'average', 'inside-rear': 'lifts'}";
    assertThat(told(pushes)).contains("  how    About 1 position a side: turn the top eccentric");
    assertThat(told(pushes + ", 'kart': {'eccentrics': {'camberPerPosition': 0.25}}"))
        .contains("  how    1 position a side: turn the top eccentric outward, away from the seat");
  }

  @Test
  void aHoldSaysItsOwnReasonAndNamesNoJob() throws CaseProblem {
    Advice advice = advice("'water': 'dry', 'front-wear': 'even'");
    assertThat(advice.status()).isEqualTo(Status.HOLD);
    assertThat(title(advice)).isEqualTo("Hold: leave camber and caster as they are");
    assertThat(labels(advice)).contains("why").doesNotContain("do", "how", "undo");
    assertThat(names(advice)).doesNotContain("steps", "numbers");
  }

  @Test
  void aFaultComesFirstAndMovesNothing() throws CaseProblem {
    Advice advice = advice("'water': 'wet', 'tyres': 'wets', 'play': 'some'");
    assertThat(advice.status()).isEqualTo(Status.FIX_FIRST);
    assertThat(title(advice)).isEqualTo("Fix this first: no camber or caster change yet");
    assertThat(answer(advice).get(0)).startsWith("  first  ").containsIgnoringCase("play");
    assertThat(labels(advice)).doesNotContain("do", "how");
  }

  @Test
  void nothingKnownSaysWhichQuestionWouldHelpMost() throws CaseProblem {
    Advice advice = advice("");
    assertThat(advice.status()).isEqualTo(Status.NOT_ENOUGH);
    assertThat(title(advice)).isEqualTo("Not enough to go on yet");
    assertThat(answer(advice).get(0))
        .isEqualTo("         Nothing known so far asks for a change or rules one out.");
    assertThat(answer(advice)).contains("  tell   " + advice.wouldHelp().get(0).ask());
    assertThat(names(advice)).doesNotContain("why");
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 80, 100})
  void noLineIsWiderThanItsScreen(int width) throws CaseProblem {
    Advice advice = advice("'water': 'wet', 'tyres': 'wets', 'steering-weight': 'heavy'");
    assertThat(new AdviceText(width).lines(advice, Situation.UNKNOWN))
        .allMatch(line -> line.length() <= width);
  }

  @Test
  void everyCautionIsToldOnce() throws CaseProblem {
    Advice advice = advice("'water': 'wet', 'tyres': 'wets', 'driver-strength': 'strong'");
    List<String> care =
        new AdviceText(80)
            .sections(advice).stream()
                .filter(section -> section.name().equals("care"))
                .flatMap(section -> section.part().lines().stream())
                .toList();
    assertThat(care.stream().filter(line -> line.startsWith("  ! ")))
        .hasSizeGreaterThan(5)
        .doesNotHaveDuplicates();
  }

  private static Advice advice(String answers) throws CaseProblem {
    return ADVISOR.advise(situation(answers));
  }

  private static Situation situation(String answers) throws CaseProblem {
    String json = "{'schema': 1, 'answers': {%s}}".formatted(answers).replace('\'', '"');
    return new CaseReader(ADVISOR.vocabulary()).read(json);
  }

  /** The answer to a case that goes on behind its answers. */
  private static String told(String rest) throws CaseProblem {
    String json = ("{'schema': 1, 'answers': {" + rest + "}").replace('\'', '"');
    Situation situation = new CaseReader(ADVISOR.vocabulary()).read(json);
    return String.join(
        "\n", new AdviceText(80).answer(ADVISOR.advise(situation), situation).lines());
  }

  private static String title(Advice advice) {
    return new AdviceText(80).answer(advice, Situation.UNKNOWN).title();
  }

  private static List<String> answer(Advice advice) {
    return new AdviceText(80).answer(advice, Situation.UNKNOWN).lines();
  }

  private static List<String> labels(Advice advice) {
    return answer(advice).stream().map(line -> line.substring(2, 8).strip()).distinct().toList();
  }

  private static List<String> names(Advice advice) {
    return new AdviceText(80).sections(advice).stream().map(Section::name).toList();
  }
}
