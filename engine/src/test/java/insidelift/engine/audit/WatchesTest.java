package insidelift.engine.audit;

import static insidelift.engine.audit.Mistaken.ADVISOR;
import static insidelift.engine.audit.Mistaken.SOUND;
import static insidelift.engine.audit.Mistaken.act;
import static insidelift.engine.audit.Mistaken.answer;
import static insidelift.engine.audit.Mistaken.decided;
import static insidelift.engine.audit.Mistaken.finding;
import static insidelift.engine.audit.Mistaken.found;
import static insidelift.engine.audit.Mistaken.knowledge;
import static insidelift.engine.audit.Mistaken.rule;
import static insidelift.engine.audit.Mistaken.situation;
import static insidelift.engine.audit.Mistaken.without;
import static org.assertj.core.api.Assertions.assertThat;

import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.situation.Situation;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is looked at in every situation sees a mistake made on purpose, and none without it. */
class WatchesTest {

  @Test
  void opposedCorrectionsWithoutADeciderAreShownByTheirAnswers() {
    Situation both = situation("water", "dry", "mid-corner", "oversteer", "exit", "understeer");
    Knowledge undecided = without("by-phase.mid-loose");
    Voices voices = new Voices(undecided);
    voices.see(both, decided(undecided, both));
    found(
        voices.opposed(),
        "camber-front-weak camber-rear-loose",
        "\"camber-front-weak\" and \"camber-rear-loose\" ask camber both ways and no rule decides");
    assertThat(voices.opposed().get(0).witness()).containsEntry("exit", "understeer");
    Voices sound = new Voices(SOUND);
    sound.see(both, decided(SOUND, both));
    assertThat(sound.opposed()).isEmpty();
  }

  @Test
  void aRuleThatNeverSpeaksIsNamed() {
    Voices voices = new Voices(SOUND);
    Situation loose = situation("play", "some");
    voices.see(loose, decided(SOUND, loose));
    assertThat(voices.silent()).extracting(Remark::id).contains("check-loose");
    assertThat(voices.silent()).extracting(Remark::id).doesNotContain("check-play");
  }

  @Test
  void aSilenceWithoutAReasonIsAGap() {
    Knowledge mute = without("nothing-asks.caster");
    Situation some = situation("water", "dry", "turn-in", "good");
    Voices voices = new Voices(mute);
    voices.see(some, decided(mute, some));
    found(
        voices.gaps(),
        "no lever moves, and nothing says why",
        "no lever moves, and nothing says why");
    Voices sound = new Voices(SOUND);
    sound.see(some, decided(SOUND, some));
    assertThat(sound.gaps()).isEmpty();
  }

  @Test
  void everyInvariantThatRulesCanBreakIsSeenBroken() {
    broken(without("check-play"), situation("play", "some"), "a fault moves no lever");
    broken(
        without("caster-heavy-limit"),
        situation("steering-weight", "heavy", "water", "wet"),
        "too heavy a steering gets no more caster");
    broken(
        knowledge(
            SOUND.rules().stream()
                .filter(rule -> rule.acts().stream().noneMatch(a -> a.verb().equals("caution")))
                .toList()),
        situation("water", "wet"),
        "a move has reasons, cautions and a job");
    IndexedRule meddling =
        rule(
            "meddling",
            "camber-rear-loose",
            "advise",
            List.of(finding("even-contact", 5)),
            act("correction", "camber", "less", "even-contact"));
    broken(
        knowledge(
            Stream.concat(without("camber-even").rules().stream(), Stream.of(meddling)).toList()),
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
        rule(
            "left-only",
            "check-play",
            "MAIN",
            List.of(answer("pull", "left")),
            act("check", "fault"));
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
            "advise",
            List.of(answer("water", "standing")),
            act("target", "camber", "damp"));
    compared(
        knowledge(
            Stream.concat(
                    without("camber-wet-positive.standing").rules().stream(), Stream.of(backward))
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
    Agreement agreement = new Agreement(ADVISOR, 1);
    agreement.see(loose, decided(SOUND, loose));
    assertThat(agreement.remarks()).isEmpty();
    agreement.see(loose, decided(without("check-play"), loose));
    found(agreement.remarks(), "index", "the compiled rules say other than their index");
  }
}
