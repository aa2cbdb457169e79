package insidelift.engine.consultation;

import insidelift.shared.CheckKind;
import insidelift.shared.Contribution.Correction;
import insidelift.shared.Contribution.Evidence;
import insidelift.shared.Contribution.FirstCheck;
import insidelift.shared.Contribution.Limit;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Scope;
import insidelift.shared.Status;
import insidelift.shared.situation.Situation;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What the rules make of a situation, without the words: what somebody else's answer is compared
 * with.
 *
 * @param status what it comes to
 * @param moves what is moved now, and how far; empty unless something is
 * @param findings the findings behind the first corrections; where nothing is moved, those with
 *     clear evidence; none where the track or the last change alone decides
 * @param strengths the evidence of every finding that has any, in decibans
 * @param reasons the notes behind it: of the faults, of the claims that move a lever now, or of
 *     what keeps the levers where they are
 * @param spoke the notes of all rules that spoke
 * @param barred the moves that a limit forbids because they do harm
 */
public record Conclusion(
    Status status,
    Map<Lever, Step> moves,
    Set<String> findings,
    Map<String, Integer> strengths,
    Set<String> reasons,
    Set<String> spoke,
    Set<Barring> barred) {

  /** A move: which way, and how many degrees without sign. */
  public record Step(Direction direction, double degrees) {}

  /** A forbidden move, and the note that forbids it. */
  public record Barring(Lever lever, Direction direction, String note) {}

  /** What an advisor makes of a situation. */
  public static Conclusion of(Advisor advisor, Situation situation) {
    Decided decided = advisor.decide(situation);
    List<Verdict> now =
        decided.verdicts().stream()
            .filter(verdict -> decided.first().contains(verdict.lever()))
            .toList();
    Map<Lever, Step> moves = new EnumMap<>(Lever.class);
    now.forEach(
        verdict ->
            moves.put(
                verdict.lever(),
                new Step(verdict.sized().direction(), verdict.sized().degrees().value())));
    Map<String, Integer> strengths = new TreeMap<>();
    decided
        .evidence()
        .forEach(
            (finding, pieces) ->
                strengths.put(finding, pieces.stream().mapToInt(Evidence::weight).sum()));
    return new Conclusion(
        decided.status(),
        moves,
        findings(decided, now, strengths),
        strengths,
        reasons(decided, now),
        decided.ledger().stream()
            .map(entry -> entry.by().note())
            .collect(Collectors.toCollection(TreeSet::new)),
        decided.entries(Limit.class).stream()
            .filter(limit -> oneWay(limit, decided))
            .map(limit -> new Barring(limit.lever(), limit.direction(), limit.by().note()))
            .collect(Collectors.toCollection(LinkedHashSet::new)));
  }

  /**
   * Whether a limit forbids one way of a lever and leaves the other: then that way does harm, while
   * a lever barred both ways merely cannot be moved.
   */
  private static boolean oneWay(Limit limit, Decided decided) {
    return limit.scope() == Scope.ALL
        && decided.entries(Limit.class).stream()
            .noneMatch(
                other ->
                    other.by().note().equals(limit.by().note())
                        && other.lever() == limit.lever()
                        && other.direction() != limit.direction());
  }

  private static Set<String> findings(
      Decided decided, List<Verdict> now, Map<String, Integer> strengths) {
    Set<String> findings = new TreeSet<>();
    if (decided.status() == Status.HOLD) {
      strengths.forEach(
          (finding, sum) -> {
            if (sum >= Weigher.CLEAR) {
              findings.add(finding);
            }
          });
    }
    for (Verdict verdict : now) {
      Set<String> claims = verdict.wishes().stream().map(Wish::claim).collect(Collectors.toSet());
      decided.entries(Correction.class).stream()
          .filter(entry -> entry.lever() == verdict.lever() && claims.contains(entry.by().note()))
          .forEach(entry -> findings.add(entry.finding()));
    }
    return findings;
  }

  private static Set<String> reasons(Decided decided, List<Verdict> now) {
    Set<String> reasons = new TreeSet<>();
    if (decided.status() == Status.FIX_FIRST) {
      decided.entries(FirstCheck.class).stream()
          .filter(check -> check.kind() != CheckKind.LOOK)
          .forEach(check -> reasons.add(check.by().note()));
      return reasons;
    }
    List<Verdict> behind = now.isEmpty() ? decided.verdicts() : now;
    for (Verdict verdict : behind) {
      if (now.isEmpty()) {
        verdict.heldBy().ifPresent(reasons::add);
      } else {
        verdict.wishes().stream().filter(Wish::moves).forEach(wish -> reasons.add(wish.claim()));
      }
    }
    return reasons;
  }
}
