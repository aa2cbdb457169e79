package insidelift.engine.consultation;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.shared.Degrees;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.OtherLever;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What the advice comes to beside what each source says of the same situation. The table in the
 * knowledge notes is written from here: {@code -Dsources.record=true} writes it anew.
 */
class SourcesComparedTest {

  private static final Path TABLE = Path.of("..", "knowledge-notes", "sources-compared.md");
  private static final Advisor ADVISOR = Advisor.load();

  /** How the advice stands to a source. */
  private enum Verdict {
    AGREES("agrees"),
    NAMES("names it too"),
    DISPUTE("shows the dispute"),
    DIFFERS("differs");

    private final String words;

    Verdict(String words) {
      this.words = words;
    }
  }

  private record Row(
      String source,
      String situation,
      List<String> says,
      List<String> ours,
      Verdict verdict,
      String why) {
    String line() {
      return "| %s | %s | %s | %s | %s |"
          .formatted(
              source,
              situation,
              String.join(", ", says),
              ours.isEmpty() ? "nothing moved" : String.join(", ", ours),
              verdict.words + (why.isEmpty() ? "" : ": " + why));
    }
  }

  private static List<Row> rows() throws IOException {
    try (InputStream in =
        SourcesComparedTest.class.getResourceAsStream("/insidelift/sources-say.json")) {
      List<Row> rows = new ArrayList<>();
      for (JsonNode said : new ObjectMapper().readTree(in)) {
        rows.add(row(said));
      }
      return rows;
    }
  }

  private static Row row(JsonNode said) {
    Map<String, String> answers = new LinkedHashMap<>();
    said.get("answers")
        .properties()
        .forEach(one -> answers.put(one.getKey(), one.getValue().asText()));
    Situation situation =
        Situation.of(answers)
            .with(
                Kart.UNKNOWN.with(
                    Sides.both(Degrees.of(said.get("camber").asDouble())),
                    Sides.both(Degrees.of(said.get("caster").asDouble()))));
    Advice advice = ADVISOR.advise(situation);
    List<String> says = new ArrayList<>();
    said.get("says").forEach(one -> says.add(one.asText()));
    Set<String> first =
        Stream.concat(
                advice.alternatives().stream().filter(OtherLever::leads).map(OtherLever::move),
                advice.suggestions().stream()
                    .filter(Suggestion::first)
                    .map(SourcesComparedTest::move))
            .collect(Collectors.toCollection(LinkedHashSet::new));
    if (advice.changeover() != null) {
      advice.changeover().jobs().forEach(job -> first.add(job.lever() + " kit"));
    }
    Set<String> named =
        Stream.concat(
                advice.alternatives().stream().map(OtherLever::move),
                advice.suggestions().stream().map(SourcesComparedTest::move))
            .collect(Collectors.toSet());
    return new Row(
        said.get("source").asText(),
        said.get("situation").asText(),
        says,
        first.stream().filter(move -> !move.endsWith(" kit")).toList(),
        verdict(says, first, named, advice),
        said.path("why").asText());
  }

  private static Verdict verdict(
      List<String> says, Set<String> first, Set<String> named, Advice advice) {
    String wanted = says.get(0);
    String lever = wanted.substring(0, wanted.indexOf(' '));
    boolean still = first.stream().noneMatch(move -> move.startsWith(lever + ' '));
    if (first.contains(wanted) || (wanted.endsWith(" hold") && still)) {
      return Verdict.AGREES;
    }
    if (says.stream().anyMatch(one -> named.contains(one) || first.contains(one))) {
      return Verdict.NAMES;
    }
    return disputed(lever, advice) ? Verdict.DISPUTE : Verdict.DIFFERS;
  }

  private static boolean disputed(String lever, Advice advice) {
    return advice.suggestions().stream()
            .anyMatch(one -> one.lever().id().equals(lever) && !one.disputes().isEmpty())
        || ADVISOR
            .vocabulary()
            .lever(lever)
            .filter(word -> ADVISOR.notes().note(word.note()).disputed())
            .isPresent();
  }

  private static String move(Suggestion suggestion) {
    return suggestion.lever().id() + " " + suggestion.direction().id();
  }

  private static String table(List<Row> rows) {
    StringBuilder table =
        new StringBuilder(
            """
            # Our advice beside each source

            Written by the build from what each source was seen to say. In the columns of moves "more" is
            wider, further out, stiffer, longer, higher or toward positive; "kit" is a part of the
            changeover. The kart stands at zero camber and neutral caster unless it is said.

            | source | situation | it says | ours first | and so it |
            |---|---|---|---|---|
            """);
    rows.forEach(row -> table.append(row.line()).append('\n'));
    table.append('\n');
    for (Verdict verdict : Verdict.values()) {
      table.append(
          "- %s: %d of %d\n"
              .formatted(
                  verdict.words,
                  rows.stream().filter(row -> row.verdict() == verdict).count(),
                  rows.size()));
    }
    return table.toString();
  }

  @Test
  void theTableOfTheNotesIsWhatTheAdviceComesTo() throws IOException {
    String table = table(rows());
    if (Boolean.getBoolean("sources.record")) {
      Files.writeString(TABLE, table);
    }
    assertThat(Files.readString(TABLE)).isEqualTo(table);
  }

  @Test
  void everySourceIsInTheBibliography() throws IOException {
    assertThat(rows())
        .allSatisfy(row -> assertThat(ADVISOR.notes().bibliography()).containsKey(row.source()));
  }

  /** Whoever differs from a source, or from its camp, says why. */
  @Test
  void whereTheAdviceDoesNotGoWithASourceItSaysWhy() throws IOException {
    assertThat(rows())
        .filteredOn(row -> row.verdict() == Verdict.DIFFERS || row.verdict() == Verdict.DISPUTE)
        .isNotEmpty()
        .allSatisfy(row -> assertThat(row.why()).as(row.line()).isNotBlank());
    assertThat(rows().stream().filter(row -> row.verdict() == Verdict.AGREES).count())
        .isGreaterThan(rows().size() / 2);
  }
}
