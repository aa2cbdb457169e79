package insidelift.shared.casefile;

import com.fasterxml.jackson.databind.JsonNode;
import insidelift.shared.Degrees;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.LeverWord;
import insidelift.shared.situation.Baseline;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Driven;
import insidelift.shared.situation.KartRecord;
import insidelift.shared.situation.Printable;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Reads the parts of a case file that tell of before: earlier readings, baselines, earlier runs.
 */
final class PastReader {

  /** The keys under {@code kart} that it reads. */
  static final Set<String> KART = Set.of("before", "baseline", "levers");

  private static final Set<String> CONDITIONS = Set.of("dry", "wet");
  private static final Set<String> FRONT = Set.of("camber", "caster");

  private final Vocabulary vocabulary;

  PastReader(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  KartRecord kart(JsonPlace kart) throws CaseProblem {
    Optional<JsonPlace> before = kart.at("before");
    Map<String, Baseline> baseline = new LinkedHashMap<>();
    if (kart.at("baseline").isPresent()) {
      JsonPlace conditions = kart.need("baseline").object(CONDITIONS);
      for (Iterator<String> names = conditions.node().fieldNames(); names.hasNext(); ) {
        String condition = names.next();
        baseline.put(condition, BaselineJson.read(conditions.need(condition), levers()));
      }
    }
    return new KartRecord(
        before.isPresent()
            ? Optional.of(FrontEndReader.read(before.get().object(FRONT)))
            : Optional.empty(),
        baseline,
        levers(kart.at("levers")));
  }

  private Set<String> levers() {
    return vocabulary.levers().stream()
        .filter(word -> word.most() != null)
        .map(LeverWord::id)
        .collect(Collectors.toSet());
  }

  private Map<String, String> levers(Optional<JsonPlace> place) throws CaseProblem {
    Map<String, String> standing = new LinkedHashMap<>();
    if (place.isPresent()) {
      Map<String, LeverWord> words =
          vocabulary.levers().stream()
              .filter(word -> word.most() != null)
              .collect(Collectors.toMap(LeverWord::id, word -> word));
      JsonPlace levers = place.get().object(words.keySet());
      for (Iterator<String> names = levers.node().fieldNames(); names.hasNext(); ) {
        LeverWord word = words.get(names.next());
        standing.put(
            word.id(),
            oneOf(levers.need(word.id()), List.of(word.most(), word.least(), KartRecord.FIXED)));
      }
    }
    return standing;
  }

  private static String oneOf(JsonPlace place, List<String> words) throws CaseProblem {
    String word = place.word();
    if (!words.contains(word)) {
      throw place.problem(
          "%s is not one of %s".formatted(Printable.quoted(word), String.join(", ", words)));
    }
    return word;
  }

  List<Driven> history(JsonPlace list) throws CaseProblem {
    if (!list.node().isArray()) {
      throw list.problem("this must be a list in brackets");
    }
    if (list.node().size() > Driven.KEPT) {
      throw list.problem(
          "%d runs are more than the %d that are kept: leave the oldest out"
              .formatted(list.node().size(), Driven.KEPT));
    }
    List<Driven> runs = new ArrayList<>();
    for (JsonPlace run : list.members()) {
      runs.add(run(run));
    }
    return runs;
  }

  private Driven run(JsonPlace run) throws CaseProblem {
    Set<String> keys = new LinkedHashSet<>(FRONT);
    Driven.TOLD.forEach(question -> keys.add(key(question)));
    keys.add("undo");
    run.object(keys);
    Map<String, String> answers = new LinkedHashMap<>();
    for (String question : Driven.TOLD.stream().sorted().toList()) {
      Optional<JsonPlace> said = run.at(key(question));
      if (said.isPresent()) {
        answers.put(question, oneOf(said.get(), values(question)));
      }
    }
    JsonNode undo = run.node().path("undo");
    if (!undo.isMissingNode() && !undo.isBoolean()) {
      throw run.need("undo").problem("this must be true or false");
    }
    return new Driven(
        degrees(run.at("camber"), FrontEndReader.CAMBER_MAX),
        degrees(run.at("caster"), FrontEndReader.CASTER_MAX),
        answers,
        undo.booleanValue());
  }

  private static Optional<Degrees> degrees(Optional<JsonPlace> place, double max)
      throws CaseProblem {
    return place.isPresent()
        ? Optional.of(FrontEndReader.degrees(place.get(), max))
        : Optional.empty();
  }

  private List<String> values(String question) {
    return vocabulary.question(question).orElseThrow().values().stream()
        .map(Vocabulary.Value::id)
        .toList();
  }

  /** Under which key an earlier run answers a question: of its change, not of the last one. */
  static String key(String question) {
    return switch (question) {
      case "last-change" -> "changed";
      case "last-effect" -> "effect";
      default -> question;
    };
  }
}
