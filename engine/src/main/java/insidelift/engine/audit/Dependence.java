package insidelift.engine.audit;

import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.RuleIndex.Premise;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What rules make and what rules read: circles, facts read too early, findings going nowhere. */
final class Dependence {

  /** The stage at the beginning of which facts of a type come to be known. */
  private static final Map<String, Integer> KNOWN_FROM =
      Map.of("Answer", 0, "Finding", 1, "Barred", 1, "Proposal", 2, "Move", 3);

  private static final List<String> STAGES = List.of("MAIN", "advise", "decide", "care");

  private final Knowledge knowledge;

  Dependence(Knowledge knowledge) {
    this.knowledge = knowledge;
  }

  /** Rules that rest on themselves, by way of others or not. */
  List<Remark> circles() {
    Map<String, Set<String>> leadsTo = new LinkedHashMap<>();
    for (IndexedRule rule : knowledge.rules()) {
      Set<String> next = new LinkedHashSet<>();
      for (IndexedRule reader : knowledge.rules()) {
        if (reader.premises().stream().anyMatch(premise -> feeds(rule, premise))) {
          next.add(reader.id());
        }
      }
      leadsTo.put(rule.id(), next);
    }
    List<Remark> remarks = new ArrayList<>();
    for (IndexedRule rule : knowledge.rules()) {
      if (reaches(rule.id(), rule.id(), leadsTo, new HashSet<>())) {
        remarks.add(
            Remark.of(
                rule,
                rule.id(),
                Severity.ERROR,
                "rule \"%s\" rests on what follows from it".formatted(rule.id())));
      }
    }
    return remarks;
  }

  /** Rules that read a kind of fact before there is any. */
  List<Remark> tooEarly() {
    List<Remark> remarks = new ArrayList<>();
    for (IndexedRule rule : knowledge.rules()) {
      for (Premise premise : rule.premises()) {
        if (STAGES.indexOf(rule.stage()) < KNOWN_FROM.get(premise.fact())) {
          remarks.add(
              Remark.of(
                  rule,
                  rule.id() + " " + premise.fact(),
                  Severity.ERROR,
                  "rule \"%s\" reads a %s before there is any"
                      .formatted(rule.id(), premise.fact())));
        }
      }
    }
    return remarks;
  }

  /** Findings without evidence, or that can never be as strong as a rule asks. */
  List<Remark> unreachable() {
    List<Remark> remarks = new ArrayList<>();
    Map<String, Integer> most = mostFor();
    for (IndexedRule rule : knowledge.rules()) {
      for (Premise premise : rule.premises()) {
        if (premise.fact().equals("Finding") && !premise.absent()) {
          String finding = Knowledge.values(premise, "id").get(0);
          int least = Math.max(1, Knowledge.least(premise));
          if (most.getOrDefault(finding, 0) < least) {
            remarks.add(
                Remark.of(
                    rule,
                    rule.id() + " " + finding,
                    Severity.ERROR,
                    "rule \"%s\" asks for %d decibans of \"%s\", and all evidence for it is %d"
                        .formatted(rule.id(), least, finding, most.getOrDefault(finding, 0))));
          }
        }
      }
    }
    knowledge.words().findings().stream()
        .filter(word -> !most.containsKey(word.id()))
        .forEach(
            word ->
                remarks.add(
                    Remark.of(
                        word.id(),
                        Severity.ERROR,
                        "no rule gives evidence for the finding \"%s\"".formatted(word.id()))));
    return remarks;
  }

  /** Findings that no rule does anything with, and claims that deciders name and nobody makes. */
  List<Remark> deadEnds() {
    List<Remark> remarks = new ArrayList<>();
    Set<String> read = new HashSet<>();
    Set<String> asked = new HashSet<>();
    for (IndexedRule rule : knowledge.rules()) {
      rule.premises().stream()
          .filter(premise -> premise.fact().equals("Finding"))
          .forEach(premise -> read.addAll(Knowledge.values(premise, "id")));
      if (Knowledge.asks(rule)) {
        asked.add(rule.note());
      }
    }
    knowledge.words().findings().stream()
        .filter(word -> !read.contains(word.id()))
        .forEach(
            word ->
                remarks.add(
                    Remark.of(
                        word.id(),
                        Severity.ERROR,
                        "no rule reads the finding \"%s\"".formatted(word.id()))));
    for (IndexedRule rule : knowledge.rules()) {
      Set<String> named = new LinkedHashSet<>();
      Knowledge.acts(rule, Set.of("setsAside", "doubles")).map(Act::words).forEach(named::addAll);
      rule.premises().forEach(premise -> named.addAll(Knowledge.values(premise, "claim")));
      named.removeAll(asked);
      named.forEach(
          claim ->
              remarks.add(
                  Remark.of(
                      rule,
                      rule.id() + " " + claim,
                      Severity.ERROR,
                      "rule \"%s\" names the claim \"%s\", which asks for nothing"
                          .formatted(rule.id(), claim))));
    }
    return remarks;
  }

  private Map<String, Integer> mostFor() {
    Map<String, Map<String, Integer>> byQuestion = new HashMap<>();
    for (IndexedRule rule : knowledge.rules()) {
      Knowledge.acts(rule, Set.of("evidence"))
          .forEach(
              act ->
                  byQuestion
                      .computeIfAbsent(act.words().get(0), key -> new HashMap<>())
                      .merge(observation(rule), Integer.parseInt(act.words().get(1)), Math::max));
    }
    Map<String, Integer> most = new HashMap<>();
    byQuestion.forEach(
        (finding, weights) ->
            most.put(
                finding, weights.values().stream().mapToInt(weight -> Math.max(0, weight)).sum()));
    return most;
  }

  /** What rests on one observation counts once: the last answer among the premises. */
  private static String observation(IndexedRule rule) {
    String last = "";
    for (Premise premise : rule.premises()) {
      if (premise.fact().equals("Answer") && !premise.absent()) {
        last = String.join(" ", Knowledge.values(premise, "question"));
      }
    }
    return last;
  }

  /** Whether a rule can make a fact that a premise is about, there or absent. */
  private static boolean feeds(IndexedRule rule, Premise premise) {
    return rule.acts().stream()
        .anyMatch(
            act ->
                switch (premise.fact()) {
                  case "Finding" ->
                      act.verb().equals("evidence") && fits(premise, "id", act.words().get(0));
                  case "Barred" ->
                      act.verb().equals("bar")
                          && fits(premise, "lever", act.words().get(0))
                          && fits(premise, "direction", act.words().get(1));
                  case "Proposal" ->
                      Knowledge.ASKING.contains(act.verb())
                          && fits(premise, "claim", rule.note())
                          && fits(premise, "lever", act.words().get(0));
                  default -> false;
                });
  }

  private static boolean fits(Premise premise, String field, String word) {
    return premise.field(field).map(known -> known.values().contains(word)).orElse(true);
  }

  private static boolean reaches(
      String from, String goal, Map<String, Set<String>> leadsTo, Set<String> seen) {
    for (String next : leadsTo.getOrDefault(from, Set.of())) {
      if (next.equals(goal) || (seen.add(next) && reaches(next, goal, leadsTo, seen))) {
        return true;
      }
    }
    return false;
  }
}
