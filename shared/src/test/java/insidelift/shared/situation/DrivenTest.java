package insidelift.shared.situation;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.shared.Degrees;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DrivenTest {

  private static Driven run(double camber, String... answers) {
    return new Driven(
        Optional.of(Degrees.of(camber)),
        Optional.empty(),
        Map.of("turn-in", answers[0], "last-change", answers[1]),
        false);
  }

  @Test
  void aRunLikeTheOneBeforePushesOutNoOther() {
    Driven heavy = run(0, "oversteer", "caster-more");
    Driven push = run(0.5, "understeer", "camber-more");
    Driven again = run(0.5, "understeer", "none");
    List<Driven> day = new ArrayList<>(List.of(heavy, push));
    for (int i = 0; i < 10; i++) {
      day.add(again);
    }
    assertThat(Driven.newest(day)).containsExactly(heavy, push);
  }

  @Test
  void whatIsOtherThanBeforeIsKeptAndOfThatTheNewestSix() {
    List<Driven> day = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      day.add(run(0.5 * (i % 2), "understeer", i % 3 == 0 ? "none" : "camber-more"));
    }
    assertThat(Driven.newest(day)).isEqualTo(day.subList(3, 9));
    assertThat(Driven.newest(List.of(day.get(1), day.get(1)))).hasSize(2);
    assertThat(Driven.newest(List.of())).isEmpty();
  }
}
