package insidelift.engine.consultation;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.geometry.Agreement;
import insidelift.engine.geometry.Mechanism;
import insidelift.engine.notes.Note;
import insidelift.engine.notes.NoteBook;
import insidelift.rules.RuleBase;
import insidelift.shared.index.RuleIndex.IndexedRule;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Rules that give a mechanical reason are held against the kart model, over the whole documented
 * range of geometries, steers and lateral accelerations.
 */
class RulesAgainstPhysicsTest {

  /** What a note says where the model bears its mechanism out only in part of the range. */
  private static final String IN_PART = "In the kart model, more caster";

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
  void noMechanismIsReversedUnlessItsNotesSayWhere() {
    byMechanism.forEach(
        (word, rules) -> {
          Agreement agreement = Mechanism.named(word).orElseThrow().overDocumentedRange();
          assertThat(agreement.agreeing())
              .as(word + " " + agreement)
              .isGreaterThan(agreement.cases() * 9 / 10);
          for (IndexedRule rule : rules) {
            Note note = notes.note(rule.note());
            if (!agreement.throughout() && note.kind().equals("claim")) {
              assertThat(note.text("Why")).as(rule.id()).contains(IN_PART);
            }
          }
        });
  }

  @Test
  void whateverAsksForMoreCasterForTheLiftNamesTheLift() {
    assertThat(byMechanism.get("caster-lift"))
        .extracting(IndexedRule::note)
        .contains("caster-wet-more", "caster-dusty-more", "caster-rubbered-more")
        .contains("caster-entry-push");
  }
}
