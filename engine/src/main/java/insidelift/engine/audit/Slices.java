package insidelift.engine.audit;

import insidelift.engine.consultation.Grid;
import insidelift.shared.CheckKind;
import insidelift.shared.Lever;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.RuleIndex.Premise;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * The questions that a lever, a claim or a fault really hangs on, read off the index: what its
 * rules read, and what the rules read that make the findings and limits it reads. Where few
 * questions are left, every situation of them can be visited.
 */
final class Slices {

  /**
   * The questions something hangs on.
   *
   * @param of what hangs on them
   * @param questions their places in the grid, rising
   * @param size how many combinations their states have, "not known" being one
   */
  record Slice(String of, List<Integer> questions, double size) {}

  private final Knowledge knowledge;
  private final Grid grid;

  Slices(Knowledge knowledge, Grid grid) {
    this.knowledge = knowledge;
    this.grid = grid;
  }

  /** All that can move, hold or bar a lever, its deciders among it. */
  List<Slice> ofLevers() {
    List<Slice> slices = new ArrayList<>();
    for (Lever lever : Lever.values()) {
      Set<String> claims = new LinkedHashSet<>();
      for (IndexedRule rule : knowledge.rules()) {
        if (Knowledge.acts(rule, Knowledge.ASKING)
            .anyMatch(act -> act.words().get(0).equals(lever.id()))) {
          claims.add(rule.note());
        }
      }
      slices.add(
          slice(
              "lever " + lever.id(),
              rule -> concerns(rule, lever.id()) || setsAside(rule, claims)));
    }
    return slices;
  }

  /** Each claim that asks for a move, with the limits of the levers that it moves. */
  List<Slice> ofClaims() {
    Map<String, Set<String>> levers = new LinkedHashMap<>();
    for (IndexedRule rule : knowledge.rules()) {
      Knowledge.acts(rule, Knowledge.ASKING)
          .forEach(
              act ->
                  levers
                      .computeIfAbsent(rule.note(), key -> new TreeSet<>())
                      .add(act.words().get(0)));
    }
    List<Slice> slices = new ArrayList<>();
    levers.forEach(
        (claim, moved) ->
            slices.add(
                slice(
                    "claim " + claim, rule -> rule.note().equals(claim) && Knowledge.asks(rule))));
    return slices;
  }

  /** Each note on which a fault, a stop or a set-first matter stands. */
  List<Slice> ofFaults() {
    Set<String> notes = new LinkedHashSet<>();
    for (IndexedRule rule : knowledge.rules()) {
      if (blocks(rule)) {
        notes.add(rule.note());
      }
    }
    return notes.stream()
        .map(note -> slice("fault " + note, rule -> rule.note().equals(note) && blocks(rule)))
        .toList();
  }

  private static boolean blocks(IndexedRule rule) {
    return Knowledge.acts(rule, Set.of("check"))
        .anyMatch(act -> !act.words().get(0).equals(CheckKind.LOOK.id()));
  }

  private static boolean concerns(IndexedRule rule, String lever) {
    return rule.acts().stream()
        .filter(act -> !Set.of("leads", "caution").contains(act.verb()))
        .anyMatch(act -> !act.words().isEmpty() && act.words().get(0).equals(lever));
  }

  private static boolean setsAside(IndexedRule rule, Set<String> claims) {
    return Knowledge.acts(rule, Set.of("setsAside"))
        .map(Act::words)
        .anyMatch(words -> words.stream().anyMatch(claims::contains));
  }

  private Slice slice(String of, Predicate<IndexedRule> within) {
    Set<IndexedRule> rules = new LinkedHashSet<>();
    knowledge.rules().stream().filter(within).forEach(rule -> gather(rule, rules));
    Set<Integer> questions = new TreeSet<>();
    for (IndexedRule rule : rules) {
      for (Premise premise : rule.premises()) {
        if (premise.fact().equals("Answer")) {
          Knowledge.values(premise, "question").forEach(id -> questions.add(grid.place(id)));
        }
      }
    }
    double size = 1;
    for (int q : questions) {
      size *= Integer.bitCount(grid.full(q));
    }
    return new Slice(of, List.copyOf(questions), size);
  }

  /**
   * The states that a rule, and the rules that make what it reads, name as answers that must be
   * given; "not known" is always among them.
   */
  int[] named(IndexedRule rule) {
    Set<IndexedRule> rules = new LinkedHashSet<>();
    gather(rule, rules);
    int[] states = new int[grid.size()];
    Arrays.fill(states, Grid.ABSENT);
    for (IndexedRule one : rules) {
      for (Premise premise : one.premises()) {
        if (premise.fact().equals("Answer") && !premise.absent()) {
          for (String id : Knowledge.values(premise, "question")) {
            int q = grid.place(id);
            states[q] |= grid.mask(q, Knowledge.values(premise, "value"));
          }
        }
      }
    }
    return states;
  }

  private static boolean proposes(IndexedRule maker, Premise premise) {
    return premise.fact().equals("Proposal")
        && !premise.absent()
        && premise.field("claim").map(one -> one.values().contains(maker.note())).orElse(true)
        && Knowledge.acts(maker, Knowledge.ASKING)
            .anyMatch(
                act ->
                    premise
                        .field("lever")
                        .map(one -> one.values().contains(act.words().get(0)))
                        .orElse(true));
  }

  /** A rule and the rules that make what it reads. */
  private void gather(IndexedRule rule, Set<IndexedRule> into) {
    if (!into.add(rule)) {
      return;
    }
    for (Premise premise : rule.premises()) {
      for (IndexedRule maker : knowledge.rules()) {
        boolean finding =
            premise.fact().equals("Finding")
                && Knowledge.acts(maker, Set.of("evidence"))
                    .anyMatch(act -> Knowledge.values(premise, "id").contains(act.words().get(0)));
        boolean bar =
            premise.fact().equals("Barred")
                && Knowledge.acts(maker, Set.of("bar"))
                    .anyMatch(
                        act -> Knowledge.values(premise, "lever").contains(act.words().get(0)));
        if (finding || bar || proposes(maker, premise)) {
          gather(maker, into);
        }
      }
    }
  }
}
