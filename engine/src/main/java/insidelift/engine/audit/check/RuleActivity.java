package insidelift.engine.audit.check;

import insidelift.engine.consultation.decision.Decided;
import insidelift.rules.fact.Spoken;
import insidelift.rules.fact.Spoken.Check;
import insidelift.shared.Lever;
import insidelift.shared.Status;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Who spoke in the situations visited: against whom, and where nobody had anything to say. */
public final class RuleActivity implements SituationVisitor {

  private final Map<String, IndexedRule> rules = new LinkedHashMap<>();
  private final Set<String> spoke = new HashSet<>();
  private final Map<String, Remark> gaps = new LinkedHashMap<>();

  public RuleActivity(Knowledge knowledge) {
    knowledge.rules().forEach(rule -> rules.put(rule.id(), rule));
  }

  @Override
  public void see(Situation situation, Decided decided) {
    decided.reasoned().all(Spoken.class).forEach(said -> spoke.add(said.by().rule()));
    spoke.add(decided.reasoned().choice().by().rule());
    gap(situation, decided);
  }

  /** Situations with neither advice nor a reason for none. */
  public List<Remark> gaps() {
    return new ArrayList<>(gaps.values());
  }

  /** Rules that have spoken nowhere. */
  public List<IndexedRule> unheard() {
    return rules.values().stream()
        .filter(rule -> rule.plain() && !spoke.contains(rule.id()))
        .toList();
  }

  /** What there is to say of them. */
  public List<Remark> silent() {
    return unheard().stream()
        .map(
            rule ->
                Remark.of(
                    rule,
                    rule.id(),
                    Severity.ERROR,
                    "rule \"%s\" spoke in no situation visited".formatted(rule.id())))
        .toList();
  }

  private void gap(Situation situation, Decided decided) {
    String gap = null;
    if (decided.status() == Status.FIX_FIRST
        && decided.reasoned().all(Check.class).findAny().isEmpty()) {
      gap = "something is to be fixed first, and nothing says what";
    } else if (decided.status() == Status.CHANGE && decided.now().isEmpty()) {
      gap = "there is a change, and nothing is to be done first";
    } else if (decided.status() == Status.HOLD && !explained(decided)) {
      gap = "no lever moves, and nothing says why";
    }
    if (gap != null) {
      gaps.putIfAbsent(gap, Remark.of(gap, Severity.ERROR, gap).shownBy(situation.answers()));
    }
  }

  private static boolean explained(Decided decided) {
    return decided.verdicts().size() == Lever.values().length
        && decided.verdicts().stream().allMatch(verdict -> verdict.heldBy().isPresent());
  }
}
