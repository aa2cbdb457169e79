package insidelift.shared.index;

import insidelift.shared.CheckKind;
import insidelift.shared.Column;
import insidelift.shared.Direction;
import insidelift.shared.Kind;
import insidelift.shared.Lever;
import insidelift.shared.Mark;
import insidelift.shared.Named;
import insidelift.shared.Rank;
import insidelift.shared.Scope;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.Constraint;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.RuleIndex.Premise;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Holds the words of a rule against the vocabulary: a rule never compares with a made-up value. */
public final class Lawful {

  private static final Set<String> LEVERS = ids(Lever.class);
  private static final Set<String> DIRECTIONS = ids(Direction.class);
  private static final Set<String> TRUTH = Set.of("true", "false");
  private static final Set<String> FACTS =
      Set.of("Answer", "Finding", "Barred", "Proposal", "Move");
  private static final Set<String> STAGES = Set.of("MAIN", "advise", "decide", "care");

  /** What kind of word each argument of each verb of the ledger is. */
  private static final Map<String, List<String>> VERBS =
      Map.ofEntries(
          Map.entry("check", List.of("check")),
          Map.entry("unseen", List.of("question")),
          Map.entry("evidence", List.of("finding", "number")),
          Map.entry("target", List.of("lever", "column")),
          Map.entry("correction", List.of("lever", "direction", "finding")),
          Map.entry("undo", List.of("lever", "direction")),
          Map.entry("carryOn", List.of("lever", "direction")),
          Map.entry("bar", List.of("lever", "direction", "scope")),
          Map.entry("fewer", List.of("lever")),
          Map.entry("cap", List.of("lever", "direction", "mark")),
          Map.entry("doubles", List.of("note...")),
          Map.entry("hold", List.of("lever")),
          Map.entry("rests", List.of("lever")),
          Map.entry("setsAside", List.of("note...")),
          Map.entry("leads", List.of("lever", "rank")),
          Map.entry("alternative", List.of("note")),
          Map.entry("decides", List.of()),
          Map.entry("caution", List.of("lever or both", "number")),
          Map.entry("job", List.of("number")));

  private final Vocabulary vocabulary;
  private final Set<String> questions;
  private final Set<String> findings;

  /** What is legal by a vocabulary. */
  public Lawful(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
    this.questions = vocabulary.questions().stream().map(Question::id).collect(Collectors.toSet());
    this.findings =
        vocabulary.findings().stream().map(word -> word.id()).collect(Collectors.toSet());
  }

  /**
   * Checks every word of a rule.
   *
   * @throws IllegalArgumentException if a word is not legal where it stands; the message says which
   */
  public void check(IndexedRule rule) {
    if (!STAGES.contains(rule.stage())) {
      throw new IllegalArgumentException("no stage is called \"" + rule.stage() + "\"");
    }
    rule.premises().forEach(this::check);
    rule.acts().forEach(this::check);
  }

  private void check(Premise premise) {
    if (!FACTS.contains(premise.fact())) {
      throw new IllegalArgumentException("no fact is called " + premise.fact());
    }
    for (Constraint constraint : premise.fields()) {
      Set<String> legal =
          switch (premise.fact() + "." + constraint.field()) {
            case "Answer.question" -> questions;
            case "Answer.value" -> values(premise);
            case "Answer.complaint" -> TRUTH;
            case "Finding.id" -> findings;
            case "Proposal.kind" -> ids(Kind.class);
            case "Barred.lever", "Proposal.lever", "Move.lever" -> LEVERS;
            case "Barred.direction", "Proposal.direction", "Move.direction" -> DIRECTIONS;
            case "Finding.strength", "Proposal.strength", "Proposal.claim" -> null;
            default ->
                throw new IllegalArgumentException(
                    "no fact has " + premise.fact() + "." + constraint.field());
          };
      if (legal != null) {
        require(legal, constraint.values());
      }
    }
  }

  /** The values that every question named in the premise has. */
  private Set<String> values(Premise premise) {
    return premise
        .field("question")
        .map(Constraint::values)
        .orElseThrow(() -> new IllegalArgumentException("an answer's value has no question"))
        .stream()
        .flatMap(id -> vocabulary.question(id).stream())
        .map(question -> question.values().stream().map(value -> value.id()).toList())
        .map(ids -> ids.stream().collect(Collectors.toSet()))
        .reduce(
            (left, right) ->
                left.stream().filter(right::contains).collect(Collectors.toUnmodifiableSet()))
        .orElse(Set.of());
  }

  private void check(Act act) {
    List<String> kinds = VERBS.get(act.verb());
    if (kinds == null) {
      throw new IllegalArgumentException("the ledger has no \"" + act.verb() + "\"");
    }
    boolean many = kinds.size() == 1 && kinds.get(0).endsWith("...");
    if (many ? act.words().isEmpty() : act.words().size() != kinds.size()) {
      throw new IllegalArgumentException(
          "\"%s\" takes %s".formatted(act.verb(), kinds.isEmpty() ? "nothing" : kinds));
    }
    for (int i = 0; i < act.words().size(); i++) {
      Set<String> legal = legal(many ? "note" : kinds.get(i));
      if (legal != null) {
        require(legal, List.of(act.words().get(i)));
      }
    }
  }

  private Set<String> legal(String kind) {
    return switch (kind) {
      case "check" -> ids(CheckKind.class);
      case "question" -> questions;
      case "finding" -> findings;
      case "lever" -> LEVERS;
      case "lever or both" ->
          Stream.concat(LEVERS.stream(), Stream.of("both")).collect(Collectors.toSet());
      case "direction" -> DIRECTIONS;
      case "column" -> ids(Column.class);
      case "scope" -> ids(Scope.class);
      case "mark" -> ids(Mark.class);
      case "rank" -> ids(Rank.class);
      default -> null;
    };
  }

  private static void require(Set<String> legal, List<String> words) {
    for (String word : words) {
      if (!legal.contains(word)) {
        throw new IllegalArgumentException(
            "\"%s\" is not one of %s".formatted(word, legal.stream().sorted().toList()));
      }
    }
  }

  private static <E extends Enum<E> & Named> Set<String> ids(Class<E> type) {
    return Arrays.stream(type.getEnumConstants()).map(Named::id).collect(Collectors.toSet());
  }
}
