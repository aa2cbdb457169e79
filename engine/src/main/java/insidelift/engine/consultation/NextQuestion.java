package insidelift.engine.consultation;

import insidelift.engine.consultation.Hinges.Hinge;
import insidelift.engine.sizing.Sizer;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Chooses what to ask next. The safety checks come first, all together. After them a question is
 * worth asking only if some completion of the other answers makes its answer change what to do now;
 * that is decided by bounds on the rules, split where they are too wide, not by trying all
 * completions. The best is the one whose answer tells most about what to do now for the effort of
 * giving it (J. de Kleer and B. C. Williams, 1987: one step ahead). Not for several threads.
 */
public final class NextQuestion {

  /** What is still to be asked. */
  record Outlook(List<Question> open, int atMost, int spared) {}

  /** Completions drawn for one choice: enough to tell the best question from the second best. */
  private static final int DRAWN = 256;

  /** Completions in which each question is tried for a difference before bounds are computed. */
  private static final int TRIED = 10;

  /** Boxes looked at for one choice; beyond it a question counts as worth asking. */
  private static final int MOST_BOXES = 200;

  /** Choices kept: going back and forth then costs nothing. */
  private static final int KEPT = 512;

  private final Advisor advisor;
  private final Grid grid;
  private final Consistent consistent;
  private final RuleTable table;
  private final Completions completions;
  private final Witness witness;
  private final boolean[] read;
  final Map<List<Integer>, Outlook> chosen =
      new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<List<Integer>, Outlook> eldest) {
          return size() > KEPT;
        }
      };
  private Kart kart = Kart.UNKNOWN;
  private Outcomes outcomes;
  private int boxes;
  private int givenUp;

  /** Questions for an advisor. */
  public NextQuestion(Advisor advisor) {
    this.advisor = advisor;
    this.grid = new Grid(advisor.vocabulary());
    this.consistent = new Consistent(grid);
    this.table = new RuleTable(advisor.rules().index(), grid);
    this.completions = new Completions(grid, consistent, new Chances(grid), DRAWN);
    this.witness = new Witness(table);
    this.read = new boolean[grid.size()];
    for (int q = 0; q < read.length; q++) {
      read[q] = Advisor.enough(grid.question(q)) || table.reading(q).length > 0;
    }
    this.outcomes = outcomes(Situation.UNKNOWN);
  }

  private Outcomes outcomes(Situation situation) {
    RuleStates states = new RuleStates(table, new Sizer(situation.kart()));
    return new Outcomes(
        new TableDecision(states, grid, advisor.record()), new Bounds(states, grid));
  }

  /**
   * The questions still worth asking, the best first.
   *
   * @param situation what is known
   * @param skipped questions that were answered with "unknown"
   */
  public List<Question> worthAsking(Situation situation, Set<String> skipped) {
    return outlook(situation, skipped).open();
  }

  Outlook outlook(Situation situation, Set<String> skipped) {
    look(situation);
    int[] box = grid.box(situation, advisor.vocabulary(), skipped);
    List<Integer> key = Arrays.stream(box).boxed().toList();
    Outlook before = chosen.get(key);
    if (before == null) {
      before = outlook(box);
      chosen.put(key, before);
    }
    return before;
  }

  private void look(Situation situation) {
    if (!situation.kart().equals(kart)) {
      kart = situation.kart();
      outcomes = outcomes(situation);
      chosen.clear();
    }
  }

  private Outlook outlook(int[] box) {
    boolean[] open = new boolean[box.length];
    List<Question> safety = new ArrayList<>();
    int[] now = box.clone();
    int left = 0;
    for (int q = 0; q < box.length; q++) {
      // A known answer is one state without the bit for "not known".
      open[q] = box[q] == grid.full(q);
      if (open[q]) {
        now[q] = Grid.ABSENT;
        left++;
        if (grid.question(q).safety()) {
          safety.add(grid.question(q));
        }
      }
    }
    boxes = 0;
    boolean fault = outcomes.fault(now);
    int[] all = box.clone();
    consistent.narrow(all, open);
    List<int[]> drawn = completions.all(box, open);
    List<Integer> matter = new ArrayList<>();
    for (int q = 0; q < box.length; q++) {
      boolean asked = open[q] && read[q] && !grid.question(q).safety() && !fault;
      if (asked && (all[q] & ~Grid.ABSENT) != 0 && outcomes.of(all) < 0 && outcomes.heard(q)) {
        matter.add(q);
      }
    }
    List<Integer> best = best(matter, now, all, drawn);
    // What is asked next must matter; what comes later is looked at when its turn comes.
    while (!best.isEmpty() && !matters(best.get(0), all, open, now, drawn)) {
      matter.remove(best.remove(0));
    }
    if (best.isEmpty()) {
      matter.removeIf(q -> !matters(q, all, open, now, drawn));
      // What makes no sense yet may still matter: then what it hangs on is asked.
      matter.stream()
          .flatMap(q -> consistent.hangsOn(q).stream())
          .distinct()
          .filter(q -> open[q] && !fault && consistent.askable(q, now, all))
          .forEach(best::add);
      matter.addAll(best);
    }
    List<Question> questions = new ArrayList<>(safety);
    best.forEach(q -> questions.add(grid.question(q)));
    // The safety checks are one screen.
    int atMost = matter.size() + (safety.isEmpty() ? 0 : 1);
    return new Outlook(List.copyOf(questions), atMost, left - matter.size() - safety.size());
  }

  /** The questions that make sense now, by what they tell for their effort. */
  private List<Integer> best(List<Integer> matter, int[] now, int[] all, List<int[]> drawn) {
    List<Integer> askable = new ArrayList<>();
    for (int q : matter) {
      if (consistent.askable(q, now, all)) {
        askable.add(q);
      }
    }
    if (askable.size() > 1) {
      Telling telling = new Telling(grid, outcomes, drawn);
      double[] scores = new double[grid.size()];
      askable.forEach(q -> scores[q] = telling.bits(q));
      askable.sort(Comparator.comparingDouble(q -> -scores[q]));
    }
    return askable;
  }

  /**
   * What the answer to a question is expected to tell about what to do now, in bits, for the effort
   * of giving it. The safety checks are one screen and are asked as one: whether it shows a fault.
   *
   * @param situation what is known
   * @param skipped questions that were answered with "unknown"
   * @param question a question's id; any of the safety checks stands for the whole screen
   * @throws IllegalArgumentException if there is no such question
   */
  public double tells(Situation situation, Set<String> skipped, String question) {
    int place = grid.place(question);
    if (place < 0) {
      throw new IllegalArgumentException("there is no question \"" + question + '"');
    }
    look(situation);
    int[] box = grid.box(situation, advisor.vocabulary(), skipped);
    boolean[] open = new boolean[box.length];
    for (int q = 0; q < box.length; q++) {
      open[q] = box[q] == grid.full(q);
    }
    if (!open[place]) {
      return 0;
    }
    return new Telling(grid, outcomes, completions.all(box, open)).bits(place);
  }

  /** Whether some completion of the rest makes this answer change what to do now. */
  private boolean matters(int question, int[] all, boolean[] open, int[] now, List<int[]> drawn) {
    for (int[] point : witness.of(question, all, now)) {
      if (differs(question, point, open)) {
        return true;
      }
    }
    for (int i = 0; i < TRIED; i++) {
      if (differs(question, drawn.get(i), open)) {
        return true;
      }
    }
    return mayDiffer(question, all, open);
  }

  /** Whether this answer changes what to do now in one completion. */
  private boolean differs(int question, int[] point, boolean[] open) {
    int[] rest = point.clone();
    int values = 0;
    for (int left = grid.full(question); left != 0; left &= left - 1) {
      rest[question] = Integer.lowestOneBit(left);
      if ((consistent.sensible(question, rest) & rest[question]) != 0) {
        values |= rest[question];
        // What hangs on one value of this answer says nothing about the others.
        for (int q = 0; q < rest.length; q++) {
          boolean senseless = (consistent.sensible(q, rest) & rest[q]) == 0;
          rest[q] = open[q] && q != question && senseless ? Grid.ABSENT : rest[q];
        }
      }
    }
    int first = -1;
    for (int left = values; left != 0; left &= left - 1) {
      rest[question] = Integer.lowestOneBit(left);
      int end = outcomes.of(rest);
      if (first >= 0 && end != first) {
        return true;
      }
      first = end;
    }
    return false;
  }

  /**
   * Whether a box holds two situations that differ in this answer only and in what to do now. It
   * may say yes without need, never no.
   */
  private boolean mayDiffer(int question, int[] box, boolean[] open) {
    if (++boxes > MOST_BOXES) {
      givenUp++;
      return true;
    }
    if (outcomes.of(box) >= 0 || !outcomes.heard(question)) {
      return false;
    }
    int end = -1;
    boolean undecided = false;
    Hinge hinge = null;
    for (int left = box[question]; left != 0; left &= left - 1) {
      int[] with = box.clone();
      with[question] = Integer.lowestOneBit(left);
      if (!consistent.narrow(with, open)) {
        continue;
      }
      int here = outcomes.of(with);
      if (here < 0) {
        undecided = true;
        hinge = hinge == null ? outcomes.inTheWay() : hinge;
      } else if (end >= 0 && here != end) {
        return true;
      } else {
        end = here;
      }
    }
    if (hinge == null) {
      return undecided;
    }
    return part(question, box, open, hinge, hinge.mask())
        || part(question, box, open, hinge, ~hinge.mask());
  }

  private boolean part(int question, int[] box, boolean[] open, Hinge hinge, int mask) {
    int[] with = box.clone();
    with[hinge.question()] &= mask;
    return with[hinge.question()] != 0
        && consistent.narrow(with, open)
        && mayDiffer(question, with, open);
  }

  /** What to do now in a situation of the kart that was looked at last, by the bounds. */
  Now now(Situation situation) {
    int[] point = grid.point(situation, advisor.vocabulary());
    return outcomes.now(outcomes.of(point));
  }

  /** How often bounds were too wide to be split to the end: such a question is asked. */
  int givenUp() {
    return givenUp;
  }
}
