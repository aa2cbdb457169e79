package insidelift.engine.consultation;

import insidelift.engine.sizing.Sized;
import insidelift.engine.sizing.Sized.End;
import insidelift.engine.sizing.Sizer;
import insidelift.shared.Contribution;
import insidelift.shared.Contribution.Cap;
import insidelift.shared.Contribution.Doubles;
import insidelift.shared.Contribution.Hold;
import insidelift.shared.Contribution.Lead;
import insidelift.shared.Contribution.Limit;
import insidelift.shared.Contribution.Origin;
import insidelift.shared.Contribution.Rest;
import insidelift.shared.Contribution.SetAside;
import insidelift.shared.Direction;
import insidelift.shared.Kind;
import insidelift.shared.Lever;
import insidelift.shared.Mark;
import insidelift.shared.Rank;
import insidelift.shared.Scope;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Settles each lever from what the rules recorded. It knows no kart: who gives way to whom, what is
 * forbidden and who goes first all stand in the ledger; the arbiter only applies it in one fixed
 * order — an undo, then the track's target, then corrections.
 */
final class Arbiter {

  /** The note shown where opposite wishes are equally strong and no rule decides. */
  static final String CONFLICT = "evidence-conflict";

  /** Ranks that say no more than which part of the corner comes first. */
  private static final Set<Rank> BY_PHASE = EnumSet.of(Rank.TURN_IN, Rank.MID_CORNER, Rank.EXIT);

  private final List<Contribution> ledger;
  private final Map<Class<?>, List<Contribution>> byType = new HashMap<>();
  private final List<Wish> standing;
  private final Sizer sizer;
  private final TrackRecord record;

  Arbiter(List<Contribution> ledger, List<Wish> wishes, Sizer sizer) {
    this(ledger, wishes, sizer, TrackRecord.NONE);
  }

  Arbiter(List<Contribution> ledger, List<Wish> wishes, Sizer sizer, TrackRecord record) {
    this.ledger = ledger;
    for (Contribution entry : ledger) {
      byType.computeIfAbsent(entry.getClass(), type -> new ArrayList<>()).add(entry);
    }
    this.sizer = sizer;
    this.record = record;
    Set<String> aside = new LinkedHashSet<>();
    entries(SetAside.class).forEach(entry -> aside.addAll(entry.claims()));
    this.standing = wishes.stream().filter(wish -> !aside.contains(wish.claim())).toList();
  }

  /** What is to become of every lever that anything speaks for. */
  List<Verdict> verdicts() {
    List<Verdict> verdicts = new ArrayList<>();
    for (Lever lever : Lever.values()) {
      verdict(lever).ifPresent(verdicts::add);
    }
    return verdicts;
  }

  /** The levers to be moved now: an undo alone, or all targets together, or one correction. */
  Set<Lever> first(List<Verdict> verdicts) {
    List<Verdict> moving = verdicts.stream().filter(Verdict::moves).toList();
    List<Verdict> undo = moving.stream().filter(Verdict::undo).toList();
    Set<Lever> first = new LinkedHashSet<>();
    if (undo.isEmpty() && moving.stream().anyMatch(Arbiter::isTarget)) {
      moving.stream().filter(Arbiter::isTarget).forEach(verdict -> first.add(verdict.lever()));
    } else {
      List<Verdict> ordered = (undo.isEmpty() ? moving : undo).stream().sorted(order()).toList();
      if (!ordered.isEmpty()) {
        boolean swap = ordered.size() > 1 && outdone(ordered.get(0), ordered.get(1));
        first.add(ordered.get(swap ? 1 : 0).lever());
      }
    }
    return first;
  }

  /**
   * Whether the second correction has done better here before, by slight evidence at least, and
   * nothing but the phase of the corner put the first one first.
   */
  private boolean outdone(Verdict first, Verdict second) {
    boolean byPhase =
        !first.undo()
            && Stream.of(first, second)
                .allMatch(
                    verdict ->
                        lead(verdict.lever()).map(Lead::rank).map(BY_PHASE::contains).orElse(true));
    return byPhase && proven(second) - proven(first) >= Weigher.SLIGHT;
  }

  /** How a correction has done before, in decibans: the best of the claims that ask for it. */
  private double proven(Verdict verdict) {
    return verdict.wishes().stream()
        .mapToDouble(wish -> record.decibans(wish.claim(), wish.lever(), wish.direction()))
        .max()
        .orElse(0);
  }

  /** The best rank that a rule gives a lever among corrections, if any does. */
  Optional<Lead> lead(Lever lever) {
    return entries(Lead.class).stream()
        .filter(entry -> entry.lever() == lever)
        .min(Comparator.comparing(Lead::rank).thenComparing(entry -> entry.by().rule()));
  }

  private static boolean isTarget(Verdict verdict) {
    return verdict.kind() == Kind.TARGET;
  }

  private Comparator<Verdict> order() {
    return Comparator.comparing(
            (Verdict verdict) -> lead(verdict.lever()).map(Lead::rank).orElse(null),
            Comparator.nullsLast(Comparator.naturalOrder()))
        .thenComparing(Comparator.comparingInt(Verdict::strength).reversed())
        // A tie goes to the earlier phase of the corner, which is caster's.
        .thenComparing(Verdict::lever, Comparator.reverseOrder());
  }

  private Optional<Verdict> verdict(Lever lever) {
    List<Wish> wishes = standing.stream().filter(wish -> wish.lever() == lever).toList();
    List<Wish> undo = wishes.stream().filter(Wish::undo).toList();
    List<Wish> targets = wishes.stream().filter(wish -> wish.kind() == Kind.TARGET).toList();
    List<Wish> corrections =
        wishes.stream().filter(wish -> wish.kind() == Kind.CORRECTION && !wish.undo()).toList();
    if (!undo.isEmpty()) {
      return Optional.of(correction(lever, undo));
    }
    if (targets.stream().anyMatch(Wish::moves)) {
      return Optional.of(target(lever, targets));
    }
    if (!corrections.isEmpty()) {
      return Optional.of(correction(lever, corrections));
    }
    Optional<Hold> hold =
        entries(Hold.class).stream().filter(entry -> entry.lever() == lever).findFirst();
    if (!targets.isEmpty()) {
      Wish target = targets.get(0);
      Sized there = sizer.target(lever, target.column(), Wishes.fewer(ledger, lever));
      String note = there.end() == End.DRIVER ? fewerNote(lever) : target.claim();
      return Optional.of(stay(lever, Kind.TARGET, there.end(), targets, List.of(), note));
    }
    if (hold.isPresent()) {
      Origin by = hold.get().by();
      return Optional.of(stay(lever, Kind.CORRECTION, End.NONE, List.of(), List.of(by), by.note()));
    }
    return entries(Rest.class).stream()
        .filter(entry -> entry.lever() == lever)
        .findFirst()
        .map(
            rest ->
                stay(
                    lever,
                    Kind.CORRECTION,
                    End.NONE,
                    List.of(),
                    List.of(rest.by()),
                    rest.by().note()));
  }

  private Verdict target(Lever lever, List<Wish> targets) {
    Wish target = targets.get(0);
    Optional<Limit> limit = limit(target);
    if (limit.isPresent()) {
      return held(target.lever(), Kind.TARGET, targets, limit.get());
    }
    Sized sized = sizer.target(lever, target.column(), Wishes.fewer(ledger, lever));
    return new Verdict(lever, Kind.TARGET, sized, targets, List.of(), Optional.empty());
  }

  private Verdict correction(Lever lever, List<Wish> wishes) {
    List<Wish> free = wishes.stream().filter(wish -> limit(wish).isEmpty()).toList();
    if (free.isEmpty()) {
      return held(lever, Kind.CORRECTION, wishes, limit(wishes.get(0)).orElseThrow());
    }
    List<Wish> chosen = stronger(free);
    if (chosen.isEmpty()) {
      return stay(lever, Kind.CORRECTION, End.NONE, free, List.of(), CONFLICT);
    }
    Direction direction = chosen.get(0).direction();
    Sized sized =
        chosen.stream().anyMatch(Wish::undo)
            ? sizer.undo(lever, direction)
            : sizer.correction(lever, direction, steps(chosen), mark(chosen));
    if (!sized.moves()) {
      String note = sized.end() == End.MARK ? chosen.get(0).claim() : "limit-range";
      return stay(lever, Kind.CORRECTION, sized.end(), chosen, List.of(), note);
    }
    return new Verdict(lever, Kind.CORRECTION, sized, chosen, List.of(), Optional.empty());
  }

  /** The wishes of the direction with the stronger evidence; none where both are as strong. */
  private static List<Wish> stronger(List<Wish> wishes) {
    List<Wish> more = wishes.stream().filter(wish -> wish.direction() == Direction.MORE).toList();
    List<Wish> less = wishes.stream().filter(wish -> wish.direction() == Direction.LESS).toList();
    int difference = strongest(more) - strongest(less);
    if (difference == 0) {
      return List.of();
    }
    return difference > 0 ? more : less;
  }

  private static int strongest(List<Wish> wishes) {
    return wishes.stream().mapToInt(Wish::strength).max().orElse(0);
  }

  private int steps(List<Wish> wishes) {
    boolean two =
        wishes.stream()
            .anyMatch(
                wish ->
                    wish.strength() >= Weigher.STRONG
                        && entries(Doubles.class).stream()
                            .anyMatch(entry -> entry.claims().contains(wish.claim())));
    return two && !Wishes.fewer(ledger, wishes.get(0).lever()) ? 2 : 1;
  }

  /** The mark that stops the move, if every claim behind it stops there. */
  private Optional<Mark> mark(List<Wish> wishes) {
    List<Cap> caps = entries(Cap.class);
    boolean all =
        wishes.stream()
            .allMatch(wish -> caps.stream().anyMatch(cap -> cap.by().note().equals(wish.claim())));
    return all ? Optional.of(caps.get(0).mark()) : Optional.empty();
  }

  private Optional<Limit> limit(Wish wish) {
    return entries(Limit.class).stream()
        .filter(limit -> limit.lever() == wish.lever() && limit.direction() == wish.direction())
        .filter(
            limit -> limit.scope() == Scope.ALL || (wish.kind() == Kind.CORRECTION && !wish.undo()))
        .findFirst();
  }

  private Verdict held(Lever lever, Kind kind, List<Wish> wishes, Limit limit) {
    return stay(lever, kind, End.NONE, wishes, List.of(limit.by()), limit.by().note());
  }

  private Verdict stay(
      Lever lever, Kind kind, End end, List<Wish> wishes, List<Origin> holders, String note) {
    return new Verdict(lever, kind, sizer.stay(lever, end), wishes, holders, Optional.of(note));
  }

  private String fewerNote(Lever lever) {
    return ledger.stream()
        .filter(entry -> entry instanceof Contribution.Fewer off && off.lever() == lever)
        .map(entry -> entry.by().note())
        .findFirst()
        .orElseThrow();
  }

  private <T extends Contribution> List<T> entries(Class<T> type) {
    return byType.getOrDefault(type, List.of()).stream().map(type::cast).toList();
  }
}
