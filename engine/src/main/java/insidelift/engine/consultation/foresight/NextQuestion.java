package insidelift.engine.consultation.foresight;

import insidelift.engine.consultation.decision.Decider;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.index.Known;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.Truth;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Chooses what to ask next. The safety checks come first, all together. After them a question is
 * worth asking only if the advice stands on it, or if in some completion of the other answers its
 * answer changes what to do now: in one of those drawn by chance, or in one made so that a rule
 * that reads it comes true. The best is the one whose answer tells most about what to do now for
 * the effort of giving it (J. de Kleer and B. C. Williams, 1987: one step ahead). Not for several
 * threads.
 */
public final class NextQuestion {

  /** What is still to be asked. */
  public record Outlook(List<Question> open, int atMost, int spared) {}

  /** Completions drawn for one choice: enough to tell the best question from the second best. */
  private static final int DRAWN = 96;

  /** Completions in which each question is tried for a difference. */
  private static final int TRIED = 8;

  /** Choices kept: going back and forth then costs nothing. */
  private static final int KEPT = 512;

  private final Decider decider;
  private final Grid grid;
  private final Consistent consistent;
  private final OpenQuestions open;
  private final Completions completions;
  private final Witness witness;
  private final Set<String> thoughtOf;
  private final Map<List<Object>, Outlook> chosen =
      new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<List<Object>, Outlook> eldest) {
          return size() > KEPT;
        }
      };

  /** Questions for a decider. */
  public NextQuestion(Decider decider) {
    this.decider = new Decider(decider.vocabulary(), decider.rules().plain());
    this.grid = new Grid(decider.vocabulary());
    this.consistent = new Consistent(grid);
    this.open = new OpenQuestions(decider.vocabulary(), decider.rules().index());
    this.completions = new Completions(grid, consistent, new Chances(grid), DRAWN);
    this.witness = new Witness(decider.rules().index(), grid);
    this.thoughtOf =
        decider.rules().index().rules().stream()
            .filter(rule -> !rule.plain())
            .flatMap(rule -> rule.premises().stream())
            .flatMap(premise -> OpenQuestions.questions(premise).stream())
            .collect(Collectors.toSet());
    // A change that was made and what came of it are told apart from the answers.
    thoughtOf.addAll(List.of("last-change", "last-effect", "time-left"));
  }

  /**
   * The questions still worth asking, the best first.
   *
   * @param situation what is known; what was answered with "unknown" is not asked again
   */
  public List<Question> worthAsking(Situation situation) {
    return outlook(situation).open();
  }

  /** What is still to be asked in a situation, and how much. */
  public Outlook outlook(Situation situation) {
    // The questions that were declined are part of what is known.
    return chosen.computeIfAbsent(
        List.of(
            situation.answers(),
            situation.numbers(),
            situation.declined(),
            situation.kart(),
            situation.history()),
        key -> new Choice(situation).outlook());
  }

  /**
   * What the answer to a question is expected to tell about what to do now, in bits, for the effort
   * of giving it. The safety checks are one screen and are asked as one: whether it shows a fault.
   *
   * @param situation what is known
   * @param question a question's id; any of the safety checks stands for the whole screen
   * @throws IllegalArgumentException if there is no such question
   */
  public double tells(Situation situation, String question) {
    int place = grid.place(question);
    if (place < 0) {
      throw new IllegalArgumentException("there is no question \"" + question + '"');
    }
    Choice choice = new Choice(situation);
    return choice.open[place] ? choice.telling().bits(place) : 0;
  }

  /** One choice. */
  private final class Choice {

    private final int[] box;
    private final int[] now;
    private final boolean[] open;
    private final int[] all;
    private final Set<IndexedRule> live;
    private final List<int[]> drawn;
    private final Outcomes outcomes;

    Choice(Situation situation) {
      this.box = grid.box(situation, decider.vocabulary(), situation.declined());
      this.now = box.clone();
      this.open = new boolean[box.length];
      for (int q = 0; q < box.length; q++) {
        // A known answer is one state without the bit for "not known".
        open[q] = box[q] == grid.full(q);
        now[q] = open[q] ? Grid.ABSENT : box[q];
      }
      this.all = box.clone();
      consistent.narrow(all, open);
      Known known = new Boxed(grid, all, new OpenAnswers(situation, decider.vocabulary()));
      this.live =
          NextQuestion.this.open.live(known).stream()
              .filter(rule -> rule.in(known) == Truth.OPEN)
              .collect(Collectors.toSet());
      this.drawn = completions.all(box, open);
      this.outcomes = new Outcomes(decider, grid, situation);
    }

    ExpectedInformation telling() {
      return new ExpectedInformation(grid, outcomes, drawn);
    }

    Outlook outlook() {
      List<Question> safety = new ArrayList<>();
      int left = 0;
      for (int q = 0; q < box.length; q++) {
        left += open[q] ? 1 : 0;
        if (open[q] && grid.question(q).safety()) {
          safety.add(grid.question(q));
        }
      }
      boolean fault = outcomes.fault(now);
      List<Integer> matter = fault ? new ArrayList<>() : read();
      List<Integer> best = best(matter);
      // What is asked next must matter; what comes later is looked at when its turn comes. The
      // advice stands on what comes first, whatever it turns out to be.
      while (!best.isEmpty() && !stoodOn(best.get(0)) && !matters(best.get(0))) {
        matter.remove(best.remove(0));
      }
      if (best.isEmpty()) {
        matter.removeIf(q -> !stoodOn(q) && !matters(q));
        // What makes no sense yet may still matter: then what it hangs on is asked.
        matter.stream()
            .flatMap(q -> consistent.hangsOn(q).stream())
            .distinct()
            .filter(q -> open[q] && consistent.askable(q, now, all))
            .forEach(best::add);
        matter.addAll(best);
      }
      List<Question> questions = new ArrayList<>(safety);
      best.forEach(q -> questions.add(grid.question(q)));
      // The safety checks are one screen.
      int atMost = matter.size() + (safety.isEmpty() ? 0 : 1);
      return new Outlook(
          List.copyOf(questions), atMost, Math.max(0, left - matter.size() - safety.size()));
    }

    /** The open questions, without the safety checks, that a rule reads which can still matter. */
    private List<Integer> read() {
      Set<String> read =
          live.stream()
              .flatMap(rule -> rule.premises().stream())
              .flatMap(premise -> OpenQuestions.questions(premise).stream())
              .collect(Collectors.toSet());
      read.addAll(thoughtOf);
      List<Integer> places = new ArrayList<>();
      for (int q = 0; q < box.length; q++) {
        if (open[q]
            && (grid.question(q).first() || read.contains(grid.question(q).id()))
            && !grid.question(q).safety()
            && (all[q] & ~Grid.ABSENT) != 0) {
          places.add(q);
        }
      }
      return places;
    }

    /** The questions that make sense now, by what they tell for their effort. */
    private List<Integer> best(List<Integer> matter) {
      List<Integer> askable = new ArrayList<>();
      for (int q : matter) {
        if (consistent.askable(q, now, all)) {
          askable.add(q);
        }
      }
      if (askable.size() > 1) {
        ExpectedInformation telling = telling();
        double[] scores = new double[grid.size()];
        askable.forEach(q -> scores[q] = telling.bits(q));
        askable.sort(
            Comparator.comparing((Integer q) -> !grid.question(q).first())
                .thenComparing(q -> grid.question(q).first() ? q : 0)
                .thenComparingDouble(q -> -scores[q]));
      }
      return askable;
    }

    /** Whether it is to be known before a lever moves, and one may move. */
    private boolean stoodOn(int question) {
      return grid.question(question).first()
          && (outcomes.moves(now) || drawn.stream().anyMatch(outcomes::moves));
    }

    /** Whether some completion that was tried makes this answer change what to do now. */
    private boolean matters(int question) {
      return drawn.stream().limit(TRIED).anyMatch(point -> differs(question, point))
          || witness
              .of(grid.question(question).id(), live, all, now)
              .anyMatch(
                  point ->
                      point[question] == Grid.ABSENT
                          ? differs(question, point)
                          : outcomes.of(point) != outcomes.of(without(question, point)));
    }

    private int[] without(int question, int[] point) {
      int[] rest = point.clone();
      rest[question] = Grid.ABSENT;
      return rest;
    }

    /** Whether this answer changes what to do now in one completion. */
    private boolean differs(int question, int[] point) {
      int first = -1;
      for (int left = grid.full(question); left != 0; left &= left - 1) {
        int[] other = point.clone();
        other[question] = Integer.lowestOneBit(left);
        if ((consistent.sensible(question, other) & other[question]) != 0) {
          for (int q = 0; q < other.length; q++) {
            boolean senseless = (consistent.sensible(q, other) & other[q]) == 0;
            other[q] = open[q] && q != question && senseless ? Grid.ABSENT : other[q];
          }
          int end = outcomes.of(other);
          if (first >= 0 && end != first) {
            return true;
          }
          first = end;
        }
      }
      return false;
    }
  }
}
