package insidelift.engine.audit.check;

import static insidelift.engine.audit.check.Mistaken.ADVISOR;
import static insidelift.engine.audit.check.Mistaken.SOUND;
import static insidelift.engine.audit.check.Mistaken.act;
import static insidelift.engine.audit.check.Mistaken.answer;
import static insidelift.engine.audit.check.Mistaken.decided;
import static insidelift.engine.audit.check.Mistaken.found;
import static insidelift.engine.audit.check.Mistaken.knowledge;
import static insidelift.engine.audit.check.Mistaken.rule;
import static insidelift.engine.audit.check.Mistaken.situation;
import static insidelift.engine.audit.check.Mistaken.with;
import static insidelift.engine.audit.check.Mistaken.without;
import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.consultation.decision.Decided;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.Verb;
import insidelift.shared.situation.Situation;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is looked at in every situation sees a mistake made on purpose, and none without it. */
class WatchesTest {

  @Test
  void aRuleThatNeverSpeaksIsNamed() {
    RuleActivity voices = new RuleActivity(SOUND);
    Situation loose = situation("play", "some");
    voices.see(loose, decided(SOUND, loose));
    assertThat(voices.silent()).extracting(Remark::id).contains("check-loose");
    assertThat(voices.silent()).extracting(Remark::id).doesNotContain("check-play");
  }

  @Test
  void aSilenceWithoutAReasonIsAGap() {
    Situation some = situation("water", "dry", "turn-in", "good");
    Decided held = decided(SOUND, some);
    RuleActivity mute = new RuleActivity(SOUND);
    mute.see(some, new Decided(some, held.status(), held.reasoned(), List.of()));
    found(
        mute.gaps(),
        "no lever moves, and nothing says why",
        "no lever moves, and nothing says why");
    RuleActivity sound = new RuleActivity(SOUND);
    sound.see(some, held);
    assertThat(sound.gaps()).isEmpty();
  }

  @Test
  void everyInvariantThatRulesCanBreakIsSeenBroken() {
    broken(without("check-play"), situation("play", "some"), "a fault moves no lever");
    broken(
        without("limit.heavy"),
        situation("steering-weight", "heavy", "water", "wet"),
        "too heavy a steering gets no more caster");
    broken(
        knowledge(
            SOUND.rules().stream()
                .filter(rule -> rule.acts(Verb.CARE).findAny().isEmpty())
                .toList()),
        situation("water", "wet"),
        "a move has reasons, cautions and a job");
    IndexedRule meddling =
        rule(
            "meddling",
            "camber-rear-loose",
            List.of(answer("front-wear", "even")),
            act(Verb.EVIDENCE, "mid-slide", "40", "front-wear"));
    broken(
        with(meddling),
        situation("turn-in", "good", "mid-corner", "good", "exit", "good", "front-wear", "even"),
        "where all is good nothing is corrected");
  }

  private static void broken(Knowledge knowledge, Situation situation, String invariant) {
    Invariants invariants = new Invariants(knowledge.words());
    assertThat(invariants.names()).contains(invariant);
    invariants.see(situation, decided(knowledge, situation));
    found(invariants.remarks(), invariant, "it does not hold that " + invariant);
    Invariants sound = new Invariants(SOUND.words());
    sound.see(situation, decided(SOUND, situation));
    assertThat(sound.remarks()).isEmpty();
  }

  @Test
  void aComparisonThatRulesBreakIsSeenBroken() {
    IndexedRule leftOnly =
        rule("left-only", "check-play", List.of(answer("pull", "left")), act(Verb.CHECK, "fault"));
    Knowledge lopsided =
        knowledge(
            Stream.concat(without("caster-unequal").rules().stream(), Stream.of(leftOnly))
                .toList());
    compared(
        lopsided,
        situation("pull", "left", "water", "wet"),
        "a mirrored kart gets the same advice");
    IndexedRule backward =
        rule(
            "backward",
            "camber-wet-positive",
            List.of(),
            act(Verb.START, "standing", "camber", "50"));
    compared(
        knowledge(
            Stream.concat(without("start-camber-standing").rules().stream(), Stream.of(backward))
                .toList()),
        situation("water", "wet"),
        "more water never asks for less");
  }

  private static void compared(Knowledge knowledge, Situation situation, String comparison) {
    Comparisons comparisons = new Comparisons(knowledge.advisor(), 1);
    comparisons.see(situation, decided(knowledge, situation));
    found(comparisons.remarks(), comparison, "it does not hold that " + comparison);
    Comparisons sound = new Comparisons(ADVISOR, 1);
    sound.see(situation, decided(SOUND, situation));
    assertThat(sound.remarks()).isEmpty();
    assertThat(sound.compared()).isEqualTo(1);
  }

  @Test
  void anIndexThatSaysOtherThanTheRulesIsSeen() {
    Situation loose = situation("play", "some");
    CompiledAgreement agreement = new CompiledAgreement(ADVISOR, 1);
    agreement.see(loose, decided(SOUND, loose));
    assertThat(agreement.remarks()).isEmpty();
    agreement.see(loose, decided(without("check-play"), loose));
    found(agreement.remarks(), "index", "the compiled rules say other than their index");
  }
}
