package insidelift.shared;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The words that rules, files and the dialogue share: every question with its legal values, and
 * every finding. The order of the questions is the order of the job: safety, track, feel, tyres.
 */
public final class Vocabulary {

  /** What stands for "I do not know" as an answer to any question. */
  public static final String UNKNOWN = "unknown";

  private final Map<String, Question> questions = new LinkedHashMap<>();
  private final Map<String, FindingWord> findings = new LinkedHashMap<>();
  private final Map<String, LeverWord> levers = new LinkedHashMap<>();

  /** Every answer that was asked for, by question and value: the same one each time. */
  private final Map<String, Map<String, Answer>> answers = new ConcurrentHashMap<>();

  private Vocabulary(ShippedJson words) {
    words.objects("questions").forEach(one -> add(question(one)));
    for (ShippedJson one : words.objects("findings")) {
      findings.put(one.text("id"), new FindingWord(one.text("id"), one.text("words")));
    }
    for (ShippedJson one : words.objects("levers")) {
      levers.put(
          one.text("id"),
          new LeverWord(
              one.text("id"),
              one.text("note"),
              one.text("more"),
              one.text("less"),
              one.text("most"),
              one.text("least"),
              one.text("wet"),
              one.text("dry"),
              one.text("who")));
    }
  }

  /** Reads the vocabulary that this module ships. */
  public static Vocabulary load() {
    return new Vocabulary(ShippedJson.read(Vocabulary.class, "/insidelift/vocabulary.json"));
  }

  private void add(Question question) {
    questions.put(question.id(), question);
  }

  private static Question question(ShippedJson one) {
    List<Value> values = new ArrayList<>();
    for (ShippedJson value : one.objects("values")) {
      values.add(
          new Value(
              value.text("id"),
              value.text("words"),
              value.flag("complaint"),
              value.flag("fault"),
              value.text("said"),
              value.number("chance")));
    }
    return new Question(
        one.text("id"),
        one.text("ask"),
        one.text("why"),
        one.text("group"),
        one.flag("first"),
        one.flag("stays"),
        one.number("effort").intValue(),
        List.copyOf(values),
        one.texts("notes"),
        one.has("number") ? number(one.at("number")) : null);
  }

  private static NumberAnswer number(ShippedJson one) {
    List<Band> bands = new ArrayList<>();
    for (ShippedJson band : one.objects("bands")) {
      bands.add(new Band(band.number("below"), band.text("value")));
    }
    return new NumberAnswer(
        one.text("key"),
        one.text("unit"),
        one.number("min"),
        one.number("max"),
        List.copyOf(bands));
  }

  /** All questions, in the order of the job. */
  public List<Question> questions() {
    return List.copyOf(questions.values());
  }

  /** The question of that id, if there is one. */
  public Optional<Question> question(String id) {
    return Optional.ofNullable(questions.get(id));
  }

  /** All findings. */
  public List<FindingWord> findings() {
    return List.copyOf(findings.values());
  }

  /** The finding of that id, if there is one. */
  public Optional<FindingWord> finding(String id) {
    return Optional.ofNullable(findings.get(id));
  }

  /** The levers beside camber and caster, the quickest first. */
  public List<LeverWord> levers() {
    return List.copyOf(levers.values());
  }

  /** The lever beside camber and caster of that id, if there is one. */
  public Optional<LeverWord> lever(String id) {
    return Optional.ofNullable(levers.get(id));
  }

  /**
   * The known answer that a value is.
   *
   * @throws IllegalArgumentException if the question or the value is not of this vocabulary
   */
  public Answer answer(String question, String value) {
    Map<String, Answer> met = answers.get(question);
    Answer answer = met == null ? null : met.get(value);
    return answer == null ? meet(question, value) : answer;
  }

  private Answer meet(String question, String value) {
    Value word =
        question(question)
            .flatMap(known -> known.value(value))
            .orElseThrow(
                () -> new IllegalArgumentException("no such answer: " + question + ": " + value));
    return answers
        .computeIfAbsent(question, first -> new ConcurrentHashMap<>())
        .computeIfAbsent(value, first -> new Answer(question, value, word.complaint()));
  }

  /**
   * One question.
   *
   * @param id its key in files and rules
   * @param ask the question in plain words
   * @param why why it is asked, in a few words
   * @param group which part of the job it belongs to
   * @param first whether it is asked before all others and before a lever is moved: the advice
   *     stands on it
   * @param stays whether its answer is of the kart or the driver, and not of one run
   * @param effort what answering costs: 1 remember or look, 2 look closely, 3 measure, 5 measure
   *     with an instrument not everybody has
   * @param values its legal values
   * @param notes the notes that explain it, the first one being its own
   * @param number how a number may answer it, if it may
   */
  public record Question(
      String id,
      String ask,
      String why,
      String group,
      boolean first,
      boolean stays,
      int effort,
      List<Value> values,
      List<String> notes,
      NumberAnswer number) {

    /** The value of that id, if there is one. */
    public Optional<Value> value(String valueId) {
      return values.stream().filter(value -> value.id().equals(valueId)).findFirst();
    }

    /** Whether it is asked on the one screen of safety checks. */
    public boolean safety() {
      return group.equals("safety");
    }

    /** Whether only a number answers it. */
    public boolean numberOnly() {
      return number != null && number.key().equals(id);
    }
  }

  /**
   * A legal value.
   *
   * @param id its word in files and rules
   * @param words the value in plain words
   * @param complaint whether it is something to complain of
   * @param fault whether it is a fault or must be set first
   * @param said the fault as a statement, for the screen of safety checks; null where it has none
   * @param chance how often it is met among the answers, where they are far from alike: our guess,
   *     which only orders questions; null for no guess
   */
  public record Value(
      String id, String words, boolean complaint, boolean fault, String said, Double chance) {}

  /**
   * How a number answers a question.
   *
   * @param key the key of the number in files
   * @param unit its unit, in words
   * @param min the least legal number
   * @param max the greatest legal number
   * @param bands the values by size, in rising order; the last one has no upper end
   */
  public record NumberAnswer(String key, String unit, double min, double max, List<Band> bands) {

    /** The value whose band holds the number. */
    public String valueFor(double number) {
      for (Band band : bands) {
        if (band.below() == null || number < band.below()) {
          return band.value();
        }
      }
      throw new IllegalStateException("the last band of " + key + " must have no upper end");
    }
  }

  /**
   * A band of numbers that counts as one value.
   *
   * @param below the number at which the band ends, not included; null for no end
   * @param value the value
   */
  public record Band(Double below, String value) {}

  /**
   * A finding.
   *
   * @param id its key in rules
   * @param words the finding in plain words
   */
  public record FindingWord(String id, String words) {}

  /**
   * A lever beside camber and caster.
   *
   * @param id its key in rules and files
   * @param note the note on it
   * @param more one step the one way, in words; null where there is no such way
   * @param less one step the other way
   * @param most how it stands when it can go no further toward more, in a word; null where it has
   *     no end
   * @param least how it stands when it can go no further toward less
   * @param wet what is done to it on the way from a dry track to a wet one; null for nothing
   * @param dry what is done to it on the way back
   * @param who may do it: {@code novice} for a careful one, {@code mechanic} for someone who has
   *     done it before, {@code expert} for an experienced tuner
   */
  public record LeverWord(
      String id,
      String note,
      String more,
      String less,
      String most,
      String least,
      String wet,
      String dry,
      String who) {

    /** One step that way, in words. */
    public String step(Direction way) {
      return way == Direction.MORE ? more : less;
    }
  }
}
