package insidelift.engine.consultation;

import insidelift.engine.sizing.Sizer;
import insidelift.rules.Ledger;
import insidelift.shared.Answer;
import insidelift.shared.CheckKind;
import insidelift.shared.Contribution;
import insidelift.shared.Contribution.Evidence;
import insidelift.shared.Contribution.FirstCheck;
import insidelift.shared.Lever;
import insidelift.shared.Status;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Decides what to do now from the rule table, for comparing thousands of situations: which rules
 * speak is read off the table, what becomes of it is left to the same weigher, wishes and arbiter
 * as always. A test holds it against the rule engine. Not for several threads.
 */
final class TableDecision {

  private final RuleStates states;
  private final Grid grid;
  private final TrackRecord record;
  private final int[] byName;
  private final List<List<Contribution>> entries = new ArrayList<>();

  TableDecision(RuleStates states, Grid grid, TrackRecord record) {
    this.states = states;
    this.grid = grid;
    this.record = record;
    RuleTable table = states.table();
    for (RuleTable.Line line : table.lines()) {
      entries.add(Ledger.of(line.rule(), restingOn(table, line)));
    }
    this.byName =
        IntStream.range(0, entries.size())
            .boxed()
            .sorted(Comparator.comparing(line -> table.lines().get(line).rule().id()))
            .mapToInt(Integer::intValue)
            .toArray();
  }

  /** Evidence rests on one answer, whichever it is. */
  private static List<Object> restingOn(RuleTable table, RuleTable.Line line) {
    return line.evidence().isEmpty()
        ? List.of()
        : List.of(new Answer(table.observation(line), "", false));
  }

  /** What one situation, a box of single states, comes to. */
  Decided decide(int[] point) {
    states.look(point);
    List<Contribution> ledger = new ArrayList<>();
    for (int line : byName) {
      if (states.state(line) == RuleStates.YES) {
        ledger.addAll(entries.get(line));
      }
    }
    Map<String, List<Evidence>> evidence = Weigher.counted(ledger);
    Status blocked = blocked(ledger, point);
    if (blocked != null) {
      return new Decided(blocked, ledger, evidence, List.of(), Set.of());
    }
    Sizer sizer = states.sizer();
    List<Wish> wishes = Wishes.of(ledger, Weigher.findings(evidence), sizer);
    Arbiter arbiter = new Arbiter(ledger, wishes, sizer, record);
    List<Verdict> verdicts = arbiter.verdicts();
    Set<Lever> first = arbiter.first(verdicts);
    Status status = first.isEmpty() ? Status.HOLD : Status.CHANGE;
    return new Decided(status, ledger, evidence, verdicts, first);
  }

  private Status blocked(List<Contribution> ledger, int[] point) {
    for (Contribution entry : ledger) {
      if (entry instanceof FirstCheck check && check.kind() != CheckKind.LOOK) {
        return Status.FIX_FIRST;
      }
    }
    for (int q = 0; q < point.length; q++) {
      if (point[q] != Grid.ABSENT && Advisor.enough(grid.question(q))) {
        return null;
      }
    }
    return Status.NOT_ENOUGH;
  }
}
