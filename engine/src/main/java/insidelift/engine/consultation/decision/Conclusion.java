package insidelift.engine.consultation.decision;

import insidelift.rules.Reasoned;
import insidelift.rules.fact.Barred;
import insidelift.rules.fact.Found;
import insidelift.rules.fact.Part;
import insidelift.rules.fact.Spoken;
import insidelift.rules.fact.Spoken.By;
import insidelift.rules.fact.Spoken.Check;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Named;
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
 * @param findings the findings that a move answers; where nothing is moved, those that complain;
 *     none where the track or the last change alone decides
 * @param strengths the evidence of every finding, a quarter of a deciban each
 * @param reasons the notes behind it: of the faults, of the claims that move a lever now, or of
 *     what keeps the levers where they are
 * @param spoke the notes of all rules that said something of the kart or its levers
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

  /** What a decider makes of a situation. */
  public static Conclusion of(Decider decider, Situation situation) {
    Decided decided = decider.decide(situation);
    Reasoned reasoned = decided.reasoned();
    Map<Lever, Step> moves = new EnumMap<>(Lever.class);
    decided
        .now()
        .forEach(
            verdict ->
                moves.put(
                    verdict.lever(),
                    new Step(verdict.sized().direction(), verdict.sized().degrees().value())));
    Map<String, Integer> strengths = new TreeMap<>();
    reasoned
        .found()
        .forEach(
            found -> {
              if (!found.finding().endsWith("-open")) {
                strengths.put(found.finding(), found.weight());
              }
            });
    return new Conclusion(
        decided.status(),
        moves,
        findings(decided),
        strengths,
        reasons(decided),
        reasoned
            .all(Spoken.class)
            .filter(spoken -> !(spoken instanceof Spoken.Term || spoken instanceof Spoken.Option))
            .map(spoken -> spoken.by().note())
            .collect(Collectors.toCollection(TreeSet::new)),
        barred(reasoned.spoken(Barred.class)));
  }

  /**
   * Limits that forbid one way of a lever and leave the other: then that way does harm, while a
   * lever barred both ways merely cannot be moved.
   */
  private static Set<Barring> barred(List<Barred> limits) {
    return limits.stream()
        .filter(limit -> limit.scope().equals("all") && Lever.isOne(limit.lever()))
        .filter(
            limit ->
                limits.stream()
                    .noneMatch(
                        other ->
                            other.by().note().equals(limit.by().note())
                                && other.lever().equals(limit.lever())
                                && !other.direction().equals(limit.direction())))
        .map(
            limit ->
                new Barring(
                    Named.of(Lever.class, limit.lever()),
                    Named.of(Direction.class, limit.direction()),
                    limit.by().note()))
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private static Set<String> findings(Decided decided) {
    Set<String> findings = new TreeSet<>();
    if (decided.status() == Status.HOLD) {
      decided.reasoned().found().stream()
          .filter(Found::complaint)
          .forEach(found -> findings.add(found.finding()));
    }
    decided.now().stream()
        .flatMap(verdict -> verdict.helps().stream())
        .map(Part::finding)
        .forEach(findings::add);
    return findings;
  }

  private static Set<String> reasons(Decided decided) {
    Set<String> reasons = new TreeSet<>();
    if (decided.status() == Status.FIX_FIRST) {
      decided
          .reasoned()
          .all(Check.class)
          .filter(Check::stops)
          .forEach(check -> reasons.add(check.by().note()));
    } else if (decided.now().isEmpty()) {
      decided.verdicts().forEach(verdict -> verdict.heldBy().ifPresent(reasons::add));
    } else {
      for (LeverOutcome verdict : decided.now()) {
        verdict.by().stream().map(By::note).forEach(reasons::add);
        verdict.helps().forEach(part -> reasons.add(part.by().note()));
      }
    }
    return reasons;
  }
}
