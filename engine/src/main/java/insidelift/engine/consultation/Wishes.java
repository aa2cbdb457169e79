package insidelift.engine.consultation;

import insidelift.engine.sizing.Sizer;
import insidelift.shared.Contribution;
import insidelift.shared.Contribution.Correction;
import insidelift.shared.Contribution.Fewer;
import insidelift.shared.Contribution.History;
import insidelift.shared.Contribution.Origin;
import insidelift.shared.Contribution.Target;
import insidelift.shared.Direction;
import insidelift.shared.Finding;
import insidelift.shared.Kind;
import insidelift.shared.Lever;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/** Gathers what the rules ask for: one wish for each claim, lever and direction. */
final class Wishes {

  private Wishes() {}

  static List<Wish> of(List<Contribution> ledger, List<Finding> findings, Sizer sizer) {
    Map<String, Integer> strength =
        findings.stream().collect(Collectors.toMap(Finding::id, Finding::strength));
    Map<List<Object>, Wish> wishes = new LinkedHashMap<>();
    for (Contribution entry : ledger) {
      Wish wish = wish(entry, strength, ledger, sizer);
      if (wish != null) {
        wishes.merge(
            List.of(wish.claim(), wish.lever(), wish.direction(), wish.kind()),
            wish,
            Wishes::together);
      }
    }
    return List.copyOf(wishes.values());
  }

  /** Whether a rule takes one position off a lever. */
  static boolean fewer(List<Contribution> ledger, Lever lever) {
    return ledger.stream().anyMatch(entry -> entry instanceof Fewer off && off.lever() == lever);
  }

  private static Wish wish(
      Contribution entry, Map<String, Integer> strength, List<Contribution> ledger, Sizer sizer) {
    if (entry instanceof Target target) {
      Lever lever = target.lever();
      Direction way = sizer.target(lever, target.column(), fewer(ledger, lever)).direction();
      // That the track is wet is seen, not inferred: the evidence is as strong as it gets.
      return new Wish(
          target.by().note(),
          lever,
          way,
          Kind.TARGET,
          Weigher.STRONG,
          target.column(),
          false,
          List.of(target.by()));
    }
    if (entry instanceof Correction correction) {
      return new Wish(
          correction.by().note(),
          correction.lever(),
          correction.direction(),
          Kind.CORRECTION,
          Objects.requireNonNull(strength.get(correction.finding())),
          null,
          false,
          List.of(correction.by()));
    }
    if (entry instanceof History history) {
      return new Wish(
          history.by().note(),
          history.lever(),
          history.direction(),
          Kind.CORRECTION,
          Weigher.STRONG,
          null,
          history.undo(),
          List.of(history.by()));
    }
    return null;
  }

  private static Wish together(Wish one, Wish other) {
    List<Origin> origins = new ArrayList<>(one.origins());
    origins.addAll(other.origins());
    return new Wish(
        one.claim(),
        one.lever(),
        one.direction(),
        one.kind(),
        Math.max(one.strength(), other.strength()),
        one.column(),
        one.undo() || other.undo(),
        origins);
  }
}
