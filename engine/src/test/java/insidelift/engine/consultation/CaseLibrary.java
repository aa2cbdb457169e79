package insidelift.engine.consultation;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.shared.Lever;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.CaseReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Whole cases in files: a situation in the form of a case file, and what must come of it. */
final class CaseLibrary {

  /** One case of a file. */
  record Entry(String file, String name, String source, JsonNode node) {}

  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private final Advisor advisor;

  CaseLibrary(Advisor advisor) {
    this.advisor = advisor;
  }

  static List<Entry> read(Path folder) {
    List<Entry> entries = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
        for (JsonNode node : MAPPER.readTree(file.toFile())) {
          entries.add(
              new Entry(
                  file.getFileName().toString(),
                  node.path("name").asText(),
                  node.path("source").asText(),
                  node));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return entries;
  }

  Advice advise(Entry entry) {
    ObjectNode file = MAPPER.createObjectNode().put("schema", 1);
    file.set("answers", entry.node().path("answers"));
    if (entry.node().has("kart")) {
      file.set("kart", entry.node().get("kart"));
    }
    try {
      return advisor.advise(new CaseReader(advisor.vocabulary()).read(file.toString()));
    } catch (CaseProblem e) {
      throw new IllegalArgumentException(entry.name() + ": " + e.getMessage(), e);
    }
  }

  /** Where the advice differs from what the case expects, in words; empty if it agrees. */
  List<String> differences(Entry entry) {
    Advice advice = advise(entry);
    JsonNode expect = entry.node().path("expect");
    List<String> differences = new ArrayList<>();
    if (expect.has("status")) {
      compare("status", expect.get("status").asText(), advice.status().id(), differences);
    }
    for (Lever lever : Lever.values()) {
      Optional<Suggestion> found =
          advice.suggestions().stream().filter(s -> s.lever() == lever).findFirst();
      if (expect.has(lever.id())) {
        String wanted = expect.get(lever.id()).asText();
        String got = found.map(s -> s.direction().id()).orElse("none");
        if (!(wanted.equals("none") && got.equals("hold"))) {
          compare(lever.id(), wanted, got, differences);
        }
      }
      if (expect.path("kind").has(lever.id()) && found.isPresent()) {
        compare(
            lever.id() + " kind",
            expect.get("kind").get(lever.id()).asText(),
            found.get().kind().id(),
            differences);
      }
      if (expect.path("degrees").has(lever.id()) && found.isPresent()) {
        double wanted = expect.get("degrees").get(lever.id()).asDouble();
        if (Math.abs(wanted - found.get().degrees()) > 1e-9) {
          differences.add(
              lever.id() + " degrees: " + wanted + " expected, " + found.get().degrees());
        }
      }
    }
    if (expect.has("first")) {
      List<String> wanted = new ArrayList<>();
      expect.get("first").forEach(lever -> wanted.add(lever.asText()));
      List<String> got =
          advice.suggestions().stream().filter(Suggestion::first).map(s -> s.lever().id()).toList();
      compare(
          "first",
          wanted.stream().sorted().toList().toString(),
          got.stream().sorted().toList().toString(),
          differences);
    }
    for (JsonNode check : expect.path("checks")) {
      if (advice.firstChecks().stream().noneMatch(c -> c.id().equals(check.asText()))) {
        differences.add("first check " + check.asText() + " is missing");
      }
    }
    for (JsonNode other : expect.path("alternatives")) {
      if (advice.alternatives().stream().noneMatch(a -> a.lever().equals(other.asText()))) {
        differences.add("alternative " + other.asText() + " is missing");
      }
    }
    for (JsonNode decision : expect.path("decisions")) {
      if (advice.decisions().stream().noneMatch(d -> d.note().equals(decision.asText()))) {
        differences.add("decision " + decision.asText() + " is missing");
      }
    }
    return differences;
  }

  private static void compare(String what, String wanted, String got, List<String> differences) {
    if (!wanted.equals(got)) {
      differences.add(what + ": " + wanted + " expected, " + got);
    }
  }

  /** Prints the differences of a folder of cases. */
  public static void main(String[] args) {
    CaseLibrary library = new CaseLibrary(Advisor.load());
    int bad = 0;
    List<Entry> entries = read(Path.of(args[0]));
    for (Entry entry : entries) {
      List<String> differences = library.differences(entry);
      if (!differences.isEmpty()) {
        bad++;
        System.out.println(
            "["
                + entry.node().path("sure").asText()
                + "] "
                + entry.name()
                + " {"
                + entry.node().path("row").asText()
                + "}\n    "
                + entry.node().path("answers")
                + entry.node().path("kart")
                + "\n    => "
                + differences);
      }
    }
    System.out.println(bad + " of " + entries.size() + " differ");
  }
}
