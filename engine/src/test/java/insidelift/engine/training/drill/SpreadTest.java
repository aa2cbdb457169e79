package insidelift.engine.training.drill;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Conclusion;
import insidelift.shared.Status;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** A thousand drawn cases: consistent, varied, and the same for the same number. */
class SpreadTest {

  private static final int CASES = 1000;

  private final Advisor advisor = Advisor.load();
  private final Imagined imagined = new Imagined(advisor.decider());

  private List<Situation> drawn() {
    List<Situation> drawn = new ArrayList<>();
    for (int number = 1; number <= CASES; number++) {
      drawn.add(imagined.whole(number));
    }
    return drawn;
  }

  @Test
  void theSameNumberIsTheSameCase() {
    assertThat(new Imagined(advisor.decider()).whole(4711)).isEqualTo(imagined.whole(4711));
    assertThat(imagined.whole(4712)).isNotEqualTo(imagined.whole(4711));
  }

  @Test
  void noCaseContradictsItself() {
    for (Situation situation : drawn()) {
      assertThat(imagined.consistent(situation)).as("%s", situation).isTrue();
      assertThat(situation.answer("water")).isPresent();
      if (!situation.answer("water").orElseThrow().equals("dry")) {
        assertThat(situation.answer("rubber")).as("%s", situation).isEmpty();
      }
      if (situation.kart().camber().isPresent()) {
        assertThat(situation.answer("readings")).contains("equal");
      }
    }
    Situation rubberOnWater = Situation.of(Map.of("water", "wet", "rubber", "rubbered"));
    assertThat(imagined.consistent(rubberOnWater)).isFalse();
  }

  @Test
  void causesLeversAndDirectionsAreVaried() {
    Map<String, Integer> decisions = new TreeMap<>();
    Map<String, Integer> causes = new TreeMap<>();
    for (Situation situation : drawn()) {
      Conclusion conclusion = Conclusion.of(advisor.decider(), situation);
      assertThat(conclusion.status()).isNotEqualTo(Status.NOT_ENOUGH);
      decisions.merge(Answers.of(conclusion), 1, Integer::sum);
      conclusion.reasons().forEach(note -> causes.merge(note, 1, Integer::sum));
    }
    System.out.println("Spread of " + CASES + " cases, numbers 1 to " + CASES);
    decisions.forEach((what, count) -> System.out.printf("  %4d  %s%n", count, what));
    System.out.println("Causes: " + causes.size());
    causes.forEach((what, count) -> System.out.printf("  %4d  %s%n", count, what));
    assertThat(decisions.keySet())
        .contains("fix", "leave", "camber-more", "camber-less", "caster-more", "caster-less");
    assertThat(decisions.get("fix")).isBetween(200, 450);
    for (String one : List.of("camber-more", "camber-less", "caster-more", "caster-less")) {
      assertThat(decisions.get(one)).as(one).isGreaterThanOrEqualTo(30);
    }
    assertThat(causes).hasSizeGreaterThanOrEqualTo(35);
  }
}
