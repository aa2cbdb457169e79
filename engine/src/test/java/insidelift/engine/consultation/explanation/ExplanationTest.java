package insidelift.engine.consultation.explanation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.situation.Situation;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ExplanationTest {

  private static final Advisor ADVISOR = Advisor.load();

  private final Situation heavy =
      Situation.UNKNOWN
          .with("water", "dry")
          .with("mid-corner", "understeer")
          .with("turn-in", "good")
          .with("rubber", "rubbered")
          .with("steering-weight", "heavy");
  private final Explanation explanation = new Explanation(ADVISOR, heavy);

  @Test
  void everyExplanationReadsAsInTheTranscript() throws IOException {
    List<String> lines = new ArrayList<>();
    show("why mid-corner", explanation.why("mid-corner").lines(), lines);
    show("why gearbox", explanation.why("gearbox").lines(), lines);
    show("how binding", explanation.how("binding").lines(), lines);
    show("how caster", explanation.how("caster").lines(), lines);
    show("how mid-slide", explanation.how("mid-slide").lines(), lines);
    show("why not caster more", explanation.whyNot(Lever.CASTER, Direction.MORE).lines(), lines);
    show("why not camber more", explanation.whyNot(Lever.CAMBER, Direction.MORE).lines(), lines);
    show("rule caster-entry", explanation.rule("caster-entry").lines(), lines);
    show("rule limit.better", explanation.rule("limit.better").lines(), lines);
    show("what if water=wet", explanation.whatIf(Map.of("water", "wet")).lines(), lines);
    show("what if gearbox=none", explanation.whatIf(Map.of("gearbox", "none")).lines(), lines);

    assertThat(lines).isEqualTo(transcript());
  }

  private static void show(String command, List<String> shown, List<String> lines) {
    lines.add("> " + command);
    lines.addAll(shown);
  }

  private static List<String> transcript() throws IOException {
    try (InputStream in =
        ExplanationTest.class.getResourceAsStream("/insidelift/explanations.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    }
  }

  @Test
  void noLineIsWiderThanEightyColumns() {
    List<String> lines = new ArrayList<>();
    for (IndexedRule rule : ADVISOR.rules().index().rules()) {
      lines.addAll(explanation.rule(rule.id()).lines());
    }
    ADVISOR.vocabulary().questions().forEach(q -> lines.addAll(explanation.why(q.id()).lines()));
    ADVISOR.vocabulary().findings().forEach(f -> lines.addAll(explanation.how(f.id()).lines()));

    assertThat(lines).allMatch(line -> line.length() <= Said.WIDTH);
  }

  @Test
  void theWeightsOfAFindingSumToItsStrength() {
    Situation situation = heavy.with("inside-rear", "lifts").with("exit-drive", "bogs");
    How.Sum binding = new Explanation(ADVISOR, situation).how("binding").sums().get(0);

    assertThat(binding.parts().stream().mapToInt(How.Part::points).sum())
        .isEqualTo(binding.points())
        .isEqualTo(20 - 40);
    assertThat(binding.parts().get(0).says()).isEqualTo("against it");
  }

  /** What is printed adds up, unless it says that disputed losses were capped. */
  @Test
  void theTermsOfALeverAddUp() {
    for (String lever : List.of("camber", "caster")) {
      for (How.Sum sum : explanation.how(lever).sums()) {
        int added = sum.parts().stream().mapToInt(How.Part::points).sum();
        assertThat(added == sum.points()).isNotEqualTo(sum.capped());
      }
    }
  }

  @Test
  void whatIfLeavesTheSituationAlone() {
    WhatIf wet = explanation.whatIf(Map.of("water", "wet"));

    assertThat(wet.before()).isEqualTo(ADVISOR.advise(heavy));
    assertThat(wet.after()).isEqualTo(ADVISOR.advise(heavy.with("water", "wet")));
    assertThat(explanation.whatIf(Map.of("water", "dry")).changes()).isFalse();
  }

  @Test
  void aBarredMoveIsSaidToBeBarredAndItsSumIsShown() {
    WhyNot whyNot = explanation.whyNot(Lever.CASTER, Direction.MORE);

    assertThat(whyNot.advised()).isFalse();
    assertThat(whyNot.stopped()).contains("Barred: Steering already too heavy: never more caster.");
    assertThat(whyNot.sum().points()).isEqualTo(explanation.how("caster").sums().get(0).points());
  }

  @Test
  void whatWouldSpeakForAMoveIsNamedWhileItIsOpen() {
    assertThat(explanation.whyNot(Lever.CAMBER, Direction.LESS).open())
        .anyMatch(premise -> premise.startsWith("front-wear: "));
  }

  @Test
  void whatIsAdvisedIsNotExplainedAway() {
    assertThat(explanation.whyNot(Lever.CAMBER, Direction.MORE).advised()).isTrue();
    assertThat(explanation.whyNot(Lever.CAMBER, Direction.MORE).open()).isEmpty();
  }

  @Test
  void whatDoesNotExistIsRefused() {
    assertThatThrownBy(() -> explanation.why("mood"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("there is no question \"mood\"");
    assertThatThrownBy(() -> explanation.rule("luck"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("there is no rule \"luck\"");
    assertThatThrownBy(() -> explanation.whatIf(Map.of("water", "warm")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("no such answer: water: warm");
  }
}
