package insidelift.engine.audit;

import insidelift.engine.audit.Slices.Slice;
import insidelift.engine.audit.check.Knowledge;
import insidelift.engine.audit.check.SituationVisitor;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.foresight.Consistent;
import insidelift.engine.consultation.foresight.Grid;
import insidelift.engine.consultation.foresight.Witness;
import insidelift.shared.Degrees;
import insidelift.shared.Vocabulary.Value;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Visits situations: every one of the slices that are small enough, those of covering arrays, and
 * some at random; all contradict themselves nowhere. The whole space cannot be visited, so how much
 * of it was is part of what it reports.
 */
public final class Sweep {

  private static final long SEED = 20261125;

  /** How often a situation is tried for a rule that spoke nowhere. */
  private static final int SOUGHT = 5_000;

  /**
   * What was visited of one kind.
   *
   * @param of what
   * @param size how many combinations there are
   * @param visited how many situations were visited
   * @param whole whether those are all that make sense
   */
  public record Visited(String of, double size, long visited, boolean whole) {}

  /** The karts that are visited in turn: what camber does hangs on the camber there is. */
  private static final List<Situation> KARTS =
      Stream.of(null, -1.0, null, -0.5, null, 0.0, null, 0.5, null, 1.0).map(Sweep::kart).toList();

  private final Advisor advisor;
  private final Grid grid;
  private final Consistent consistent;
  private final List<? extends SituationVisitor> watches;
  private final List<Visited> visited = new ArrayList<>();
  private long count;

  public Sweep(Advisor advisor, List<? extends SituationVisitor> watches) {
    this.advisor = advisor;
    this.grid = new Grid(advisor.vocabulary());
    this.consistent = new Consistent(grid);
    this.watches = watches;
  }

  /**
   * Visits as many situations as the effort allows.
   *
   * @param silent the rules that have spoken nowhere so far
   */
  public List<Visited> run(Knowledge knowledge, Effort effort, Supplier<List<IndexedRule>> silent) {
    witnesses();
    Slices slices = new Slices(knowledge, grid);
    for (Slice slice : slices.ofFaults()) {
      visit(slice, effort.slice());
    }
    for (Slice slice : slices.ofFindings()) {
      visit(slice, effort.slice());
    }
    array("all answers", full(), effort.strength());
    array("a sound kart", sound(), effort.strength());
    random(effort.random());
    seek(slices, silent);
    return List.copyOf(visited);
  }

  /** Situations made to let each rule speak: chance would seldom find some of them. */
  private void witnesses() {
    List<int[]> points =
        new Witness(advisor.rules().index(), grid).all().stream().filter(this::sensible).toList();
    points.forEach(this::visit);
    visited.add(new Visited("made for each rule", points.size(), points.size(), false));
  }

  /** Every sensible situation of a slice, or as many as allowed, spread over the whole of it. */
  private void visit(Slice slice, int most) {
    long count = 0;
    boolean whole = slice.size() <= most;
    SplittableRandom random = new SplittableRandom(SEED);
    long tries = whole ? (long) slice.size() : most;
    int[] box = new int[grid.size()];
    for (long i = 0; i < tries; i++) {
      Arrays.fill(box, Grid.ABSENT);
      long code = i;
      for (int q : slice.questions()) {
        int states = Integer.bitCount(grid.full(q));
        long digit = whole ? code % states : random.nextInt(states);
        box[q] = 1 << digit;
        code /= states;
      }
      if (sensible(box)) {
        count++;
        visit(box);
      }
    }
    visited.add(new Visited(slice.of(), slice.size(), count, whole));
  }

  private void array(String of, int[] allowed, int strength) {
    CoveringArray array = new CoveringArray(grid, consistent, allowed, strength);
    List<int[]> rows = array.build();
    rows.forEach(this::visit);
    visited.add(
        new Visited(
            "%s, every combination of %d (%d of them)"
                .formatted(of, strength, array.combinations()),
            rows.size(),
            rows.size(),
            true));
  }

  private int[] full() {
    int[] full = new int[grid.size()];
    for (int q = 0; q < full.length; q++) {
      full[q] = grid.full(q);
    }
    return full;
  }

  /**
   * No faults, which would hide all else: neither told ones nor tyres that do not fit the water.
   */
  private int[] sound() {
    int[] sound = full();
    for (int q = 0; q < sound.length; q++) {
      List<Value> values = grid.question(q).values();
      for (int v = 0; v < values.size(); v++) {
        sound[q] &= values.get(v).fault() ? ~(1 << (v + 1)) : ~0;
      }
    }
    sound[grid.place("tyres")] = Grid.ABSENT;
    sound[grid.place("run-phase")] &= ~grid.mask(grid.place("run-phase"), List.of("first-laps"));
    return sound;
  }

  private void random(int count) {
    SplittableRandom random = new SplittableRandom(SEED);
    int[] sound = sound();
    for (int i = 0; i < count; i++) {
      double told = random.nextDouble();
      boolean faults = random.nextInt(10) == 0;
      int[] box = new int[grid.size()];
      for (int q = 0; q < box.length; q++) {
        int states = (faults ? grid.full(q) : sound[q]) & consistent.sensible(q, box);
        int known = states & ~Grid.ABSENT;
        box[q] = known != 0 && random.nextDouble() < told ? pick(known, random) : Grid.ABSENT;
      }
      visit(box);
    }
    visited.add(new Visited("at random", count, count, false));
  }

  /** Looks for situations in which rules speak that spoke nowhere, among the answers they name. */
  private void seek(Slices slices, Supplier<List<IndexedRule>> silent) {
    SplittableRandom random = new SplittableRandom(SEED);
    long tried = 0;
    for (IndexedRule rule : silent.get()) {
      int[] named = slices.named(rule);
      for (int i = 0; i < SOUGHT && silent.get().contains(rule); i++) {
        int[] box = new int[grid.size()];
        for (int q = 0; q < box.length; q++) {
          box[q] = pick(named[q], random);
        }
        if (sensible(box)) {
          tried++;
          visit(box);
        }
      }
    }
    visited.add(new Visited("sought for silent rules", tried, tried, false));
  }

  private static int pick(int states, SplittableRandom random) {
    int rest = states;
    for (int skip = random.nextInt(Integer.bitCount(states)); skip > 0; skip--) {
      rest &= rest - 1;
    }
    return Integer.lowestOneBit(rest);
  }

  private boolean sensible(int[] box) {
    for (int q = 0; q < box.length; q++) {
      if ((box[q] & consistent.sensible(q, box)) == 0) {
        return false;
      }
    }
    return true;
  }

  private void visit(int[] box) {
    // A kart that is measured alike on both sides would take back that its readings differ.
    boolean read = box[grid.place("readings")] != Grid.ABSENT;
    Situation kart = read ? Situation.UNKNOWN : KARTS.get((int) (count++ % KARTS.size()));
    Situation situation = grid.situation(box, kart);
    var decided = advisor.decide(situation);
    watches.forEach(watch -> watch.see(situation, decided));
  }

  /** A kart that stands there, or of which nobody knows where it stands. */
  private static Situation kart(Double camber) {
    return camber == null
        ? Situation.UNKNOWN
        : Situation.UNKNOWN.with(
            Kart.UNKNOWN.with(Sides.both(Degrees.of(camber)), Sides.both(Degrees.ZERO)));
  }
}
