package insidelift.engine.consultation;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.rules.RuleBase;
import insidelift.shared.index.RuleIndex;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.List;
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
  void theLedgerAndTheDecisionAreTheSameInEverySituation() {
    for (Situation situation : situations()) {
      Decided compiled = COMPILED.decide(situation);
      Decided plain = PLAIN.decide(situation);

      assertThat(plain.ledger())
          .as("%s", situation)
          .containsExactlyInAnyOrderElementsOf(compiled.ledger());
      assertThat(plain.status()).isEqualTo(compiled.status());
      assertThat(plain.verdicts())
          .usingRecursiveComparison()
          .ignoringCollectionOrder()
          .isEqualTo(compiled.verdicts());
      assertThat(plain.first()).isEqualTo(compiled.first());
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
