package insidelift.engine.consultation;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.shared.Kind;
import insidelift.shared.Lever;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.advice.Advice;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What must not change, or only one way, when something about the question changes. */
class MetamorphicTest {

  private static final Advisor ADVISOR = Advisor.load();
  private static final List<Situation> SOME = new Situations(ADVISOR.vocabulary(), 1982).some(300);

  @Test
  void theOrderOfTheAnswersChangesNothing() {
    Random random = new Random(7);
    for (Situation situation : SOME) {
      List<Map.Entry<String, String>> answers = new ArrayList<>(situation.answers().entrySet());
      Collections.shuffle(answers, random);
      Map<String, String> shuffled = new LinkedHashMap<>();
      answers.forEach(answer -> shuffled.put(answer.getKey(), answer.getValue()));
      Advice one = ADVISOR.advise(situation);
      Advice other = ADVISOR.advise(Situation.of(shuffled).with(situation.kart()));

      // What nothing explains is listed in the order in which it was told.
      assertThat(other)
          .usingRecursiveComparison()
          .ignoringCollectionOrderInFields("unexplained")
          .isEqualTo(one);
    }
  }

  @Test
  void theSameQuestionGetsTheSameAnswer() {
    for (Situation situation : SOME) {
      assertThat(ADVISOR.advise(situation)).isEqualTo(ADVISOR.advise(situation));
    }
  }

  @Test
  void anAnswerTakenBackLeavesTheAdviceAsItWas() {
    for (Situation situation : SOME) {
      for (Question question : List.of(question("exit"), question("water"))) {
        if (situation.answer(question.id()).isEmpty()) {
          Situation there = situation.with(question.id(), question.values().get(0).id());
          // Not known is what it is, whether it was said at once or after another answer.
          assertThat(ADVISOR.advise(there.with(question.id(), Vocabulary.UNKNOWN)))
              .isEqualTo(ADVISOR.advise(situation.with(question.id(), Vocabulary.UNKNOWN)));
        }
      }
    }
  }

  private static Question question(String id) {
    return ADVISOR.vocabulary().question(id).orElseThrow();
  }

  @Test
  void mirroredKartsGetTheSameAdvice() {
    for (Situation situation : SOME) {
      Advice one = ADVISOR.advise(situation);
      Advice other = ADVISOR.advise(mirrored(situation));

      assertThat(other.status()).isEqualTo(one.status());
      assertThat(other.suggestions()).isEqualTo(one.suggestions());
    }
  }

  private static Situation mirrored(Situation situation) {
    Map<String, String> answers = new LinkedHashMap<>(situation.answers());
    answers.computeIfPresent("pull", (key, value) -> mirrored(value));
    answers.computeIfPresent("corners", (key, value) -> mirrored(value));
    Kart kart = situation.kart();
    return Situation.of(answers)
        .with(
            new Kart(
                mirrored(kart.camber()),
                mirrored(kart.caster()),
                kart.absolute(),
                kart.neutral(),
                kart.eccentrics(),
                kart.geometry()));
  }

  private static Optional<Sides> mirrored(Optional<Sides> sides) {
    return sides.map(pair -> new Sides(/* left= */ pair.right(), /* right= */ pair.left()));
  }

  private static String mirrored(String side) {
    return switch (side) {
      case "left" -> "right";
      case "right" -> "left";
      case "left-only" -> "right-only";
      case "right-only" -> "left-only";
      default -> side;
    };
  }

  @Test
  void moreWaterNeverAsksForLess() {
    for (Situation situation : SOME) {
      for (Lever lever : Lever.values()) {
        double before = Double.NEGATIVE_INFINITY;
        for (String water : List.of("damp", "wet", "standing")) {
          Situation wet =
              situation
                  .with("water", water)
                  .with("tyres", Vocabulary.UNKNOWN)
                  .with("trend", Vocabulary.UNKNOWN);
          Optional<Double> target =
              ADVISOR.decide(wet).verdicts().stream()
                  .filter(v -> v.lever() == lever && v.kind() == Kind.TARGET && v.first())
                  .map(verdict -> verdict.sized().target().left().value())
                  .findFirst();
          if (target.isPresent()) {
            assertThat(target.get()).as("%s %s", situation, water).isGreaterThanOrEqualTo(before);
            before = target.get();
          }
        }
      }
    }
  }

  @Test
  void moreSupportNeverLowersAFinding() {
    for (Situation situation : SOME) {
      if (situation.answer("turn-in").isEmpty()) {
        assertThat(strength(situation.with("turn-in", "understeer"), "entry-push"))
            .isGreaterThanOrEqualTo(strength(situation, "entry-push"));
      }
      if (situation.answer("front-wear").isEmpty()) {
        assertThat(strength(situation.with("front-wear", "outer-edge"), "inner-edge"))
            .isLessThanOrEqualTo(strength(situation, "inner-edge"));
      }
    }
  }

  private static int strength(Situation situation, String finding) {
    return ADVISOR.decide(situation).reasoned().found().stream()
        .filter(found -> found.finding().equals(finding))
        .mapToInt(found -> found.weight())
        .sum();
  }
}
