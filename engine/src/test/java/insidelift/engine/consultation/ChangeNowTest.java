package insidelift.engine.consultation;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.advice.ChangeNow;
import insidelift.engine.geometry.effect.ChangeEffect;
import insidelift.shared.situation.Situation;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ChangeNowTest {

  private static final Advisor ADVISOR = Advisor.load();

  private static Optional<ChangeEffect> now(Map<String, String> answers) {
    Situation situation = Situation.of(answers);
    return ChangeNow.of(situation, ADVISOR.advise(situation));
  }

  @Test
  void two_targets_are_one_change() {
    ChangeEffect effect = now(Map.of("water", "wet")).orElseThrow();
    assertThat(effect.camberDeg()).isPositive();
    assertThat(effect.casterDeg()).isPositive();
  }

  @Test
  void less_is_negative_and_a_lever_that_waits_does_not_count() {
    ChangeEffect effect =
        now(Map.of("front-temps", "outer-hot", "mid-corner", "understeer")).orElseThrow();
    assertThat(effect.camberDeg()).isNegative();
    assertThat(effect.casterDeg()).isZero();
  }

  @Test
  void a_fault_changes_nothing() {
    assertThat(now(Map.of("play", "some", "water", "wet"))).isEmpty();
  }
}
