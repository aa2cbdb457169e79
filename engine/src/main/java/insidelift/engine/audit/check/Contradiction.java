package insidelift.engine.audit.check;

import insidelift.rules.fact.Claim;
import insidelift.rules.fact.Spoken;
import insidelift.shared.index.Premise;
import insidelift.shared.index.Premise.Told;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.Verb;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Claims that say the contrary of each other in the same situation though neither is a camp of a
 * dispute: where the trade does not agree, the table has to say so.
 */
public final class Contradiction {

  /** A claim, and the rule that makes it. */
  private record Made(IndexedRule rule, Claim claim) {}

  private final List<Made> made;

  public Contradiction(Knowledge knowledge) {
    this.made =
        knowledge.rules().stream()
            .flatMap(
                rule ->
                    rule.acts(Verb.CLAIM).map(act -> new Made(rule, (Claim) Spoken.of(rule, act))))
            .filter(one -> !one.claim().disputed())
            .toList();
  }

  public List<Remark> opposed() {
    List<Remark> remarks = new ArrayList<>();
    for (int i = 0; i < made.size(); i++) {
      for (Made other : made.subList(i + 1, made.size())) {
        Made one = made.get(i);
        if (contrary(one.claim(), other.claim()) && together(one.rule(), other.rule())) {
          remarks.add(
              Remark.of(
                      other.rule(),
                      one.rule().id() + " " + other.rule().id(),
                      Severity.ERROR,
                      "\"%s\" and \"%s\" say the contrary of %s, and neither is a camp of a dispute"
                          .formatted(one.rule().id(), other.rule().id(), one.claim().lever()))
                  .shownBy(answers(one.rule(), other.rule())));
        }
      }
    }
    return remarks;
  }

  private static boolean contrary(Claim one, Claim other) {
    return one.lever().equals(other.lever())
        && one.on().equals(other.on())
        && Stream.of("more", "less")
            .anyMatch(way -> Integer.signum(one.says(way)) * Integer.signum(other.says(way)) < 0);
  }

  /** Whether two rules can speak in one situation, as far as single premises tell. */
  private static boolean together(IndexedRule one, IndexedRule other) {
    return Knowledge.told(one)
        .noneMatch(told -> Knowledge.told(other).anyMatch(second -> apart(told, second)));
  }

  private static boolean apart(Told one, Told other) {
    if (one.absent() != other.absent()) {
      Told absent = one.absent() ? one : other;
      Told needed = one.absent() ? other : one;
      return RepeatedRules.implies(needed, new Told(absent.questions(), absent.values(), false));
    }
    return !one.absent()
        && one.questions().size() == 1
        && one.questions().equals(other.questions())
        && !one.values().isEmpty()
        && !other.values().isEmpty()
        && Collections.disjoint(one.values(), other.values());
  }

  private static Map<String, String> answers(IndexedRule one, IndexedRule other) {
    Map<String, String> answers = new LinkedHashMap<>();
    for (IndexedRule rule : List.of(one, other)) {
      for (Premise premise : rule.premises()) {
        if (premise instanceof Told told && !told.absent() && !told.values().isEmpty()) {
          answers.put(told.questions().get(0), told.values().get(0));
        }
      }
    }
    return answers;
  }
}
