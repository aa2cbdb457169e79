package insidelift.shared.index;

import insidelift.shared.CheckKind;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Named;
import insidelift.shared.Scope;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.IndexedRule;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Holds the words of a rule against the vocabulary: a rule never compares with a made-up value. */
public final class Lawful {

  private static final Pattern NOTE = Pattern.compile("[a-z]+(-[a-z0-9]+)+");

  private static final Set<String> LEVERS = ids(Lever.class);
  private static final Set<String> DIRECTIONS = ids(Direction.class);
  private static final Set<String> PHASES = Set.of("entry", "mid", "exit");

  /** What is read off the kart's settings like an answer. */
  private static final Map<String, Set<String>> READ_OFF =
      Map.of("camber-now", Set.of("far-negative", "negative", "zero", "positive", "far-positive"));

  private final Vocabulary vocabulary;
  private final Set<String> questions;
  private final Set<String> findings;

  /** What is legal by a vocabulary. */
  public Lawful(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
    this.questions =
        Stream.concat(vocabulary.questions().stream().map(Question::id), READ_OFF.keySet().stream())
            .collect(Collectors.toSet());
    this.findings =
        vocabulary.findings().stream().map(word -> word.id()).collect(Collectors.toSet());
  }

  /**
   * Checks every word of a rule.
   *
   * @throws IllegalArgumentException if a word is not legal where it stands; the message says which
   */
  public void check(IndexedRule rule) {
    rule.premises().forEach(this::check);
    rule.acts().forEach(this::check);
  }

  private void check(Premise premise) {
    if (premise instanceof Premise.Told told) {
      require(questions, told.questions());
      told.questions().forEach(question -> require(values(question), told.values()));
    } else if (premise instanceof Premise.Moved moved) {
      require(LEVERS, moved.lever().isEmpty() ? List.of() : List.of(moved.lever()));
      require(DIRECTIONS, moved.direction().isEmpty() ? List.of() : List.of(moved.direction()));
    }
  }

  private Set<String> values(String question) {
    return vocabulary
        .question(question)
        .map(known -> known.values().stream().map(value -> value.id()).collect(Collectors.toSet()))
        .orElseGet(() -> READ_OFF.get(question));
  }

  private void check(Act act) {
    List<String> kinds = act.verb().words();
    if (act.words().size() != kinds.size()) {
      throw new IllegalArgumentException("\"%s\" takes %s".formatted(act.verb().id(), kinds));
    }
    for (int i = 0; i < kinds.size(); i++) {
      String word = act.word(i);
      if (kinds.get(i).equals("number")) {
        if (!word.matches("-?\\d{1,6}")) {
          throw new IllegalArgumentException("\"" + word + "\" is no whole number");
        }
      } else if (!(kinds.get(i).equals("mirror") && NOTE.matcher(word).matches())) {
        Set<String> legal = legal(kinds.get(i));
        if (legal != null) {
          require(legal, List.of(word));
        }
      }
    }
  }

  /** The words of a kind; null where any will do. */
  private Set<String> legal(String kind) {
    return switch (kind) {
      case "check" -> ids(CheckKind.class);
      case "question" -> questions;
      case "question or none" -> with(questions, "none");
      case "finding" -> findings;
      case "on" -> Stream.concat(findings.stream(), PHASES.stream()).collect(Collectors.toSet());
      case "lever" -> LEVERS;
      case "any lever" ->
          Stream.concat(LEVERS.stream(), vocabulary.levers().stream().map(word -> word.id()))
              .collect(Collectors.toSet());
      case "lever or both" -> with(LEVERS, "both");
      case "direction" -> DIRECTIONS;
      case "scope" -> ids(Scope.class);
      case "water" -> values("water");
      case "condition" -> Set.of("dry", "wet");
      // Or the id of a note, which every one of ours has a hyphen in.
      case "mirror" -> Set.of("both", "one");
      case "truth" -> Set.of("true", "false");
      default -> null;
    };
  }

  private static Set<String> with(Set<String> words, String one) {
    return Stream.concat(words.stream(), Stream.of(one)).collect(Collectors.toSet());
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
