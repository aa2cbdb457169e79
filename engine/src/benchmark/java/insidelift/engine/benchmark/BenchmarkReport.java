package insidelift.engine.benchmark;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** Makes a page of what was measured: every figure, and the ratio that matters. */
public final class BenchmarkReport {

  /** What one whole decision may take on one warm thread, in microseconds. */
  private static final double EXPECTED = 100;

  private record Score(String name, String with, double value, double error, String unit) {
    String key() {
      return (name + " " + with).strip();
    }
  }

  private final List<Score> scores = new ArrayList<>();
  private final StringBuilder page = new StringBuilder();
  private final JsonNode last;

  private BenchmarkReport(JsonNode results, JsonNode last) {
    this.last = last;
    for (JsonNode result : results) {
      String full = result.get("benchmark").asText();
      List<String> with = new ArrayList<>();
      result.path("params").properties().forEach(one -> with.add(one.getValue().asText()));
      JsonNode metric = result.get("primaryMetric");
      scores.add(
          new Score(
              full.substring(full.lastIndexOf('.') + 1),
              String.join(" ", with),
              metric.get("score").asDouble(),
              metric.get("scoreError").asDouble(),
              metric.get("scoreUnit").asText()));
    }
  }

  /**
   * Reads the results and the figures that were kept last, writes the page: the file of results, of
   * the page, of the kept figures. The new figures stand beside the page, to be kept in their turn.
   */
  public static void main(String[] args) throws IOException {
    JsonMapper json = JsonMapper.builder().build();
    JsonNode results = json.readTree(Path.of(args[0]).toFile());
    Path kept = Path.of(args[2]);
    BenchmarkReport report =
        new BenchmarkReport(
            results,
            Files.exists(kept) ? json.readTree(kept.toFile()) : json.createObjectNode());
    report.write();
    Path page = Path.of(args[1]);
    Files.writeString(page, report.page);
    Map<String, Double> figures = new TreeMap<>();
    report.scores.forEach(score -> figures.put(score.key(), score.value()));
    json.writerWithDefaultPrettyPrinter()
        .writeValue(page.resolveSibling(kept.getFileName()).toFile(), figures);
  }

  private void write() {
    page.append("# What it costs, warm\n\n");
    page.append("| what | with | score | +- | unit | last | times |\n|---|---|---:|---:|---|---:|---:|\n");
    for (Score score : scores) {
      line(
          "| %s | %s | %.3g | %.2g | %s | %.3g | %.2f |",
          score.name(),
          score.with(),
          score.value(),
          score.error(),
          score.unit(),
          last.path(score.key()).asDouble(Double.NaN),
          score.value() / last.path(score.key()).asDouble(Double.NaN));
    }
    double own = value("decide");
    line("%n## One decision from full answers%n");
    line("%.0f us; expected under %.0f: %s.", own, EXPECTED, own < EXPECTED ? "met" : "not met");
    double plain = value("decideOffTheIndex");
    line("Off the index, without the rule engine: %.0f us; the engine takes %.1f of it.", plain, own / plain);
  }

  private double value(String name) {
    return scores.stream()
        .filter(score -> score.name().equals(name))
        .mapToDouble(Score::value)
        .findFirst()
        .orElse(Double.NaN);
  }

  private void line(String format, Object... values) {
    page.append(String.format(Locale.ROOT, format, values)).append('\n');
  }
}
