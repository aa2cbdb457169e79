package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.AdviceText.Part;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.shared.Status;
import insidelift.shared.advice.Advice;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.CaseReader;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AdviceTextTest {

  private static final Advisor ADVISOR = Advisor.load();

  @Test
  void aChangeIsToldAsWhatToDoThenWhyThenCautionsThenTheJob() throws CaseProblem {
    Advice advice = advice("'water': 'wet', 'tyres': 'wets', 'steering-weight': 'heavy'");
    assertThat(advice.status()).isEqualTo(Status.CHANGE);
    assertThat(titles(advice))
        .startsWith("What to do now", "Why", "Take care", "The job, step by step")
        .containsSubsequence(
            "The job, step by step", "Did it work?", "What else could be", "Sources")
        .doesNotHaveDuplicates();
    List<String> now = parts(advice).get(0).lines();
    assertThat(now.get(0)).startsWith("  > Set camber ").contains("on both sides");
    assertThat(now).anyMatch(line -> line.startsWith("    Experts split: try it and measure. "));
    assertThat(now).anyMatch(line -> line.startsWith("  = Leave caster where it is"));
  }

  @Test
  void aHoldSaysSoInItsTitleAndNamesNoJob() throws CaseProblem {
    Advice advice = advice("'water': 'dry', 'front-wear': 'even'");
    assertThat(advice.status()).isEqualTo(Status.HOLD);
    assertThat(titles(advice))
        .startsWith("Hold: leave camber and caster as they are", "Why")
        .doesNotContain("The job, step by step", "Did it work?", "What to do now");
    assertThat(parts(advice).get(0).lines()).noneMatch(line -> line.startsWith("  > "));
  }

  @Test
  void aFaultComesFirstAndMovesNothing() throws CaseProblem {
    Advice advice = advice("'water': 'wet', 'tyres': 'wets', 'play': 'some'");
    assertThat(advice.status()).isEqualTo(Status.FIX_FIRST);
    assertThat(titles(advice))
        .startsWith("Fix this first: no camber or caster change yet")
        .doesNotContain("The job, step by step", "What to do now");
    List<String> now = parts(advice).get(0).lines();
    assertThat(now.get(0)).startsWith("  ! ").containsIgnoringCase("play");
    assertThat(String.join("\n", now)).doesNotContain("  > ");
  }

  @Test
  void nothingKnownSaysWhichQuestionWouldHelpMost() throws CaseProblem {
    Advice advice = advice("");
    assertThat(advice.status()).isEqualTo(Status.NOT_ENOUGH);
    assertThat(titles(advice)).startsWith("Not enough to go on yet").doesNotContain("Why");
    assertThat(parts(advice).get(0).lines())
        .containsExactly(
            "Nothing known so far asks for a change or rules one out.",
            "What would help most: " + advice.wouldHelp().get(0).ask());
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 80, 100})
  void noLineIsWiderThanItsScreen(int width) throws CaseProblem {
    Advice advice = advice("'water': 'wet', 'tyres': 'wets', 'steering-weight': 'heavy'");
    assertThat(new AdviceText(width).lines(advice)).allMatch(line -> line.length() <= width);
  }

  @Test
  void everyCautionIsToldOnce() throws CaseProblem {
    Advice advice = advice("'water': 'wet', 'tyres': 'wets', 'driver-strength': 'strong'");
    List<String> care =
        parts(advice).stream().filter(p -> p.title().equals("Take care")).toList().get(0).lines();
    assertThat(care.stream().filter(line -> line.startsWith("  ! ")))
        .hasSizeGreaterThan(5)
        .doesNotHaveDuplicates();
  }

  private static Advice advice(String answers) throws CaseProblem {
    String json = "{'schema': 1, 'answers': {%s}}".formatted(answers).replace('\'', '"');
    return ADVISOR.advise(new CaseReader(ADVISOR.vocabulary()).read(json));
  }

  private static List<Part> parts(Advice advice) {
    return new AdviceText(80).parts(advice);
  }

  private static List<String> titles(Advice advice) {
    return parts(advice).stream().map(Part::title).toList();
  }
}
