package insidelift.engine.consultation;

import com.fasterxml.jackson.databind.JsonNode;
import insidelift.shared.Lever;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Suggestion;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** What a whole case expects of its advice; "none" for a lever means that it does not move. */
final class Expectation {

  private final JsonNode expect;
  private final Advice advice;
  private final List<String> differences = new ArrayList<>();

  private Expectation(JsonNode expect, Advice advice) {
    this.expect = expect;
    this.advice = advice;
  }

  /** Where the advice differs from what is expected, in words; empty if it agrees. */
  static List<String> differences(JsonNode expect, Advice advice) {
    Expectation expectation = new Expectation(expect, advice);
    expectation.compare();
    return expectation.differences;
  }

  private void compare() {
    if (expect.has("status")) {
      compare("status", expect.get("status").asText(), advice.status().id());
    }
    for (Lever lever : Lever.values()) {
      compare(lever);
    }
    if (expect.has("first")) {
      List<String> first =
          advice.suggestions().stream().filter(Suggestion::first).map(s -> s.lever().id()).toList();
      compare("first", sorted(words("first")), sorted(first));
    }
    all("checks", id -> advice.firstChecks().stream().anyMatch(c -> c.id().equals(id)));
    all("alternatives", id -> advice.alternatives().stream().anyMatch(a -> a.lever().equals(id)));
    all("decisions", id -> advice.decisions().stream().anyMatch(d -> d.note().equals(id)));
  }

  private void compare(Lever lever) {
    Optional<Suggestion> found =
        advice.suggestions().stream().filter(s -> s.lever() == lever).findFirst();
    String id = lever.id();
    if (expect.has(id)) {
      String wanted = expect.get(id).asText();
      String got = found.map(s -> s.direction().id()).orElse("none");
      if (!(wanted.equals("none") && got.equals("hold"))) {
        compare(id, wanted, got);
      }
    }
    if (expect.path("kind").has(id)) {
      String kind = expect.get("kind").get(id).asText();
      compare(id + " kind", kind, found.map(s -> s.kind().id()).orElse("none"));
    }
    if (expect.path("degrees").has(id)) {
      double wanted = expect.get("degrees").get(id).asDouble();
      double got = found.map(Suggestion::degrees).orElse(0.0);
      if (Math.abs(wanted - got) > 1e-9) {
        compare(id + " degrees", "" + wanted, "" + got);
      }
    }
  }

  private void all(String key, Predicate<String> there) {
    words(key).stream()
        .filter(there.negate())
        .forEach(id -> differences.add(key + ": " + id + " is missing"));
  }

  private List<String> words(String key) {
    List<String> words = new ArrayList<>();
    expect.path(key).forEach(word -> words.add(word.asText()));
    return words;
  }

  private void compare(String what, String wanted, String got) {
    if (!wanted.equals(got)) {
      differences.add(what + ": " + wanted + " expected, " + got);
    }
  }

  private static String sorted(List<String> words) {
    return words.stream().sorted().toList().toString();
  }
}
