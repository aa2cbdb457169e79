package insidelift.engine.consultation.foresight;

import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.index.Known;
import insidelift.shared.index.Premise;
import insidelift.shared.index.RuleIndex;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.Truth;
import insidelift.shared.index.Verb;
import insidelift.shared.situation.Situation;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which questions can still matter, read off the rule index: a question matters while a rule that
 * reads it can still come true and what that rule says is still heard by anything. A wet track asks
 * no more about rubber.
 */
public final class OpenQuestions {

  /** What a rule of that verb has at stake, for ranking only. */
  private static final Map<Verb, Integer> STAKES =
      Map.of(
          Verb.CHECK,
          3,
          Verb.TRACK,
          4,
          Verb.EVIDENCE,
          3,
          Verb.BARRED,
          2,
          Verb.START,
          2,
          Verb.CLAIM,
          1,
          Verb.SEVERITY,
          1,
          Verb.OTHER,
          1);

  private final Vocabulary vocabulary;
  private final List<IndexedRule> rules;
  private final Map<String, Set<String>> bearing = new HashMap<>();
  private final Grid grid;
  private final Consistent consistent;

  /** Questions by the given words and rules. */
  public OpenQuestions(Vocabulary vocabulary, RuleIndex index) {
    this.vocabulary = vocabulary;
    this.rules =
        index.rules().stream()
            .filter(rule -> rule.acts().stream().anyMatch(act -> STAKES.containsKey(act.verb())))
            .toList();
    for (IndexedRule rule : index.rules()) {
      rule.acts(Verb.TERM)
          .forEach(
              term ->
                  bearing.computeIfAbsent(term.word(1), on -> new HashSet<>()).add(term.word(0)));
    }
    this.grid = new Grid(vocabulary);
    this.consistent = new Consistent(grid);
  }

  /**
   * The questions that the advice stands on, then those that can still matter and make sense now,
   * the most telling for the effort first. What was answered with "unknown" is not among them: the
   * user has said so already.
   */
  public List<Question> ranked(Situation situation) {
    OpenAnswers known = new OpenAnswers(situation, vocabulary);
    Map<String, Double> scores = scores(known);
    int[] now = grid.point(situation, vocabulary);
    return vocabulary.questions().stream()
        .filter(
            question ->
                scores.containsKey(question.id())
                    || (question.first() && known.open(question.id())))
        .filter(question -> consistent.askable(grid.place(question.id()), now))
        .sorted(
            Comparator.comparing((Question question) -> !question.first())
                .thenComparingDouble(
                    question -> -scores.getOrDefault(question.id(), 0.0) / question.effort()))
        .toList();
  }

  private Map<String, Double> scores(OpenAnswers known) {
    Map<String, Double> scores = new HashMap<>();
    for (IndexedRule rule : live(known)) {
      List<String> open =
          rule.premises().stream()
              .flatMap(premise -> questions(premise).stream())
              .filter(known::open)
              .distinct()
              .toList();
      double stakes =
          rule.acts().stream().mapToInt(act -> STAKES.getOrDefault(act.verb(), 0)).max().orElse(0);
      open.forEach(question -> scores.merge(question, stakes / open.size(), Double::sum));
    }
    return scores;
  }

  /** The questions that a premise reads by name. */
  public static List<String> questions(Premise premise) {
    return premise instanceof Premise.Told told ? told.questions() : List.of();
  }

  /** The rules that can still come true and are still heard. */
  public List<IndexedRule> live(Known known) {
    List<IndexedRule> possible =
        rules.stream().filter(rule -> rule.in(known) != Truth.FALSE).toList();
    Set<String> found = new HashSet<>();
    possible.forEach(
        rule ->
            rule.acts(Verb.EVIDENCE)
                .filter(act -> act.number(1) > 0)
                .forEach(act -> found.add(act.word(0))));
    return possible.stream()
        .filter(rule -> rule.acts().stream().anyMatch(act -> heard(act, found)))
        .toList();
  }

  /** Whether anything hears an act, by the findings that can still be found. */
  private boolean heard(Act act, Set<String> found) {
    return switch (act.verb()) {
      case EVIDENCE -> found.contains(act.word(0));
      case CLAIM -> bearing.getOrDefault(act.word(2), Set.of()).stream().anyMatch(found::contains);
      default -> STAKES.containsKey(act.verb());
    };
  }
}
