package insidelift.engine.consultation;

import insidelift.shared.Answer;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.index.RuleIndex;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.Constraint;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.RuleIndex.Premise;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which questions can still matter, read off the rule index: a question matters while a rule that
 * reads it can still come true and what that rule records is still read by anything. A wet track
 * asks no more about rubber.
 */
public final class OpenQuestions {

  /** What a rule of that verb has at stake, for ranking only. */
  private static final Map<String, Integer> STAKES =
      Map.of("check", 3, "target", 4, "correction", 3, "bar", 2, "evidence", 2, "undo", 3);

  private final Vocabulary vocabulary;
  private final RuleIndex index;
  private final Grid grid;
  private final Consistent consistent;

  /** What was asked about last: an advice that is rehearsed is asked about twice. */
  private volatile Ranking last;

  private record Ranking(Situation situation, List<Question> questions) {}

  /** Questions by the given words and rules. */
  public OpenQuestions(Vocabulary vocabulary, RuleIndex index) {
    this.vocabulary = vocabulary;
    this.index = index;
    this.grid = new Grid(vocabulary);
    this.consistent = new Consistent(grid);
  }

  /**
   * The questions that can still matter and make sense now, the most telling for the effort first.
   * What was answered with "unknown" is not among them: the user has said so already.
   */
  @SuppressWarnings("ReferenceEquality") // Comparing two situations would take as long.
  public List<Question> ranked(Situation situation) {
    Ranking known = last;
    if (known == null || known.situation() != situation) {
      known = new Ranking(situation, ranking(situation));
      last = known;
    }
    return known.questions();
  }

  private List<Question> ranking(Situation situation) {
    Map<String, Double> scores = scores(situation);
    int[] now = grid.point(situation, vocabulary);
    return vocabulary.questions().stream()
        .filter(question -> scores.containsKey(question.id()))
        .filter(question -> !situation.declined().contains(question.id()))
        .filter(question -> consistent.askable(grid.place(question.id()), now))
        .sorted(
            Comparator.comparingDouble(
                (Question question) -> -scores.get(question.id()) / question.effort()))
        .toList();
  }

  private Map<String, Double> scores(Situation situation) {
    Map<String, Answer> known =
        situation.facts(vocabulary).stream()
            .collect(Collectors.toMap(Answer::question, answer -> answer));
    Map<String, Double> scores = new HashMap<>();
    for (IndexedRule rule : live(known)) {
      Set<String> open = new LinkedHashSet<>();
      for (Premise premise : rule.premises()) {
        if (premise.fact().equals("Answer")) {
          questions(premise).stream().filter(id -> !known.containsKey(id)).forEach(open::add);
        }
      }
      for (String question : open) {
        scores.merge(question, stakes(rule) / (double) open.size(), Double::sum);
      }
    }
    return scores;
  }

  /** The rules that can still come true and are still listened to. */
  List<IndexedRule> live(Map<String, Answer> known) {
    Set<String> findings = new HashSet<>();
    Set<String> claims = new HashSet<>();
    List<IndexedRule> live = new ArrayList<>();
    List<IndexedRule> waiting = new ArrayList<>(index.rules());
    waiting.removeIf(rule -> !speaks(rule));
    boolean grew = true;
    while (grew) {
      List<IndexedRule> still = new ArrayList<>();
      for (IndexedRule rule : waiting) {
        if (possible(rule, known, findings, claims)) {
          live.add(rule);
          rule.acts().forEach(act -> opens(rule, act, findings, claims));
        } else {
          still.add(rule);
        }
      }
      grew = still.size() < waiting.size();
      waiting = still;
    }
    Set<String> read = new HashSet<>();
    live.forEach(reader -> reader.premises().forEach(premise -> read.addAll(findings(premise))));
    return live.stream().filter(rule -> !unheard(rule, read)).toList();
  }

  private static boolean possible(
      IndexedRule rule, Map<String, Answer> known, Set<String> findings, Set<String> claims) {
    for (Premise premise : rule.premises()) {
      if (!possible(premise, known, findings, claims)) {
        return false;
      }
    }
    return true;
  }

  /** Listing an unseen safety item is no reason to ask about it again in the ranking. */
  private static boolean speaks(IndexedRule rule) {
    return rule.acts().stream().noneMatch(act -> act.verb().equals("unseen"));
  }

  private static void opens(IndexedRule rule, Act act, Set<String> findings, Set<String> claims) {
    switch (act.verb()) {
      case "evidence" -> {
        if (!act.words().get(1).startsWith("-")) {
          findings.add(act.words().get(0));
        }
      }
      case "target", "correction", "undo", "carryOn" -> claims.add(rule.note());
      default -> {
        // Nothing else is read by another rule.
      }
    }
  }

  /** Whether a rule gives evidence for findings that no live rule reads, and does nothing else. */
  private static boolean unheard(IndexedRule rule, Set<String> read) {
    return rule.acts().stream()
        .allMatch(act -> act.verb().equals("evidence") && !read.contains(act.words().get(0)));
  }

  private static List<String> findings(Premise premise) {
    return premise.fact().equals("Finding")
        ? premise.field("id").map(Constraint::values).orElse(List.of())
        : List.of();
  }

  private static boolean possible(
      Premise premise, Map<String, Answer> known, Set<String> findings, Set<String> claims) {
    return switch (premise.fact()) {
      case "Answer" -> possibleAnswer(premise, known);
      case "Finding" ->
          premise.absent() || findings.containsAll(premise.field("id").orElseThrow().values());
      case "Proposal" ->
          premise.absent()
              || premise
                  .field("claim")
                  .map(claim -> claim.values().stream().anyMatch(claims::contains))
                  .orElse(true);
      default -> true;
    };
  }

  private static boolean possibleAnswer(Premise premise, Map<String, Answer> known) {
    List<String> questions = questions(premise);
    if (questions.isEmpty()) {
      return !premise.absent() || known.values().stream().noneMatch(Answer::complaint);
    }
    List<String> values = premise.field("value").map(Constraint::values).orElse(List.of());
    if (premise.absent()) {
      return questions.stream()
          .noneMatch(id -> known.containsKey(id) && values.contains(known.get(id).value()));
    }
    return questions.stream()
        .anyMatch(id -> !known.containsKey(id) || values.contains(known.get(id).value()));
  }

  private static List<String> questions(Premise premise) {
    return premise.fact().equals("Answer")
        ? premise.field("question").map(Constraint::values).orElse(List.of())
        : List.of();
  }

  private static int stakes(IndexedRule rule) {
    return rule.acts().stream().mapToInt(act -> STAKES.getOrDefault(act.verb(), 1)).max().orElse(0);
  }
}
