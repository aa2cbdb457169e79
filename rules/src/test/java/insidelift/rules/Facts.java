package insidelift.rules;

import insidelift.shared.Answer;
import insidelift.shared.Barred;
import insidelift.shared.Finding;
import insidelift.shared.Move;
import insidelift.shared.Proposal;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.Vocabulary.Value;
import insidelift.shared.index.RuleIndex.Constraint;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.RuleIndex.Premise;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Makes facts for the premises of an indexed rule, and sets of facts that just miss one. */
final class Facts {

  private final Vocabulary vocabulary;
  private final List<Object> pool = new ArrayList<>();

  Facts(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
    for (Question question : vocabulary.questions()) {
      for (Value value : question.values()) {
        pool.add(vocabulary.answer(question.id(), value.id()));
      }
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
    if (premise.absent()) {
      List<Object> unwelcome = candidates(premise);
      List<Object> consistent = unwelcome.stream().filter(fact -> !clashes(fact, facts)).toList();
      (consistent.isEmpty() ? unwelcome : consistent)
          .forEach(fact -> misses.add(plus(facts, fact)));
      return misses;
    }
    List<Object> others = facts.stream().filter(fact -> !matches(premise, fact)).toList();
    misses.add(others);
    facts.stream()
        .filter(fact -> matches(premise, fact))
        .flatMap(fact -> neighbours(fact).stream())
        .filter(fact -> !matches(premise, fact))
        .forEach(fact -> misses.add(plus(others, fact)));
    return misses;
  }

  private Optional<List<Object>> search(List<Premise> premises, int at, List<Object> facts) {
    if (at == premises.size()) {
      boolean clear =
          premises.stream()
              .filter(Premise::absent)
              .noneMatch(premise -> facts.stream().anyMatch(fact -> matches(premise, fact)));
      return clear ? Optional.of(facts) : Optional.empty();
    }
    Premise premise = premises.get(at);
    if (premise.absent()) {
      return search(premises, at + 1, facts);
    }
    for (Object candidate : candidates(premise)) {
      if (!clashes(candidate, facts)) {
        Optional<List<Object>> found = search(premises, at + 1, plus(facts, candidate));
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  private List<Object> candidates(Premise premise) {
    if (premise.fact().equals("Answer")) {
      return pool.stream().filter(fact -> matches(premise, fact)).toList();
    }
    int strength = strength(premise);
    List<Object> all = new ArrayList<>();
    for (String first : words(premise, premise.fact().equals("Finding") ? "id" : "lever")) {
      for (String direction : words(premise, "direction")) {
        for (String claim : words(premise, "claim")) {
          for (String kind : words(premise, "kind")) {
            all.add(fact(premise.fact(), first, direction, claim, kind, strength));
          }
        }
      }
    }
    return all.stream().distinct().toList();
  }

  private static Object fact(
      String type, String first, String direction, String claim, String kind, int strength) {
    return switch (type) {
      case "Finding" -> new Finding(first, strength);
      case "Barred" -> new Barred(first, direction);
      case "Move" -> new Move(first, direction);
      case "Proposal" -> new Proposal(claim, first, direction, kind, strength);
      default -> throw new IllegalArgumentException(type);
    };
  }

  /** The words of a constrained field, or any legal one where it is free. */
  private static List<String> words(Premise premise, String field) {
    return premise
        .field(field)
        .map(Constraint::values)
        .orElse(
            switch (field) {
              case "lever" -> List.of("camber", "caster");
              case "direction" -> List.of("more", "less");
              case "kind" -> List.of("correction");
              default -> List.of("any-claim");
            });
  }

  private static int strength(Premise premise) {
    return premise
        .field("strength")
        .map(constraint -> Integer.parseInt(constraint.values().get(0)))
        .orElse(10);
  }

  /** Facts that differ from this one in a single field. */
  private List<Object> neighbours(Object fact) {
    if (fact instanceof Answer answer) {
      return pool.stream()
          .filter(other -> ((Answer) other).question().equals(answer.question()))
          .toList();
    }
    if (fact instanceof Finding finding) {
      return List.of(
          new Finding(finding.id(), finding.strength() - 1),
          new Finding("even-contact".equals(finding.id()) ? "heavy" : "even-contact", 10));
    }
    if (fact instanceof Barred barred) {
      return List.of(
          new Barred(otherLever(barred.lever()), barred.direction()),
          new Barred(barred.lever(), otherWay(barred.direction())));
    }
    if (fact instanceof Move move) {
      return List.of(
          new Move(otherLever(move.lever()), move.direction()),
          new Move(move.lever(), otherWay(move.direction())));
    }
    Proposal one = (Proposal) fact;
    String kind = one.kind().equals("target") ? "correction" : "target";
    return List.of(
        new Proposal("another-claim", one.lever(), one.direction(), one.kind(), one.strength()),
        new Proposal(
            one.claim(), otherLever(one.lever()), one.direction(), one.kind(), one.strength()),
        new Proposal(
            one.claim(), one.lever(), otherWay(one.direction()), one.kind(), one.strength()),
        new Proposal(one.claim(), one.lever(), one.direction(), kind, one.strength()),
        new Proposal(one.claim(), one.lever(), one.direction(), one.kind(), one.strength() - 1));
  }

  private static String otherLever(String lever) {
    return lever.equals("camber") ? "caster" : "camber";
  }

  private static String otherWay(String direction) {
    return direction.equals("more") ? "less" : "more";
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

  private boolean matches(Premise premise, Object fact) {
    return fact.getClass().getSimpleName().equals(premise.fact())
        && premise.fields().stream().allMatch(constraint -> matches(constraint, fact));
  }

  private static boolean matches(Constraint constraint, Object fact) {
    String value = field(fact, constraint.field());
    return constraint.operator().equals(">=")
        ? Integer.parseInt(value) >= Integer.parseInt(constraint.values().get(0))
        : constraint.values().contains(value);
  }

  private static String field(Object fact, String name) {
    try {
      return String.valueOf(fact.getClass().getMethod(name).invoke(fact));
    } catch (ReflectiveOperationException e) {
      throw new IllegalArgumentException(name, e);
    }
  }

  private static List<Object> plus(List<Object> facts, Object fact) {
    List<Object> more = new ArrayList<>(facts);
    if (!more.contains(fact)) {
      more.add(fact);
    }
    return more;
  }

  Vocabulary vocabulary() {
    return vocabulary;
  }
}
