package insidelift.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import insidelift.rules.fact.Evidence;
import insidelift.rules.fact.Spoken;
import insidelift.shared.Vocabulary;
import insidelift.shared.index.Premise;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.Verb;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every plain rule and every line of a table by itself: it speaks when its premises hold, and not
 * when one just fails.
 */
class EachRuleAloneTest {

  private static final RuleBase RULES = RuleBase.load();
  private static final RuleBase PLAIN = RULES.plain();
  private static final Vocabulary WORDS = Vocabulary.load();
  private static final Facts FACTS = new Facts(WORDS);

  private static List<IndexedRule> plain() {
    return RULES.index().rules().stream().filter(IndexedRule::plain).toList();
  }

  private static List<Spoken> by(RuleBase rules, IndexedRule rule, List<Object> facts) {
    return rules
        .reason(facts)
        .all(Spoken.class)
        .filter(said -> said.by().rule().equals(rule.id()))
        .toList();
  }

  private static void speaks(RuleBase rules, IndexedRule rule, List<Object> facts) {
    assertThat(by(rules, rule, facts))
        .as("%s on %s", rule.id(), facts)
        .containsExactlyInAnyOrderElementsOf(
            rule.acts().stream().map(act -> Spoken.of(rule, act)).toList());
  }

  @TestFactory
  Stream<DynamicTest> everyRuleSpeaksOnItsPremisesAndOnNothingLess() {
    return plain().stream()
        .map(
            rule ->
                dynamicTest(
                    rule.id(),
                    () -> {
                      List<Object> facts = FACTS.satisfying(rule);
                      speaks(RULES, rule, facts);
                      speaks(PLAIN, rule, facts);
                      for (Premise premise : rule.premises()) {
                        Set<List<Object>> misses = FACTS.nearMisses(premise, facts);
                        assertThat(misses).isNotEmpty();
                        misses.forEach(
                            miss ->
                                assertThat(by(RULES, rule, miss))
                                    .as("%s missing %s on %s", rule.id(), premise, miss)
                                    .isEmpty());
                      }
                    }));
  }

  @Test
  void everyRuleHasANearMissOfEachOfItsPremises() {
    long premises = plain().stream().mapToLong(rule -> rule.premises().size()).sum();
    long misses =
        plain().stream()
            .flatMap(
                rule ->
                    rule.premises().stream()
                        .flatMap(
                            premise -> FACTS.nearMisses(premise, FACTS.satisfying(rule)).stream()))
            .count();

    assertThat(misses).isGreaterThan(2 * premises);
  }

  @Test
  void everyWeightIsOneOfAFew() {
    assertThat(
            plain().stream()
                .flatMap(rule -> rule.acts(Verb.EVIDENCE))
                .map(act -> Math.abs(act.number(1)))
                .collect(Collectors.toSet()))
        .containsExactlyInAnyOrder(5, 8, 12, 16, 20, 40);
  }

  @Test
  void whatRestsOnOneObservationCountsOnce() {
    Spoken.By by = new Spoken.By("rule", "note");
    assertThat(
            Evidence.sum(
                List.of(
                    new Evidence(by, "push", 20, "turn-in"),
                    new Evidence(by, "push", 8, "turn-in"),
                    new Evidence(by, "push", -12, "exit"))))
        .isEqualTo(8);
  }

  @Test
  void theOrderInWhichAnswersAreTakenChangesNothing() {
    Random random = new Random(20261125);
    List<Object> answers =
        WORDS.questions().stream()
            .filter(question -> !question.safety())
            .map(
                question ->
                    (Object)
                        WORDS.answer(
                            question.id(),
                            question.values().get(random.nextInt(question.values().size())).id()))
            .toList();
    Set<Object> first = new HashSet<>(RULES.reason(answers).facts());

    for (int i = 0; i < 50; i++) {
      List<Object> shuffled = new ArrayList<>(answers);
      Collections.shuffle(shuffled, random);
      assertThat(new HashSet<>(RULES.reason(shuffled).facts())).isEqualTo(first);
    }
  }
}
