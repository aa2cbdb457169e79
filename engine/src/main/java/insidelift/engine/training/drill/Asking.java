package insidelift.engine.training.drill;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.foresight.NextQuestion;
import insidelift.engine.training.drill.Ladder.Rung;
import insidelift.shared.Answer;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Goes through a drill's questions once more and compares each with the one that the engine would
 * have asked at that point.
 */
public final class Asking {

  /** What stands for the screen of safety checks among questions. */
  public static final String LOOK = "look";

  /**
   * One question that was asked.
   *
   * @param question its id, or {@link #LOOK}
   * @param bits what its answer was expected to tell, for the effort
   * @param better what the engine would have asked; empty where nothing could matter any more
   * @param betterBits the same of that question
   * @param worth the part of the engine's information that it gave, from 0 to 1
   * @param hinted whether a hint had named it
   * @param before what was known before it
   */
  public record Asked(
      String question,
      double bits,
      String better,
      double betterBits,
      double worth,
      boolean hinted,
      Situation before) {}

  private final Vocabulary vocabulary;
  private final NextQuestion next;
  private final Map<String, String> truth = new HashMap<>();
  private final List<Asked> asked = new ArrayList<>();
  private final List<String> leftOut = new ArrayList<>();
  private final boolean[] open;

  Asking(Advisor advisor, NextQuestion next, Drill drill) {
    this.vocabulary = advisor.vocabulary();
    this.next = next;
    for (Answer answer : drill.hidden().hidden().facts(vocabulary)) {
      truth.put(answer.question(), answer.value());
    }
    Situation known = Situation.UNKNOWN.with(drill.hidden().hidden().kart());
    List<DrillMove> moves = drill.moves();
    this.open = new boolean[moves.size()];
    for (int i = 0; i < moves.size(); i++) {
      String question = question(moves.get(i));
      if (question != null) {
        List<DrillMove> before = moves.subList(0, i);
        asked.add(judged(question, known, hinted(before)));
        known = after(known, question);
      } else if (moves.get(i) instanceof DrillMove.Hint) {
        open[i] = !next.worthAsking(known).isEmpty();
      }
    }
    rest(known);
  }

  /** Whether a question could still matter when the hint of that move was taken. */
  boolean openAt(int move) {
    return open[move];
  }

  private static String question(DrillMove move) {
    if (move instanceof DrillMove.Ask ask) {
      return ask.question();
    }
    return move instanceof DrillMove.Look ? LOOK : null;
  }

  /** Whether the last hint before a question named it. */
  private static boolean hinted(List<DrillMove> before) {
    return !before.isEmpty()
        && before.get(before.size() - 1) instanceof DrillMove.Hint
        && Ladder.rung(before.subList(0, before.size() - 1), true) == Rung.QUESTION;
  }

  private Situation after(Situation known, String question) {
    return question.equals(LOOK)
        ? Drill.looked(known, truth, vocabulary)
        : known.with(question, truth.getOrDefault(question, Vocabulary.UNKNOWN));
  }

  private Asked judged(String question, Situation known, boolean hinted) {
    List<Question> worth = next.worthAsking(known);
    if (worth.isEmpty()) {
      return new Asked(question, 0, "", 0, 0, hinted, known);
    }
    String better = name(worth.get(0));
    if (better.equals(question)) {
      return new Asked(question, 0, better, 0, hinted ? 0 : 1, hinted, known);
    }
    double bits = tells(known, question);
    double most = tells(known, better);
    boolean matters = worth.stream().anyMatch(open -> name(open).equals(question));
    double part = most > 0 ? Math.min(1, bits / most) : matters ? 1 : 0;
    return new Asked(question, bits, better, most, hinted ? 0 : part, hinted, known);
  }

  private static String name(Question question) {
    return question.safety() ? LOOK : question.id();
  }

  private double tells(Situation known, String question) {
    String id =
        question.equals(LOOK)
            ? vocabulary.questions().stream()
                .filter(Question::safety)
                .map(Question::id)
                .filter(one -> known.answer(one).isEmpty() && !known.declined().contains(one))
                .findFirst()
                .orElse("")
            : question;
    return id.isEmpty() ? 0 : next.tells(known, id);
  }

  /** Asks on as the engine would, until nothing can matter any more. */
  private void rest(Situation last) {
    Situation known = last;
    List<Question> worth = next.worthAsking(known);
    while (!worth.isEmpty()) {
      String question = name(worth.get(0));
      leftOut.add(question);
      known = after(known, question);
      worth = next.worthAsking(known);
    }
  }

  List<Asked> asked() {
    return List.copyOf(asked);
  }

  List<String> leftOut() {
    return List.copyOf(leftOut);
  }

  double economy() {
    int all = asked.size() + leftOut.size();
    return all == 0 ? 1 : asked.stream().mapToDouble(Asked::worth).sum() / all;
  }
}
