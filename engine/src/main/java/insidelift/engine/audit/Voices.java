package insidelift.engine.audit;

import insidelift.engine.consultation.Decided;
import insidelift.shared.Contribution;
import insidelift.shared.Contribution.Correction;
import insidelift.shared.Contribution.FirstCheck;
import insidelift.shared.Contribution.History;
import insidelift.shared.Contribution.Limit;
import insidelift.shared.Contribution.SetAside;
import insidelift.shared.Direction;
import insidelift.shared.Kind;
import insidelift.shared.Lever;
import insidelift.shared.Status;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Who spoke in the situations visited: against whom, and where nobody had anything to say. */
final class Voices implements Watch {

  /** A correction that stands, whichever rule asked. */
  private record Wanted(String claim, Lever lever, Direction direction, IndexedRule rule) {}

  private final Map<String, IndexedRule> rules = new LinkedHashMap<>();
  private final Set<String> spoke = new HashSet<>();
  private final Map<String, Remark> opposed = new LinkedHashMap<>();
  private final Map<String, Remark> gaps = new LinkedHashMap<>();

  Voices(Knowledge knowledge) {
    knowledge.rules().forEach(rule -> rules.put(rule.id(), rule));
  }

  @Override
  public void see(Situation situation, Decided decided) {
    decided.ledger().forEach(entry -> spoke.add(entry.by().rule()));
    if (decided.status() == Status.CHANGE || decided.status() == Status.HOLD) {
      opposed(situation, decided);
    }
    gap(situation, decided);
  }

  /** Corrections that ask one lever both ways, where no rule sets either aside. */
  List<Remark> opposed() {
    return new ArrayList<>(opposed.values());
  }

  /** Situations with neither advice nor a reason for none. */
  List<Remark> gaps() {
    return new ArrayList<>(gaps.values());
  }

  /** Rules that have spoken nowhere. */
  List<IndexedRule> unheard() {
    return rules.values().stream().filter(rule -> !spoke.contains(rule.id())).toList();
  }

  /** What there is to say of them. */
  List<Remark> silent() {
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

  private void opposed(Situation situation, Decided decided) {
    Set<Wanted> standing = new LinkedHashSet<>();
    Set<String> aside = new HashSet<>();
    decided.entries(SetAside.class).forEach(entry -> aside.addAll(entry.claims()));
    for (Contribution entry : decided.ledger()) {
      Wanted wanted = wanted(entry);
      if (wanted != null && !aside.contains(wanted.claim()) && !barred(wanted, decided)) {
        standing.add(wanted);
      }
    }
    for (Wanted more : standing) {
      for (Wanted less : standing) {
        if (more.lever() == less.lever()
            && more.direction() == Direction.MORE
            && less.direction() == Direction.LESS
            && undecided(more.lever(), decided)) {
          String id = String.join(" ", new TreeSet<>(Set.of(more.claim(), less.claim())));
          opposed.computeIfAbsent(
              id,
              key ->
                  Remark.of(
                          more.rule(),
                          id,
                          Severity.ERROR,
                          "\"%s\" and \"%s\" ask %s both ways and no rule decides"
                              .formatted(more.claim(), less.claim(), more.lever().id()))
                      .shownBy(situation.answers()));
        }
      }
    }
  }

  /** An undo and the track's target go before corrections by a stated order. */
  private static boolean undecided(Lever lever, Decided decided) {
    return decided.verdicts().stream()
        .filter(verdict -> verdict.lever() == lever)
        .noneMatch(verdict -> verdict.undo() || (verdict.kind() == Kind.TARGET && verdict.moves()));
  }

  private Wanted wanted(Contribution entry) {
    if (entry instanceof Correction move) {
      return new Wanted(
          move.by().note(), move.lever(), move.direction(), rules.get(move.by().rule()));
    }
    if (entry instanceof History move && !move.undo()) {
      return new Wanted(
          move.by().note(), move.lever(), move.direction(), rules.get(move.by().rule()));
    }
    return null;
  }

  private static boolean barred(Wanted wanted, Decided decided) {
    return decided.entries(Limit.class).stream()
        .anyMatch(
            limit -> limit.lever() == wanted.lever() && limit.direction() == wanted.direction());
  }

  private void gap(Situation situation, Decided decided) {
    String gap = null;
    if (decided.status() == Status.FIX_FIRST && decided.entries(FirstCheck.class).isEmpty()) {
      gap = "something is to be fixed first, and nothing says what";
    } else if (decided.status() == Status.CHANGE && decided.first().isEmpty()) {
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
