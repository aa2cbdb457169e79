package insidelift.engine.audit.check;

import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.Verb;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What evidence, findings and claims make of each other: findings going nowhere, claims on air. */
public final class Dependence {

  private final Knowledge knowledge;

  public Dependence(Knowledge knowledge) {
    this.knowledge = knowledge;
  }

  private Stream<Act> acts(Verb verb) {
    return knowledge.rules().stream().flatMap(rule -> rule.acts(verb));
  }

  /** Findings that no evidence speaks for, and evidence for what is no finding. */
  public List<Remark> unreachable() {
    Set<String> found =
        acts(Verb.EVIDENCE)
            .filter(act -> act.number(1) > 0)
            .map(act -> act.word(0))
            .collect(Collectors.toSet());
    Set<String> terms = acts(Verb.TERM).map(act -> act.word(0)).collect(Collectors.toSet());
    List<Remark> remarks = new ArrayList<>();
    knowledge.words().findings().stream()
        .map(word -> word.id())
        .filter(id -> !found.contains(id) || !terms.contains(id))
        .forEach(
            id ->
                remarks.add(
                    Remark.of(
                        id,
                        Severity.ERROR,
                        found.contains(id)
                            ? "the finding \"%s\" is not in the table of findings".formatted(id)
                            : "no rule gives evidence for the finding \"%s\"".formatted(id))));
    return remarks;
  }

  /** Findings that no claim bears on, and claims on what nothing is found of. */
  public List<Remark> deadEnds() {
    Set<String> claimed = acts(Verb.CLAIM).map(act -> act.word(2)).collect(Collectors.toSet());
    Set<String> on = new HashSet<>();
    List<Remark> remarks = new ArrayList<>();
    acts(Verb.TERM)
        .forEach(
            term -> {
              on.add(term.word(1));
              if (!claimed.contains(term.word(1))) {
                remarks.add(
                    Remark.of(
                        term.word(0),
                        Severity.ERROR,
                        "no claim bears on the finding \"%s\"".formatted(term.word(0))));
              }
            });
    for (IndexedRule rule : knowledge.rules()) {
      rule.acts(Verb.CLAIM)
          .filter(claim -> !on.contains(claim.word(2)))
          .forEach(
              claim ->
                  remarks.add(
                      Remark.of(
                          rule,
                          rule.id() + " " + claim.word(2),
                          Severity.ERROR,
                          "rule \"%s\" claims something of \"%s\", which nothing is found of"
                              .formatted(rule.id(), claim.word(2)))));
    }
    return remarks;
  }
}
