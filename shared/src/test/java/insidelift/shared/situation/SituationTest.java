package insidelift.shared.situation;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SituationTest {

  private static final Vocabulary VOCABULARY = Vocabulary.load();
  private static final Question POWER = VOCABULARY.question("power").orElseThrow();

  @Test
  void anAnswerReplacesTheOneBefore() {
    Situation damp = Situation.UNKNOWN.with("water", "wet").with("water", "damp");
    assertThat(damp.answers()).containsExactly(Map.entry("water", "damp"));
  }

  @Test
  void anAnswerTakenBackSaysNothingButIsNotAskedForAgain() {
    Situation back = Situation.UNKNOWN.with("water", "wet").with("water", Vocabulary.UNKNOWN);

    assertThat(back.facts(VOCABULARY)).isEmpty();
    assertThat(back.declined()).containsExactly("water");
    assertThat(back.with("water", "dry").declined()).isEmpty();
  }

  @Test
  void aNumberIsKeptBesideItsWord() {
    Situation situation = Situation.UNKNOWN.with(POWER, 12.9);
    assertThat(situation.answer("power")).contains("low");
    assertThat(situation.numbers()).containsExactly(Map.entry("power", 12.9));
  }

  @Test
  void aWordAfterANumberForgetsTheNumber() {
    assertThat(Situation.UNKNOWN.with(POWER, 12.9).with("power", "high").numbers()).isEmpty();
  }

  @Test
  void aSituationDoesNotChangeWithTheMapItWasMadeFrom() {
    Map<String, String> answers = new LinkedHashMap<>(Map.of("water", "wet"));
    Situation situation = Situation.of(answers);
    answers.put("exit", "good");
    assertThat(situation.answers()).containsOnlyKeys("water");
  }

  @Test
  void anotherSituationOnTopAnswersFirstAndLeavesTheKart() {
    Situation before =
        new Situation(
            Map.of("water", "dry", "rubber", "dusty", "time-left", "short"),
            Map.of("time-left", 12.0),
            Kart.UNKNOWN.with(Sides.both(insidelift.shared.Degrees.of(1)), null),
            java.util.Set.of("power"));
    Situation more =
        new Situation(
            Map.of("water", "wet", "power", "low"),
            Map.of(),
            Kart.UNKNOWN,
            java.util.Set.of("time-left"));
    assertThat(before.over(more))
        .isEqualTo(
            new Situation(
                Map.of("water", "wet", "rubber", "dusty", "power", "low"),
                Map.of(),
                before.kart(),
                java.util.Set.of("time-left")));
    assertThat(before.over(Situation.UNKNOWN)).isEqualTo(before);
  }
}
