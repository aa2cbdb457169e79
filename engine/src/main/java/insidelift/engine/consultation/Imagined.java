package insidelift.engine.consultation;

import insidelift.engine.consultation.RuleTable.Line;
import insidelift.engine.sizing.Sizer;
import insidelift.shared.Degrees;
import insidelift.shared.Vocabulary.Value;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.situation.Eccentrics;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
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

  private static final Set<String> MOVING = Set.of("target", "correction", "undo", "carryOn");

  private final Advisor advisor;
  private final Grid grid;
  private final Consistent consistent;
  private final RuleTable table;
  private final Completions completions;
  private final Witness witness;
  private final RuleStates states;
  private final List<List<Line>> faults;
  private final List<List<Line>> claims;

  /** Situations in the words and by the rules of an advisor. */
  public Imagined(Advisor advisor) {
    this.advisor = advisor;
    this.grid = new Grid(advisor.vocabulary());
    this.consistent = new Consistent(grid);
    this.table = new RuleTable(advisor.rules().index(), grid);
    this.completions = new Completions(grid, consistent, new Chances(grid), 1);
    this.witness = new Witness(table);
    this.states = new RuleStates(table, new Sizer(Kart.UNKNOWN));
    this.faults = byNote(act -> act.verb().equals("check"));
    List<List<Line>> other = byNote(act -> MOVING.contains(act.verb()));
    other.addAll(byNote(act -> act.verb().equals("bar")));
    this.claims = other;
  }

  /** The rules with such an act, those of one note together. */
  private List<List<Line>> byNote(Predicate<Act> wanted) {
    List<List<Line>> byNote = new ArrayList<>();
    table.lines().stream()
        .filter(line -> line.acts().stream().anyMatch(wanted))
        .map(line -> line.rule().note())
        .distinct()
        .sorted()
        .forEach(
            note ->
                byNote.add(
                    table.lines().stream()
                        .filter(line -> line.rule().note().equals(note))
                        .filter(line -> line.acts().stream().anyMatch(wanted))
                        .toList()));
    return byNote;
  }

  /** The whole situation of a number: every question that makes sense in it is answered. */
  public Situation whole(long number) {
    SplittableRandom random = new SplittableRandom(number);
    while (true) {
      boolean fault = random.nextInt(FAULT_EVERY) == 0;
      List<List<Line>> from = fault ? faults : claims;
      List<Line> of = from.get(random.nextInt(from.size()));
      Line line = of.get(random.nextInt(of.size()));
      Optional<Situation> drawn = around(line, fault, random);
      if (drawn.isPresent()) {
        return drawn.get();
      }
    }
  }

  private Optional<Situation> around(Line line, boolean fault, SplittableRandom random) {
    int[] box = all();
    if (!fault) {
      withoutFaults(box);
    }
    int[] full = box.clone();
    Optional<int[]> point = witness.of(line, box, nothing());
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
      if (clear(line, fault, whole) && consistent.holds(drawn, advisor.vocabulary())) {
        return Optional.of(measured(drawn, random));
      }
    }
    return Optional.empty();
  }

  /**
   * Whether the drawn rule speaks in a whole situation, and is neither buried under faults nor, if
   * it asks for a move, under limits that it does not belong to.
   */
  private boolean clear(Line line, boolean fault, int[] whole) {
    states.look(whole);
    boolean bars = line.acts().stream().anyMatch(act -> act.verb().equals("bar"));
    return states.state(table.lines().indexOf(line)) == RuleStates.YES
        && (fault || none("check"))
        && (fault || bars || none("bar"));
  }

  private boolean none(String verb) {
    return table.with(verb).stream().noneMatch(other -> states.state(other) == RuleStates.YES);
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
    return table.lines().stream()
        .filter(line -> line.rule().id().equals(rule))
        .findFirst()
        .flatMap(line -> witness.of(line, all(), nothing()))
        .map(point -> grid.situation(point, Situation.UNKNOWN))
        .filter(situation -> consistent.holds(situation, advisor.vocabulary()));
  }

  /** Whether a situation has an answer that alone is enough to say something, or a fault. */
  public boolean tells(Situation situation) {
    return situation.answers().entrySet().stream()
        .anyMatch(
            known ->
                advisor
                    .vocabulary()
                    .question(known.getKey())
                    .filter(
                        question ->
                            Advisor.enough(question)
                                || question.value(known.getValue()).orElseThrow().fault())
                    .isPresent());
  }

  /** Whether a situation contradicts itself nowhere. */
  public boolean consistent(Situation situation) {
    return consistent.holds(situation, advisor.vocabulary());
  }

  private int[] all() {
    int[] box = new int[grid.size()];
    for (int q = 0; q < box.length; q++) {
      box[q] = grid.full(q);
    }
    return box;
  }

  private int[] nothing() {
    int[] point = new int[grid.size()];
    Arrays.fill(point, Grid.ABSENT);
    return point;
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
