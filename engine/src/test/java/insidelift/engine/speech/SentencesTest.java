package insidelift.engine.speech;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * How many sentences are understood as meant: those of this build, or with {@code -Dsentences=FILE}
 * others. What went wrong stands in {@code target/sentences.txt}.
 */
class SentencesTest {

  private static final String FILE = "sentences";

  /** What is reached of the 400 known sentences, and of the other ways to say an answer. */
  private static final int KNOWN_RIGHT = 395;

  private static final int KNOWN_MISREAD = 2;

  private static final int OWN_RIGHT = 470;

  /** kW are told with two decimals. */
  private static final double CLOSE = 0.02;

  private enum Mark {
    RIGHT,
    PART,
    REFUSED,
    MISREAD
  }

  private static JsonNode known(String name) throws IOException {
    try (InputStream in = SentencesTest.class.getResourceAsStream("/insidelift/" + name)) {
      return JsonMapper.builder().build().readTree(in);
    }
  }

  @Test
  void most_sentences_are_understood_and_hardly_any_is_turned_round() throws IOException {
    String file = System.getProperty(FILE, "");
    JsonNode sentences =
        file.isEmpty()
            ? known("sentences-known.json")
            : JsonMapper.builder().build().readTree(Path.of(file).toFile());
    Map<Mark, Integer> count = count(sentences, Path.of("target", "sentences.txt"));
    if (file.isEmpty()) {
      assertThat(count.getOrDefault(Mark.RIGHT, 0)).isGreaterThanOrEqualTo(KNOWN_RIGHT);
      assertThat(count.getOrDefault(Mark.MISREAD, 0)).isLessThanOrEqualTo(KNOWN_MISREAD);
    }
  }

  /** Other ways to say each answer, by those who look after the words. */
  @Test
  void other_ways_to_say_an_answer_are_never_turned_round() throws IOException {
    Map<Mark, Integer> count =
        count(known("sentences-own.json"), Path.of("target", "sentences-own.txt"));

    assertThat(count.getOrDefault(Mark.MISREAD, 0)).isZero();
    assertThat(count.getOrDefault(Mark.RIGHT, 0)).isGreaterThanOrEqualTo(OWN_RIGHT);
  }

  private static Map<Mark, Integer> count(JsonNode sentences, Path report) throws IOException {
    Map<Mark, Integer> count = new EnumMap<>(Mark.class);
    List<String> lines = new ArrayList<>();
    for (JsonNode sentence : sentences) {
      Heard heard = Heard.hear(sentence.get("said").asText());
      Mark mark = mark(sentence, heard);
      count.merge(mark, 1, Integer::sum);
      if (mark != Mark.RIGHT) {
        lines.add(mark + ": " + sentence.get("said").asText() + " -> " + heard);
      }
    }
    lines.add(0, count.toString());
    Files.createDirectories(report.getParent());
    Files.write(report, lines);
    return count;
  }

  private static Mark mark(JsonNode sentence, Heard heard) {
    Map<String, String> meant = new TreeMap<>();
    Map<String, String> got = new TreeMap<>();
    sentence
        .path("answers")
        .properties()
        .forEach(e -> meant.put(e.getKey(), e.getValue().asText()));
    heard.proposed().forEach(one -> got.put(one.question(), one.value()));
    for (Map.Entry<String, JsonNode> number : sentence.path("numbers").properties()) {
      List<Double> values = heard.numbers().get(number.getKey());
      meant.put("#" + number.getKey(), "as told");
      if (values != null) {
        got.put("#" + number.getKey(), same(number.getValue(), values) ? "as told" : "other");
      }
    }
    heard.numbers().keySet().forEach(name -> got.putIfAbsent("#" + name, "not told"));
    Set<String> asks = new TreeSet<>();
    sentence.path("ask").forEach(ask -> asks.add(ask.asText()));
    if (!got.entrySet().stream().allMatch(e -> e.getValue().equals(meant.get(e.getKey())))) {
      return Mark.MISREAD;
    }
    boolean leftOut = !sentence.path("leftOut").asBoolean() || !heard.leftOut().isEmpty();
    if (got.equals(meant) && asks.equals(new TreeSet<>(heard.asks())) && leftOut) {
      return Mark.RIGHT;
    }
    return got.isEmpty() && (heard.asks().isEmpty() || !meant.isEmpty()) ? Mark.REFUSED : Mark.PART;
  }

  private static boolean same(JsonNode meant, List<Double> values) {
    List<Double> expected = new ArrayList<>();
    if (meant.isArray()) {
      meant.forEach(value -> expected.add(value.asDouble()));
    } else {
      expected.add(meant.asDouble());
    }
    for (int at = 0; at < expected.size(); at++) {
      if (values.size() != expected.size() || Math.abs(values.get(at) - expected.get(at)) > CLOSE) {
        return false;
      }
    }
    return true;
  }
}
