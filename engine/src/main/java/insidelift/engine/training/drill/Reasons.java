package insidelift.engine.training.drill;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Conclusion;
import insidelift.engine.training.card.Card.Option;
import insidelift.shared.Status;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The reasons that a trainee can choose from: one that holds, and others that did not speak. */
final class Reasons {

  /** What else can be said to be the reason, beside one that holds. */
  private static final int OTHERS = 3;

  /** The acts of rules whose notes are reasons, by what the case comes to. */
  private static final Map<Status, Set<Verb>> REASONING =
      Map.of(
          Status.FIX_FIRST, Set.of(Verb.CHECK),
          Status.CHANGE, Set.of(Verb.CLAIM, Verb.START),
          Status.HOLD, Set.of(Verb.BARRED),
          Status.NOT_ENOUGH, Set.of());

  private Reasons() {}

  static List<Option> offered(Advisor advisor, Drill drill) {
    Set<String> accepted = drill.accepted().reasons();
    if (accepted.isEmpty()) {
      return List.of();
    }
    Conclusion right = drill.right();
    Conclusion heard = Conclusion.of(advisor.decider(), drill.known());
    // A trainee who has found one fault of two is asked for the one that was found.
    boolean found = drill.sameNow(heard) && !heard.reasons().isEmpty();
    List<String> holding = List.copyOf(found ? heard.reasons() : accepted);
    List<String> others =
        new ArrayList<>(
            advisor.rules().index().rules().stream()
                .filter(rule -> reasons(rule, right.status()))
                .map(IndexedRule::note)
                .filter(note -> !right.spoke().contains(note) && !heard.spoke().contains(note))
                .filter(note -> !accepted.contains(note))
                .collect(Collectors.toCollection(TreeSet::new)));
    SplittableRandom random = new SplittableRandom(drill.hidden().source().hashCode());
    List<String> offered = new ArrayList<>();
    offered.add(holding.get(random.nextInt(holding.size())));
    while (offered.size() <= OTHERS && !others.isEmpty()) {
      String other = others.remove(random.nextInt(others.size()));
      offered.add(random.nextInt(offered.size() + 1), other);
    }
    return offered.stream()
        .map(note -> new Option(note, advisor.notes().note(note).title()))
        .toList();
  }

  private static boolean reasons(IndexedRule rule, Status status) {
    return rule.acts().stream().anyMatch(act -> REASONING.get(status).contains(act.verb()));
  }
}
