package insidelift.engine.benchmark;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Makes a page of what was measured: every figure, the ratios that matter, and how cost grows. */
public final class BenchmarkReport {

  /** What one whole decision may take on one warm thread, in microseconds. */
  private static final double EXPECTED = 100;

  private static final int WIDTH = 50;

  private record Score(String name, String with, double value, double error, String unit) {}

  private final List<Score> scores = new ArrayList<>();
  private final StringBuilder page = new StringBuilder();

  private BenchmarkReport(JsonNode results) {
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

  /** Reads the results, writes the page: the file of results, the file of the page. */
  public static void main(String[] args) throws IOException {
    JsonNode results = JsonMapper.builder().build().readTree(Path.of(args[0]).toFile());
    BenchmarkReport report = new BenchmarkReport(results);
    report.write();
    Files.writeString(Path.of(args[1]), report.page);
  }

  private void write() {
    page.append("# What it costs, warm\n\n");
    page.append("| what | with | score | +- | unit |\n|---|---|---:|---:|---|\n");
    for (Score score : scores) {
      line(
          "| %s | %s | %.3g | %.2g | %s |",
          score.name(), score.with(), score.value(), score.error(), score.unit());
    }
    double own = value("decide", "");
    line("%n## One decision from full answers%n");
    line("%.0f us; expected under %.0f: %s.", own, EXPECTED, own < EXPECTED ? "met" : "not met");
    line(
        "Compiled by the program with a new session each time it takes %.0f us, %.1f times as much.",
        value("decideTheUsualWay", "1"), value("decideTheUsualWay", "1") / own);
    line(
        "As plain Java, which nobody could maintain, it takes %.0f us, %.2f of it.",
        value("decideInPlainJava", ""), value("decideInPlainJava", "") / own);
    line(
        "Two threads audit %.2f times as many situations as one.",
        value("auditOnTwoThreads", "") / value("auditOnOneThread", ""));
    plot("The more rules (times as many)", "decideByRules");
    plot("The same, the rule engine's usual way", "decideTheUsualWay");
    plot("The more answers (how many)", "decideByAnswers");
  }

  private double value(String name, String with) {
    return scores.stream()
        .filter(score -> score.name().equals(name) && score.with().equals(with))
        .mapToDouble(Score::value)
        .findFirst()
        .orElse(Double.NaN);
  }

  private void plot(String title, String name) {
    List<Score> shown = scores.stream().filter(score -> score.name().equals(name)).toList();
    double most = shown.stream().mapToDouble(Score::value).max().orElse(1);
    line("%n## %s%n%n```text", title);
    for (Score score : shown) {
      int filled = (int) Math.round(WIDTH * score.value() / most);
      line("%4s | %-" + WIDTH + "s %.0f us", score.with(), "#".repeat(filled), score.value());
    }
    line("```");
  }

  private void line(String format, Object... values) {
    page.append(String.format(Locale.ROOT, format, values)).append('\n');
  }
}
