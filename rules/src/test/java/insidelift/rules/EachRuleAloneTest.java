package insidelift.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import insidelift.rules.Reasoning.Stage;
import insidelift.shared.Answer;
import insidelift.shared.Barred;
import insidelift.shared.Contribution;
import insidelift.shared.Contribution.Evidence;
import insidelift.shared.Finding;
import insidelift.shared.Move;
import insidelift.shared.Proposal;
import insidelift.shared.Vocabulary;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.RuleIndex.Premise;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every compiled rule by itself: it speaks when its premises hold, and not when one just fails. */
class EachRuleAloneTest {

  private static final RuleBase RULES = RuleBase.load();
  private static final Facts FACTS = new Facts(Vocabulary.load());

  private static List<Contribution> ledger(List<Object> facts) {
    try (Reasoning reasoning = RULES.reason()) {
      reasoning.run(Stage.OBSERVE, of(Answer.class, facts));
      List<Object> seen = new ArrayList<>(of(Finding.class, facts));
      seen.addAll(of(Barred.class, facts));
      reasoning.run(Stage.ADVISE, seen);
      reasoning.run(Stage.DECIDE, of(Proposal.class, facts));
      reasoning.run(Stage.CARE, of(Move.class, facts));
      return reasoning.contributions();
    }
  }

  private static List<?> of(Class<?> type, List<Object> facts) {
    return facts.stream().filter(type::isInstance).toList();
  }

  private static List<Contribution> by(IndexedRule rule, List<Object> facts) {
    return ledger(facts).stream().filter(entry -> entry.by().rule().equals(rule.id())).toList();
  }

  /** The call of the ledger that a contribution came from. */
  private static Act act(Contribution entry) {
    if (entry instanceof Contribution.FirstCheck check) {
      return act("check", check.kind().id());
    } else if (entry instanceof Contribution.Unseen unseen) {
      return act("unseen", unseen.question());
    } else if (entry instanceof Evidence evidence) {
      return act("evidence", evidence.finding(), "" + evidence.weight());
    } else if (entry instanceof Contribution.Target target) {
      return act("target", target.lever().id(), target.column().id());
    } else if (entry instanceof Contribution.Correction move) {
      return act("correction", move.lever().id(), move.direction().id(), move.finding());
    } else if (entry instanceof Contribution.History move) {
      String verb = move.undo() ? "undo" : "carryOn";
      return act(verb, move.lever().id(), move.direction().id());
    } else if (entry instanceof Contribution.Limit limit) {
      return act("bar", limit.lever().id(), limit.direction().id(), limit.scope().id());
    } else if (entry instanceof Contribution.Fewer fewer) {
      return act("fewer", fewer.lever().id());
    } else if (entry instanceof Contribution.Cap cap) {
      return act("cap", cap.lever().id(), cap.direction().id(), cap.mark().id());
    } else if (entry instanceof Contribution.Doubles doubles) {
      return new Act("doubles", doubles.claims());
    } else if (entry instanceof Contribution.Hold hold) {
      return act("hold", hold.lever().id());
    } else if (entry instanceof Contribution.Rest rest) {
      return act("rests", rest.lever().id());
    } else if (entry instanceof Contribution.SetAside aside) {
      return new Act("setsAside", aside.claims());
    } else if (entry instanceof Contribution.Lead lead) {
      return act("leads", lead.lever().id(), lead.rank().id());
    } else if (entry instanceof Contribution.Alternative other) {
      return act("alternative", other.lever());
    } else if (entry instanceof Contribution.Decision) {
      return act("decides");
    } else if (entry instanceof Contribution.Care care) {
      String lever = care.lever() == null ? "both" : care.lever().id();
      return act("caution", lever, "" + care.place());
    }
    return act("job", "" + ((Contribution.Job) entry).place());
  }

  private static Act act(String verb, String... words) {
    return new Act(verb, List.of(words));
  }

  private static void speaks(IndexedRule rule, List<Object> facts) {
    List<Contribution> said = by(rule, facts);
    assertThat(said.stream().map(EachRuleAloneTest::act).toList())
        .as("%s on %s", rule.id(), facts)
        .containsExactlyElementsOf(rule.acts());
    assertThat(said).allSatisfy(entry -> assertThat(entry.by().note()).isEqualTo(rule.note()));
    assertThat(said).allSatisfy(entry -> assertThat(facts).containsAll(entry.by().premises()));
  }

  private static void keepsSilent(IndexedRule rule, Premise missed, List<Object> facts) {
    assertThat(by(rule, facts)).as("%s missing %s on %s", rule.id(), missed, facts).isEmpty();
  }

  @TestFactory
  Stream<DynamicTest> everyRuleSpeaksOnItsPremisesAndOnNothingLess() {
    return RULES.index().rules().stream()
        .map(
            rule ->
                dynamicTest(
                    rule.id(),
                    () -> {
                      List<Object> facts = FACTS.satisfying(rule);
                      speaks(rule, facts);
                      for (Premise premise : rule.premises()) {
                        Set<List<Object>> misses = FACTS.nearMisses(premise, facts);
                        assertThat(misses).isNotEmpty();
                        misses.forEach(miss -> keepsSilent(rule, premise, miss));
                      }
                    }));
  }

  @Test
  void everyRuleHasANearMissOfEachOfItsPremises() {
    long premises = RULES.index().rules().stream().mapToLong(r -> r.premises().size()).sum();
    long misses =
        RULES.index().rules().stream()
            .flatMap(
                rule ->
                    rule.premises().stream()
                        .flatMap(
                            premise -> FACTS.nearMisses(premise, FACTS.satisfying(rule)).stream()))
            .count();

    assertThat(misses).isGreaterThan(2 * premises);
  }

  @Test
  void evidenceRestsOnTheLastAnswerOfItsRule() {
    List<Object> facts =
        List.of(
            FACTS.vocabulary().answer("rubber", "dusty"),
            FACTS.vocabulary().answer("turn-in", "understeer"));

    assertThat(ledger(facts))
        .filteredOn(entry -> entry.by().rule().equals("dusty-push.turn-in"))
        .singleElement()
        .extracting(entry -> ((Evidence) entry).observation())
        .isEqualTo("turn-in");
  }

  @Test
  void everyWeightIsSlightClearOrStrong() {
    assertThat(
            RULES.index().rules().stream()
                .flatMap(rule -> rule.acts().stream())
                .filter(act -> act.verb().equals("evidence"))
                .map(act -> Math.abs(Integer.parseInt(act.words().get(1))))
                .distinct()
                .toList())
        .containsExactlyInAnyOrder(2, 5, 10);
  }

  @Test
  void theOrderInWhichAnswersAreTakenChangesNothing() {
    Random random = new Random(20261125);
    List<Object> answers =
        FACTS.vocabulary().questions().stream()
            .filter(question -> !question.safety())
            .map(
                question ->
                    (Object)
                        FACTS
                            .vocabulary()
                            .answer(
                                question.id(),
                                question
                                    .values()
                                    .get(random.nextInt(question.values().size()))
                                    .id()))
            .toList();
    Set<Contribution> first = new HashSet<>(ledger(answers));

    for (int i = 0; i < 50; i++) {
      List<Object> shuffled = new ArrayList<>(answers);
      Collections.shuffle(shuffled, random);
      assertThat(new HashSet<>(ledger(shuffled))).isEqualTo(first);
    }
  }
}
