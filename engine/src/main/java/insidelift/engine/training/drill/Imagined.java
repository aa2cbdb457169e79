package insidelift.engine.training.drill;

import insidelift.engine.consultation.decision.Decided;
import insidelift.engine.consultation.decision.Decider;
import insidelift.engine.consultation.foresight.Chances;
import insidelift.engine.consultation.foresight.Completions;
import insidelift.engine.consultation.foresight.Consistent;
import insidelift.engine.consultation.foresight.Grid;
import insidelift.engine.consultation.foresight.OpenAnswers;
import insidelift.engine.consultation.foresight.Witness;
import insidelift.rules.fact.Barred;
import insidelift.shared.CheckKind;
import insidelift.shared.Degrees;
import insidelift.shared.Status;
import insidelift.shared.Vocabulary.Value;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.Truth;
import insidelift.shared.index.Verb;
import insidelift.shared.situation.Eccentrics;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * Situations that nobody has met: whole ones drawn by a number, and small ones in which one rule
 * comes true. None contradicts itself. The same number gives the same situation for as long as
 * rules and words stay the same. Not for several threads.
 *
 * <p>A whole situation begins with one rule, drawn so that every claim has its turn, and is made
 * true; the rest is drawn around it. What the engine makes of the whole is not asked meanwhile.
 */
public final class Imagined {

  /** One situation in so many has a fault or something to set first. Provisional. */
  private static final int FAULT_EVERY = 4;

  /** One kart in so many stands where it was measured; the others are taken to stand at neutral. */
  private static final int MEASURED_EVERY = 3;

  /**
   * How often a question beside the drawn rule is kept free of complaints: a kart on which all is
   * wrong at once teaches nothing. Provisional.
   */
  private static final double QUIET = 0.7;

  /** Draws for one rule before another is tried: rubber needs a dry track, and seven in ten are. */
  private static final int DRAWS = 40;

  private final Decider decider;
  private final Grid grid;
  private final Consistent consistent;
  private final Completions completions;
  private final Witness witness;
  private final List<List<IndexedRule>> faults;
  private final List<List<IndexedRule>> claims;

  /** Situations in the words and by the rules of a decider. */
  public Imagined(Decider decider) {
    this.decider = new Decider(decider.vocabulary(), decider.rules().plain());
    this.grid = new Grid(decider.vocabulary());
    this.consistent = new Consistent(grid);
    this.completions = new Completions(grid, consistent, new Chances(grid), 1);
    this.witness = new Witness(decider.rules().index(), grid);
    this.faults =
        byNote(act -> act.verb() == Verb.CHECK && !act.word(0).equals(CheckKind.LOOK.id()));
    List<List<IndexedRule>> other =
        byNote(act -> act.verb() == Verb.CLAIM || act.verb() == Verb.START);
    other.addAll(byNote(act -> act.verb() == Verb.BARRED));
    this.claims = other;
  }

  /** The rules with such an act, those of one note together. */
  private List<List<IndexedRule>> byNote(Predicate<Act> wanted) {
    Map<String, List<IndexedRule>> byNote = new TreeMap<>();
    for (IndexedRule rule : decider.rules().index().rules()) {
      if (rule.acts().stream().anyMatch(wanted)) {
        byNote.computeIfAbsent(rule.note(), note -> new ArrayList<>()).add(rule);
      }
    }
    return new ArrayList<>(byNote.values());
  }

  /** The whole situation of a number: every question that makes sense in it is answered. */
  public Situation whole(long number) {
    SplittableRandom random = new SplittableRandom(number);
    while (true) {
      boolean fault = random.nextInt(FAULT_EVERY) == 0;
      List<List<IndexedRule>> from = fault ? faults : claims;
      List<IndexedRule> of = from.get(random.nextInt(from.size()));
      IndexedRule line = of.get(random.nextInt(of.size()));
      Optional<Situation> drawn = around(line, fault, random);
      if (drawn.isPresent()) {
        return drawn.get();
      }
    }
  }

  private Optional<Situation> around(IndexedRule line, boolean fault, SplittableRandom random) {
    int[] box = grid.all();
    if (!fault) {
      withoutFaults(box);
    }
    int[] full = box.clone();
    Optional<int[]> point = witness.of(line, box, grid.nothing());
    if (point.isEmpty()) {
      return Optional.empty();
    }
    boolean[] open = new boolean[box.length];
    for (int q = 0; q < box.length; q++) {
      open[q] = point.get()[q] == Grid.ABSENT;
      full[q] = open[q] ? full[q] : point.get()[q];
    }
    for (int i = 0; i < DRAWS; i++) {
      double[] luck = random.doubles(grid.size()).toArray();
      int[] whole = completions.draw(luck, quieter(full, open, random), open);
      Situation drawn = grid.situation(whole, Situation.UNKNOWN);
      if (consistent.holds(drawn, decider.vocabulary()) && clear(line, fault, drawn)) {
        return Optional.of(measured(drawn, random));
      }
    }
    return Optional.empty();
  }

  /**
   * Whether the drawn rule speaks in a whole situation, and is neither buried under faults nor, if
   * it asks for a move, under limits that it does not belong to.
   */
  private boolean clear(IndexedRule line, boolean fault, Situation drawn) {
    boolean speaks = line.in(new OpenAnswers(drawn, decider.vocabulary())) == Truth.TRUE;
    if (!speaks || fault) {
      return speaks;
    }
    Decided decided = decider.decide(drawn);
    boolean bars = line.acts(Verb.BARRED).findAny().isPresent();
    return decided.status() != Status.FIX_FIRST
        && (bars || decided.reasoned().all(Barred.class).findAny().isEmpty());
  }

  /** The same completions with most complaints taken out of what is open. */
  private int[] quieter(int[] full, boolean[] open, SplittableRandom random) {
    int[] quieter = full.clone();
    for (int q = 0; q < quieter.length; q++) {
      boolean quiet = random.nextDouble() < QUIET;
      if (open[q] && quiet) {
        quieter[q] &= ~grid.complaints(q);
      }
    }
    return quieter;
  }

  /** The same on a kart whose settings are known, where its two sides are alike. */
  private Situation measured(Situation drawn, SplittableRandom random) {
    boolean alike = drawn.answer("readings").filter("equal"::equals).isPresent();
    if (!alike || random.nextInt(MEASURED_EVERY) > 0) {
      return drawn;
    }
    Degrees camber = Degrees.of(0.5 * (random.nextInt(6) - 1));
    Degrees caster = Degrees.of(random.nextInt(5) - 1);
    return drawn.with(
        new Kart(
            Optional.of(Sides.both(camber)),
            Optional.of(Sides.both(caster)),
            false,
            Optional.empty(),
            new Eccentrics(Degrees.of(0.5), Degrees.of(1)),
            Optional.empty()));
  }

  /**
   * A small situation in which the premises of a rule hold, with nothing told beside them; empty
   * for a rule that takes no part in what to do now, or whose premises make no sense together.
   */
  public Optional<Situation> small(String rule) {
    return decider.rules().index().rules().stream()
        .filter(known -> known.id().equals(rule) && known.plain() && !known.premises().isEmpty())
        .findFirst()
        .flatMap(known -> witness.of(known, grid.all(), grid.nothing()))
        .map(point -> grid.situation(point, Situation.UNKNOWN))
        .filter(situation -> consistent.holds(situation, decider.vocabulary()));
  }

  /** Whether a situation tells enough for the rules to say something. */
  public boolean tells(Situation situation) {
    return decider.decide(situation).status() != Status.NOT_ENOUGH;
  }

  /** Whether a situation contradicts itself nowhere. */
  public boolean consistent(Situation situation) {
    return consistent.holds(situation, decider.vocabulary());
  }

  private void withoutFaults(int[] box) {
    for (int q = 0; q < box.length; q++) {
      List<Value> values = grid.question(q).values();
      for (int v = 0; v < values.size(); v++) {
        box[q] &= values.get(v).fault() ? ~(1 << (v + 1)) : ~0;
      }
    }
  }
}
