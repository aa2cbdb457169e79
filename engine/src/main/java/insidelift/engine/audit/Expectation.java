package insidelift.engine.audit;

import com.fasterxml.jackson.databind.JsonNode;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Named;
import insidelift.shared.Status;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.FindingWord;
import insidelift.shared.Vocabulary.LeverWord;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Changeover;
import insidelift.shared.advice.Advice.FoundOut;
import insidelift.shared.advice.Advice.Observation;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.casefile.JsonPlace;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Printable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a whole case expects of its advice; "none" for a lever means that it does not move. */
final class Expectation {

  private final JsonNode expect;
  private final Advice advice;
  private final List<String> differences = new ArrayList<>();

  private Expectation(JsonNode expect, Advice advice) {
    this.expect = expect;
    this.advice = advice;
  }

  private static final Set<String> KEYS =
      Set.of(
          "status",
          "camber",
          "caster",
          "first",
          "kind",
          "degrees",
          "checks",
          "alternatives",
          "unnamed",
          "leads",
          "changeover",
          "decisions",
          "findings",
          "checkKind",
          "heldBy",
          "over",
          "because",
          "unexplained",
          "cautions",
          "without",
          "gains");

  private static final List<String> SURE = List.of("none", "slight", "clear", "strong");
  private static final List<String> WAYS = List.of("more", "less", "hold", "none");

  /**
   * Checks that an expectation can be met at all.
   *
   * @throws CaseProblem if a key or a word is none of those that an advice can have
   */
  static void check(JsonPlace expect, Vocabulary words) throws CaseProblem {
    expect.object(KEYS);
    if (expect.at("status").isPresent()) {
      word(expect.need("status"), ids(Status.class));
    }
    if (expect.at("findings").isPresent()) {
      JsonPlace findings = expect.need("findings");
      findings.object(words.findings().stream().map(FindingWord::id).collect(Collectors.toSet()));
      for (Iterator<String> ids = findings.node().fieldNames(); ids.hasNext(); ) {
        word(findings.need(ids.next()), SURE);
      }
    }
    if (expect.at("gains").isPresent()) {
      JsonPlace gains = expect.need("gains");
      gains.object(moves(words));
      for (Iterator<String> moves = gains.node().fieldNames(); moves.hasNext(); ) {
        JsonPlace gain = gains.need(moves.next());
        if (!gain.node().isInt()) {
          throw gain.problem("this must be a whole number of points");
        }
      }
    }
    if (expect.at("because").isPresent()) {
      expect.need("because").object(Set.copyOf(ids(Lever.class)));
    }
    for (Lever lever : Lever.values()) {
      if (expect.at(lever.id()).isPresent()) {
        word(expect.need(lever.id()), WAYS);
      }
    }
  }

  /** Every lever with either way. */
  private static Set<String> moves(Vocabulary words) {
    return Stream.concat(ids(Lever.class).stream(), words.levers().stream().map(LeverWord::id))
        .flatMap(lever -> ids(Direction.class).stream().map(way -> lever + " " + way))
        .collect(Collectors.toSet());
  }

  private static void word(JsonPlace place, List<String> legal) throws CaseProblem {
    if (!legal.contains(place.word())) {
      throw place.problem(
          Printable.quoted(place.word()) + " is not one of " + String.join(", ", legal));
    }
  }

  private static <E extends Enum<E> & Named> List<String> ids(Class<E> type) {
    return Arrays.stream(type.getEnumConstants()).map(Named::id).toList();
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
    if (expect.has("changeover")) {
      compare("changeover", words("changeover").toString(), changeover().toString());
    }
    named("findings", "finding ", this::sure);
    named("checkKind", "kind of ", this::checkKind);
    named("heldBy", "held by, for ", this::heldBy);
    for (Iterator<String> ids = expect.path("over").fieldNames(); ids.hasNext(); ) {
      String decision = ids.next();
      compare(
          "over, by " + decision, sorted(words(expect.get("over").path(decision))), over(decision));
    }
    for (Iterator<String> levers = expect.path("because").fieldNames(); levers.hasNext(); ) {
      String lever = levers.next();
      List<String> missing = new ArrayList<>(words(expect.get("because").path(lever)));
      missing.removeAll(because(lever));
      missing.forEach(one -> differences.add("because, for " + lever + ": " + one + " is missing"));
    }
    if (expect.has("unexplained")) {
      compare("unexplained", sorted(words("unexplained")), unexplained());
    }
    all("checks", id -> advice.firstChecks().stream().anyMatch(c -> c.id().equals(id)));
    all(
        "alternatives",
        id ->
            advice.alternatives().stream()
                .anyMatch(one -> id.equals(one.lever()) || id.equals(one.move())));
    all("unnamed", id -> advice.alternatives().stream().noneMatch(one -> id.equals(one.lever())));
    all(
        "leads",
        id -> advice.alternatives().stream().anyMatch(one -> one.leads() && id.equals(one.move())));
    all("decisions", id -> advice.decisions().stream().anyMatch(d -> d.note().equals(id)));
  }

  /** Compares what stands under each name of a key with what the advice has there. */
  private void named(String key, String what, UnaryOperator<String> got) {
    JsonNode wanted = expect.path(key);
    for (Iterator<String> names = wanted.fieldNames(); names.hasNext(); ) {
      String name = names.next();
      compare(what + name, wanted.get(name).asText(), got.apply(name));
    }
  }

  /** What it is changed over to, and the levers in their order. */
  private List<String> changeover() {
    Changeover changeover = advice.changeover();
    return changeover == null
        ? List.of()
        : Stream.concat(
                Stream.of(changeover.condition()),
                changeover.jobs().stream().map(Changeover.Job::lever))
            .toList();
  }

  private String checkKind(String check) {
    return advice.firstChecks().stream()
        .filter(found -> found.id().equals(check))
        .map(found -> found.kind().id())
        .findFirst()
        .orElse("none");
  }

  private String heldBy(String lever) {
    return advice.suggestions().stream()
        .filter(found -> found.lever().id().equals(lever))
        .map(found -> found.heldBy() == null ? "nothing" : found.heldBy())
        .findFirst()
        .orElse("nothing");
  }

  private String over(String decision) {
    return sorted(
        advice.decisions().stream()
            .filter(found -> found.note().equals(decision))
            .flatMap(found -> found.over().stream())
            .toList());
  }

  /** Everything that the reasons for a lever rest on, in their words. */
  private List<String> because(String lever) {
    return advice.suggestions().stream()
        .filter(found -> found.lever().id().equals(lever))
        .flatMap(found -> found.reasons().stream())
        .flatMap(reason -> reason.because().stream())
        .toList();
  }

  private String unexplained() {
    return sorted(advice.unexplained().stream().map(Observation::question).toList());
  }

  /** How sure a finding is, in words. */
  private String sure(String finding) {
    return advice.findings().stream()
        .filter(found -> found.id().equals(finding))
        .map(FoundOut::strength)
        .findFirst()
        .orElse("none");
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
        .forEach(
            id ->
                differences.add(
                    key + ": " + id + " is " + (key.equals("unnamed") ? "there" : "missing")));
  }

  private List<String> words(String key) {
    return words(expect.path(key));
  }

  private static List<String> words(JsonNode list) {
    List<String> words = new ArrayList<>();
    list.forEach(word -> words.add(word.asText()));
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
