package insidelift.engine.consultation;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.geometry.kart.Corner;
import insidelift.engine.geometry.plausible.Mechanism;
import insidelift.engine.notes.NoteBook;
import insidelift.rules.RuleBase;
import insidelift.shared.index.RuleIndex.IndexedRule;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Rules that give a mechanical reason are held against the kart model, over the karts that are
 * plausible and the corners that the reason is said of.
 */
class RulesAgainstPhysicsTest {

  private final NoteBook notes = NoteBook.open();
  private final Map<String, List<IndexedRule>> byMechanism =
      RuleBase.load().index().rules().stream()
          .filter(rule -> !rule.mechanism().isEmpty())
          .collect(Collectors.groupingBy(IndexedRule::mechanism));

  @Test
  void everyMechanismThatARuleNamesIsOneTheModelKnows() {
    assertThat(byMechanism).isNotEmpty();
    assertThat(byMechanism.keySet()).allMatch(word -> Mechanism.named(word).isPresent());
  }

  @Test
  void aWiderFrontNamesTheLiftThatTheModelShows() {
    assertThat(byMechanism.get("wider-front-lift"))
        .extracting(IndexedRule::id)
        .contains("front-width-entry-a", "front-width-mid");
  }

  @Test
  void everyMechanismHoldsOnNearlyEveryKartInEveryCornerItIsSaidOf() {
    byMechanism
        .keySet()
        .forEach(
            word -> {
              Mechanism mechanism = Mechanism.named(word).orElseThrow();
              for (Corner corner : mechanism.corners()) {
                assertThat(mechanism.share(corner))
                    .as(word + " in " + corner.name())
                    .isGreaterThanOrEqualTo(Mechanism.LEAST_SHARE);
              }
            });
  }

  /** In the wet hardly any kart is in the air: the wheel goes light there, not up. */
  @Test
  void noNoteSaysThatCasterLiftsTheWheelInTheWet() {
    assertThat(notes.note("caster-wet-more").text("Why"))
        .contains("lightens")
        .doesNotContain("lifts the inside rear");
  }

  @Test
  void whateverAsksForMoreCasterForTheLiftNamesTheLift() {
    assertThat(byMechanism.get("caster-lift"))
        .extracting(IndexedRule::note)
        .contains("caster-wet-more", "caster-dusty-more", "caster-rubbered-more")
        .contains("caster-entry-push");
  }
}
