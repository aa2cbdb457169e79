package insidelift.engine.consultation;

import insidelift.shared.Answer;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.Vocabulary.Value;
import insidelift.shared.index.RuleIndex.Constraint;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.RuleIndex.Premise;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Chooses what to ask next: the question most likely to take part in changing what to do now, for
 * the effort of answering it. A question is worth asking if one of its answers changes what to do
 * now, alone or together with the other premises of a rule that can still come true.
 */
public final class NextQuestion {

  /** How rarely a fault is met among the answers of a question that can show one. Provisional. */
  private static final double FAULT_CHANCE = 0.05;

  private final Advisor advisor;
  private final OpenQuestions open;

  /** Questions for an advisor. */
  public NextQuestion(Advisor advisor) {
    this.advisor = advisor;
    this.open = new OpenQuestions(advisor.vocabulary(), advisor.rules().index());
  }

  /**
   * The questions still worth asking, the best first.
   *
   * @param situation what is known
   * @param skipped questions that were answered with "unknown"
   */
  public List<Question> worthAsking(Situation situation, Set<String> skipped) {
    Now now = Now.of(advisor.decide(situation));
    Map<String, Answer> known =
        situation.facts(advisor.vocabulary()).stream()
            .collect(Collectors.toMap(Answer::question, answer -> answer));
    Map<String, Double> scores = new HashMap<>();
    for (Question question : open.ranked(situation)) {
      if (!known.containsKey(question.id()) && !skipped.contains(question.id())) {
        double chance = chanceAlone(question, situation, now);
        if (chance > 0) {
          scores.put(question.id(), chance);
        }
      }
    }
    for (Completion completion : completions(known, skipped)) {
      Situation whole = situation;
      for (Map.Entry<String, String> answer : completion.answers().entrySet()) {
        whole = whole.with(answer.getKey(), answer.getValue());
      }
      if (!Now.of(advisor.decide(whole)).equals(now)) {
        completion
            .answers()
            .keySet()
            .forEach(question -> scores.merge(question, completion.chance(), Double::sum));
      }
    }
    Vocabulary vocabulary = advisor.vocabulary();
    return vocabulary.questions().stream()
        .filter(question -> scores.containsKey(question.id()))
        .sorted(
            Comparator.comparingDouble(
                (Question question) -> -scores.get(question.id()) / question.effort()))
        .toList();
  }

  private double chanceAlone(Question question, Situation situation, Now now) {
    double chance = 0;
    for (Value value : question.values()) {
      Situation with = situation.with(question.id(), value.id());
      if (!Now.of(advisor.decide(with)).equals(now)) {
        chance += chance(question, List.of(value.id()));
      }
    }
    return chance;
  }

  /** Two or more open answers that together make a rule come true. */
  private record Completion(Map<String, String> answers, double chance) {}

  private List<Completion> completions(Map<String, Answer> known, Set<String> skipped) {
    Set<IndexedRule> live = open.live(known);
    Map<String, List<IndexedRule>> evidence = new HashMap<>();
    for (IndexedRule rule : live) {
      rule.acts().stream()
          .filter(act -> act.verb().equals("evidence") && !act.words().get(1).startsWith("-"))
          .forEach(
              act ->
                  evidence.computeIfAbsent(act.words().get(0), key -> new ArrayList<>()).add(rule));
    }
    List<Completion> completions = new ArrayList<>();
    for (IndexedRule rule : live) {
      List<IndexedRule> supports =
          rule.premises().stream()
              .filter(premise -> premise.fact().equals("Finding") && !premise.absent())
              .flatMap(premise -> premise.field("id").orElseThrow().values().stream())
              .flatMap(finding -> evidence.getOrDefault(finding, List.of()).stream())
              .toList();
      if (supports.isEmpty()) {
        complete(List.of(rule), known, skipped, completions);
      }
      supports.forEach(support -> complete(List.of(rule, support), known, skipped, completions));
    }
    return completions.stream().distinct().toList();
  }

  private void complete(
      List<IndexedRule> rules,
      Map<String, Answer> known,
      Set<String> skipped,
      List<Completion> completions) {
    Map<String, String> answers = new LinkedHashMap<>();
    double chance = 1;
    for (IndexedRule rule : rules) {
      for (Premise premise : rule.premises()) {
        if (!premise.fact().equals("Answer")
            || premise.absent()
            || premise.field("question").isEmpty()
            || satisfied(premise, known, answers)) {
          continue;
        }
        String question =
            premise.field("question").orElseThrow().values().stream()
                .filter(id -> !known.containsKey(id) && !skipped.contains(id))
                .filter(id -> !answers.containsKey(id))
                .findFirst()
                .orElse(null);
        List<String> values = premise.field("value").map(Constraint::values).orElse(List.of());
        if (question == null || values.isEmpty()) {
          return;
        }
        answers.put(question, values.get(0));
        chance *= chance(advisor.vocabulary().question(question).orElseThrow(), values);
      }
    }
    if (answers.size() > 1) {
      completions.add(new Completion(answers, chance));
    }
  }

  private static boolean satisfied(
      Premise premise, Map<String, Answer> known, Map<String, String> answers) {
    List<String> values = premise.field("value").map(Constraint::values).orElse(List.of());
    return premise.field("question").orElseThrow().values().stream()
        .anyMatch(
            id ->
                (known.containsKey(id) && values.contains(known.get(id).value()))
                    || values.contains(answers.getOrDefault(id, "")));
  }

  /** The chance of one of these answers: our guess where there is one, else faults are rare. */
  private static double chance(Question question, List<String> values) {
    double guessed = 0;
    double rest = 1;
    int alike = 0;
    for (Value value : question.values()) {
      Double guess = value.chance();
      if (guess == null && value.fault()) {
        guess = FAULT_CHANCE;
      }
      if (guess == null) {
        alike += values.contains(value.id()) ? 1 : 0;
      } else {
        rest -= guess;
        guessed += values.contains(value.id()) ? guess : 0;
      }
    }
    long unguessed =
        question.values().stream()
            .filter(value -> value.chance() == null && !value.fault())
            .count();
    return guessed + (unguessed == 0 ? 0 : rest * alike / unguessed);
  }
}
