package insidelift.shared.situation;

import insidelift.shared.Answer;
import insidelift.shared.Vocabulary;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Everything that is known before advice is given: the answers, by question, and the kart. A
 * question that is not in the map is unknown. Numbers that were given (power in kW, minutes left)
 * are kept by question beside the words they count as. The questions that were answered with
 * "unknown" are kept too: they say nothing, but they need not be asked again. The runs before are
 * the newest {@link Driven#KEPT} at most, newest last.
 */
public record Situation(
    Map<String, String> answers,
    Map<String, Double> numbers,
    Kart kart,
    Set<String> declined,
    List<Driven> history) {

  /** Nothing known at all. */
  public static final Situation UNKNOWN = new Situation(Map.of(), Map.of(), Kart.UNKNOWN);

  /** Takes copies of the maps, in their order. */
  public Situation {
    answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
    numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
    declined = Collections.unmodifiableSet(new LinkedHashSet<>(declined));
    history = List.copyOf(history);
  }

  /** A situation of which no run before is known. */
  public Situation(
      Map<String, String> answers, Map<String, Double> numbers, Kart kart, Set<String> declined) {
    this(answers, numbers, kart, declined, List.of());
  }

  /** A situation in which every question was either answered or not asked. */
  public Situation(Map<String, String> answers, Map<String, Double> numbers, Kart kart) {
    this(answers, numbers, kart, Set.of());
  }

  /** A situation of answers alone. */
  public static Situation of(Map<String, String> answers) {
    return new Situation(answers, Map.of(), Kart.UNKNOWN);
  }

  /** The answer to a question, if it is known. */
  public Optional<String> answer(String question) {
    return Optional.ofNullable(answers.get(question));
  }

  /** The same situation with one more answer, or another one; {@code unknown} takes it out. */
  public Situation with(String question, String value) {
    Map<String, String> changed = new LinkedHashMap<>(answers);
    Map<String, Double> left = new LinkedHashMap<>(numbers);
    left.remove(question);
    Set<String> open = new LinkedHashSet<>(declined);
    if (value.equals(Vocabulary.UNKNOWN)) {
      changed.remove(question);
      open.add(question);
    } else {
      changed.put(question, value);
      open.remove(question);
    }
    return new Situation(changed, left, kart, open, history);
  }

  /** The same situation with a number for a question, as the word it counts as. */
  public Situation with(Vocabulary.Question question, double number) {
    Situation changed = with(question.id(), question.number().valueFor(number));
    Map<String, Double> more = new LinkedHashMap<>(changed.numbers);
    more.put(question.id(), number);
    return new Situation(changed.answers, more, kart, changed.declined, history);
  }

  /**
   * The same with what follows from what was told, and without what contradicts it: a number counts
   * as its word, a kart with gears is of high power whatever its kilowatts and whatever was said of
   * it, and readings that differ are not equal because somebody said so before.
   *
   * @param words asked only where a number was told
   */
  public Situation settled(Supplier<Vocabulary> words) {
    Map<String, String> all = new LinkedHashMap<>(answers);
    Set<String> open = new LinkedHashSet<>(declined);
    for (Map.Entry<String, Double> told : numbers.entrySet()) {
      Vocabulary.Question question = words.get().question(told.getKey()).orElseThrow();
      all.put(question.id(), question.number().valueFor(told.getValue()));
    }
    if ("gears".equals(all.get("gearbox"))) {
      all.put("power", "high");
      open.remove("power");
    }
    boolean differ =
        !kart.camber().map(Sides::equal).orElse(true)
            || !kart.caster().map(Sides::equal).orElse(true);
    if (differ && "equal".equals(all.get("readings"))) {
      all.put("readings", "differ");
    }
    return new Situation(all, numbers, kart, open, history);
  }

  /** The same answers for another kart. */
  public Situation with(Kart other) {
    return new Situation(answers, numbers, other, declined, history);
  }

  /** The same situation after other runs. */
  public Situation after(List<Driven> runs) {
    return new Situation(answers, numbers, kart, declined, runs);
  }

  /** The same situation with what another one answers on top; the kart and its runs stay. */
  public Situation over(Situation more) {
    Map<String, String> allAnswers = new LinkedHashMap<>(answers);
    Map<String, Double> allNumbers = new LinkedHashMap<>(numbers);
    Set<String> open = new LinkedHashSet<>(declined);
    more.answers.keySet().forEach(allNumbers::remove);
    more.declined.forEach(allNumbers::remove);
    more.declined.forEach(allAnswers::remove);
    open.removeAll(more.answers.keySet());
    open.addAll(more.declined);
    allAnswers.putAll(more.answers);
    allNumbers.putAll(more.numbers);
    return new Situation(allAnswers, allNumbers, kart, open, history);
  }

  /**
   * The facts that rules read: the answers, and what the kart's own readings say about its two
   * sides.
   */
  public List<Answer> facts(Vocabulary vocabulary) {
    Map<String, String> all = answers;
    if (kart.camber().isPresent() || kart.caster().isPresent()) {
      boolean equal =
          kart.camber().map(Sides::equal).orElse(true)
              && kart.caster().map(Sides::equal).orElse(true);
      all = new LinkedHashMap<>(answers);
      all.put("readings", equal ? "equal" : "differ");
    }
    List<Answer> facts = new ArrayList<>(all.size());
    all.forEach((question, value) -> facts.add(vocabulary.answer(question, value)));
    return Collections.unmodifiableList(facts);
  }
}
