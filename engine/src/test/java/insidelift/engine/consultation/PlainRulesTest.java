package insidelift.engine.consultation;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Decided;
import insidelift.rules.RuleBase;
import insidelift.rules.fact.Part;
import insidelift.rules.fact.Spoken;
import insidelift.shared.index.RuleIndex;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Rules matched straight off the index against the same rules compiled: what holds for altered
 * copies of the index, and for a shop's own rules, stands on this.
 */
class PlainRulesTest {

  private static final Advisor COMPILED = Advisor.load();
  private static final Advisor PLAIN =
      new Advisor(
          COMPILED.vocabulary(), RuleBase.plain(COMPILED.rules().index()), COMPILED.notes());

  private static List<Situation> situations() {
    List<Situation> all = new ArrayList<>();
    Stream.of(CaseFiles.WHOLE, CaseFiles.FAMILIES)
        .flatMap(folder -> CaseFiles.read(folder).stream())
        .forEach(entry -> all.add(entry.situation()));
    all.addAll(new Situations(COMPILED.vocabulary(), 1950).some(500));
    return all;
  }

  @Test
  void whatIsSaidFoundSummedAndDecidedIsTheSameInEverySituation() {
    for (Situation situation : situations()) {
      Decided compiled = COMPILED.decide(situation);
      Decided plain = PLAIN.decide(situation);

      // A caution that goes with every move speaks once for each lever that is moved.
      assertThat(plain.reasoned().all(Spoken.class).collect(Collectors.toSet()))
          .as("%s", situation)
          .isEqualTo(compiled.reasoned().all(Spoken.class).collect(Collectors.toSet()));
      assertThat(plain.reasoned().found()).isEqualTo(compiled.reasoned().found());
      assertThat(plain.reasoned().all(Part.class).toList())
          .containsExactlyInAnyOrderElementsOf(compiled.reasoned().all(Part.class).toList());
      assertThat(plain.reasoned().sums()).isEqualTo(compiled.reasoned().sums());
      assertThat(plain.reasoned().choice()).isEqualTo(compiled.reasoned().choice());
      assertThat(plain.reasoned().now()).isEqualTo(compiled.reasoned().now());
      assertThat(plain.verdicts()).isEqualTo(compiled.verdicts());
      assertThat(plain.status()).isEqualTo(compiled.status());
    }
  }

  @Test
  void aRuleTakenOutIsMissed() {
    List<IndexedRule> rules =
        COMPILED.rules().index().rules().stream()
            .filter(rule -> !rule.id().equals("check-play"))
            .toList();
    Advisor without =
        new Advisor(
            COMPILED.vocabulary(), RuleBase.plain(new RuleIndex(1, rules)), COMPILED.notes());
    Situation loose = Situation.UNKNOWN.with("play", "some");

    assertThat(COMPILED.decide(loose).status().id()).isEqualTo("fix-first");
    assertThat(without.decide(loose).status().id()).isEqualTo("hold");
  }
}
