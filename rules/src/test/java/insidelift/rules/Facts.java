package insidelift.rules;

import insidelift.rules.fact.Step;
import insidelift.shared.Answer;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.Vocabulary.Value;
import insidelift.shared.index.Premise;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.Truth;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Makes facts for the premises of an indexed rule, and sets of facts that just miss one. */
final class Facts {

  private static final List<String> CAMBER_NOW =
      List.of("far-negative", "negative", "zero", "positive", "far-positive");

  private final List<Object> pool = new ArrayList<>();

  Facts(Vocabulary vocabulary) {
    for (Question question : vocabulary.questions()) {
      for (Value value : question.values()) {
        pool.add(vocabulary.answer(question.id(), value.id()));
      }
    }
    CAMBER_NOW.forEach(place -> pool.add(new Answer("camber-now", place, false)));
    for (String lever : List.of("camber", "caster")) {
      pool.add(Step.one(lever, "more", "one").made());
      pool.add(Step.one(lever, "less", "one").made());
    }
  }

  /** Facts that satisfy every premise of a rule, one answer at most to each question. */
  List<Object> satisfying(IndexedRule rule) {
    return search(rule.premises(), 0, List.of())
        .orElseThrow(() -> new IllegalStateException(rule.id() + " can never speak"));
  }

  /** Sets of facts each of which misses this premise by as little as possible. */
  Set<List<Object>> nearMisses(Premise premise, List<Object> facts) {
    Set<List<Object>> misses = new LinkedHashSet<>();
    if (absent(premise)) {
      List<Object> unwelcome = pool.stream().filter(fact -> fits(premise, fact)).toList();
      List<Object> consistent = unwelcome.stream().filter(fact -> !clashes(fact, facts)).toList();
      (consistent.isEmpty() ? unwelcome : consistent)
          .forEach(fact -> misses.add(plus(without(fact, facts), fact)));
      return misses;
    }
    List<Object> others = facts.stream().filter(fact -> !fits(premise, fact)).toList();
    misses.add(others);
    facts.stream()
        .filter(fact -> fits(premise, fact))
        .flatMap(fact -> pool.stream().filter(other -> neighbours(fact, other)))
        .filter(fact -> !fits(premise, fact))
        .forEach(fact -> misses.add(plus(others, fact)));
    return misses;
  }

  private Optional<List<Object>> search(List<Premise> premises, int at, List<Object> facts) {
    if (at == premises.size()) {
      HeardAnswers heard = heard(facts);
      boolean clear = premises.stream().allMatch(premise -> premise.in(heard) == Truth.TRUE);
      return clear ? Optional.of(facts) : Optional.empty();
    }
    Premise premise = premises.get(at);
    if (absent(premise)) {
      return search(premises, at + 1, facts);
    }
    for (Object candidate : pool) {
      if (fits(premise, candidate) && !clashes(candidate, facts)) {
        Optional<List<Object>> found = search(premises, at + 1, plus(facts, candidate));
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  static HeardAnswers heard(List<Object> facts) {
    HeardAnswers heard = new HeardAnswers(facts);
    heard.moving(facts.stream().filter(Step.class::isInstance).map(Step.class::cast).toList());
    return heard;
  }

  private static boolean absent(Premise premise) {
    return premise instanceof Premise.Told told && told.absent();
  }

  /** Whether one fact alone fits a premise, or what a premise says must be absent. */
  private static boolean fits(Premise premise, Object fact) {
    Truth truth = premise.in(heard(List.of(fact)));
    return (absent(premise) ? truth.not() : truth) == Truth.TRUE;
  }

  /** Whether two facts differ in a single field. */
  private static boolean neighbours(Object one, Object other) {
    if (one instanceof Answer answer) {
      return other instanceof Answer beside && beside.question().equals(answer.question());
    }
    return one instanceof Step step
        && other instanceof Step beside
        && (step.lever().equals(beside.lever()) != step.direction().equals(beside.direction()));
  }

  /** Whether a question would have two answers. */
  private static boolean clashes(Object fact, List<Object> facts) {
    return fact instanceof Answer answer
        && facts.stream()
            .anyMatch(
                known ->
                    known instanceof Answer other
                        && other.question().equals(answer.question())
                        && !other.equals(answer));
  }

  private static List<Object> without(Object fact, List<Object> facts) {
    return facts.stream().filter(known -> !clashes(fact, List.of(known))).toList();
  }

  private static List<Object> plus(List<Object> facts, Object fact) {
    List<Object> more = new ArrayList<>(facts);
    if (!more.contains(fact)) {
      more.add(fact);
    }
    return more;
  }
}
