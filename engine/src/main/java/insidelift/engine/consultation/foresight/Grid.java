package insidelift.engine.consultation.foresight;

import insidelift.shared.Answer;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.Vocabulary.Value;
import insidelift.shared.situation.Situation;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The vocabulary as numbers: every question a place, every state of a question one bit. Bit 0 is
 * "not known", bit n the n-th value. A box is one such set of bits for each question: all
 * situations whose states lie in it. That is what bounds are computed on.
 */
public final class Grid {

  /** The bit of a question that is not known. */
  public static final int ABSENT = 1;

  private final List<Question> questions;
  private final Map<String, Integer> places = new HashMap<>();
  private final int[] full;
  private final int[] complaints;

  /** A grid of those words. */
  public Grid(Vocabulary vocabulary) {
    this.questions = vocabulary.questions();
    this.full = new int[questions.size()];
    this.complaints = new int[questions.size()];
    for (int q = 0; q < full.length; q++) {
      Question question = questions.get(q);
      places.put(question.id(), q);
      full[q] = (1 << (question.values().size() + 1)) - 1;
      for (int v = 0; v < question.values().size(); v++) {
        complaints[q] |= question.values().get(v).complaint() ? 1 << (v + 1) : 0;
      }
    }
  }

  /** How many questions there are. */
  public int size() {
    return full.length;
  }

  /** The question at a place. */
  public Question question(int place) {
    return questions.get(place);
  }

  /** The place of a question; -1 for a question that is not of this vocabulary. */
  public int place(String question) {
    return places.getOrDefault(question, -1);
  }

  /** All states of a question. */
  public int full(int place) {
    return full[place];
  }

  /** The states of a question that complain. */
  public int complaints(int place) {
    return complaints[place];
  }

  /** The states of a question that are among these values. */
  public int mask(int place, List<String> values) {
    int mask = 0;
    List<Value> known = questions.get(place).values();
    for (int v = 0; v < known.size(); v++) {
      mask |= values.contains(known.get(v).id()) ? 1 << (v + 1) : 0;
    }
    return mask;
  }

  int mask(String question, String... values) {
    return mask(place(question), List.of(values));
  }

  /**
   * All completions of a situation: what is known stays, what was answered with "unknown" stays
   * unknown, and the rest is open.
   */
  int[] box(Situation situation, Vocabulary vocabulary, Set<String> skipped) {
    int[] box = full.clone();
    skipped.forEach(question -> box[place(question)] = ABSENT);
    for (Answer answer : situation.facts(vocabulary)) {
      box[place(answer.question())] = mask(answer.question(), answer.value());
    }
    return box;
  }

  /** A situation as a box of single states: whatever is open is not known. */
  int[] point(Situation situation, Vocabulary vocabulary) {
    int[] point = nothing();
    for (Answer answer : situation.facts(vocabulary)) {
      point[place(answer.question())] = mask(answer.question(), answer.value());
    }
    return point;
  }

  /** All situations. */
  public int[] all() {
    return full.clone();
  }

  /** The situation in which nothing is known. */
  public int[] nothing() {
    int[] point = new int[full.length];
    Arrays.fill(point, ABSENT);
    return point;
  }

  /** The situation that a box of single states is, on the kart and after the runs of another. */
  public Situation situation(int[] point, Situation kart) {
    Map<String, String> answers = new LinkedHashMap<>();
    for (int q = 0; q < point.length; q++) {
      if (point[q] != ABSENT) {
        answers.put(
            questions.get(q).id(),
            questions.get(q).values().get(Integer.numberOfTrailingZeros(point[q]) - 1).id());
      }
    }
    Map<String, Double> numbers = new LinkedHashMap<>(kart.numbers());
    numbers.keySet().removeIf(id -> !kart.answer(id).equals(Optional.ofNullable(answers.get(id))));
    return new Situation(answers, numbers, kart.kart(), Set.of(), kart.history());
  }
}
