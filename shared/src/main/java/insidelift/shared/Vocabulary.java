package insidelift.shared;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The words that rules, files and the dialogue share: every question with its legal values, and
 * every finding. The order of the questions is the order of the job: safety, track, feel, tyres.
 */
public final class Vocabulary {

  /** What stands for "I do not know" as an answer to any question. */
  public static final String UNKNOWN = "unknown";

  private final Map<String, Question> questions = new LinkedHashMap<>();
  private final Map<String, FindingWord> findings = new LinkedHashMap<>();

  private Vocabulary(JsonNode words) {
    words.get("questions").forEach(node -> add(question(node)));
    for (JsonNode node : words.get("findings")) {
      findings.put(text(node, "id"), new FindingWord(text(node, "id"), text(node, "words")));
    }
  }

  /** Reads the vocabulary that this module ships. */
  public static Vocabulary load() {
    try (InputStream in = Vocabulary.class.getResourceAsStream("/insidelift/vocabulary.json")) {
      return new Vocabulary(JsonMapper.builder().build().readTree(in));
    } catch (IOException e) {
      throw new UncheckedIOException("the vocabulary of this build cannot be read", e);
    }
  }

  // Read by hand: binding records by reflection would double the time to the first question.

  private void add(Question question) {
    questions.put(question.id(), question);
  }

  private static Question question(JsonNode node) {
    List<Value> values = new ArrayList<>();
    for (JsonNode value : node.get("values")) {
      values.add(
          new Value(
              text(value, "id"),
              text(value, "words"),
              value.path("complaint").asBoolean(),
              value.path("fault").asBoolean(),
              text(value, "said"),
              value.has("chance") ? value.get("chance").asDouble() : null));
    }
    List<String> notes = new ArrayList<>();
    node.get("notes").forEach(note -> notes.add(note.asText()));
    return new Question(
        text(node, "id"),
        text(node, "ask"),
        text(node, "why"),
        text(node, "group"),
        node.get("effort").asInt(),
        List.copyOf(values),
        List.copyOf(notes),
        node.has("number") ? number(node.get("number")) : null);
  }

  private static NumberAnswer number(JsonNode node) {
    List<Band> bands = new ArrayList<>();
    for (JsonNode band : node.get("bands")) {
      bands.add(
          new Band(band.has("below") ? band.get("below").asDouble() : null, text(band, "value")));
    }
    return new NumberAnswer(
        text(node, "key"),
        text(node, "unit"),
        node.get("min").asDouble(),
        node.get("max").asDouble(),
        List.copyOf(bands));
  }

  private static String text(JsonNode node, String key) {
    return node.has(key) ? node.get(key).asText() : null;
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

  /**
   * The known answer that a value is.
   *
   * @throws IllegalArgumentException if the question or the value is not of this vocabulary
   */
  public Answer answer(String question, String value) {
    Value word =
        question(question)
            .flatMap(known -> known.value(value))
            .orElseThrow(
                () -> new IllegalArgumentException("no such answer: " + question + ": " + value));
    return new Answer(question, value, word.complaint());
  }

  /**
   * One question.
   *
   * @param id its key in files and rules
   * @param ask the question in plain words
   * @param why why it is asked, in a few words
   * @param group which part of the job it belongs to
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
}
