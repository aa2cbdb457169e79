package insidelift.engine.audit;

import insidelift.engine.audit.check.Knowledge;
import insidelift.engine.consultation.foresight.Grid;
import insidelift.rules.fact.Spoken;
import insidelift.shared.index.Premise.Told;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.Verb;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * The questions that a finding or a fault really hangs on, read off the index: what the evidence
 * for it and the claims that bear on it read. Where few questions are left, every situation of them
 * can be visited.
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

  /** Each finding, with the claims that bear on it. */
  List<Slice> ofFindings() {
    List<Slice> slices = new ArrayList<>();
    for (IndexedRule rule : knowledge.rules()) {
      rule.acts(Verb.TERM)
          .forEach(
              term ->
                  slices.add(
                      slice(
                          "finding " + term.word(0),
                          one ->
                              one.acts(Verb.EVIDENCE)
                                      .anyMatch(act -> act.word(0).equals(term.word(0)))
                                  || one.acts(Verb.CLAIM)
                                      .anyMatch(act -> act.word(2).equals(term.word(1))))));
    }
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
    return rule.acts(Verb.CHECK).anyMatch(act -> ((Spoken.Check) Spoken.of(rule, act)).stops());
  }

  private Slice slice(String of, Predicate<IndexedRule> within) {
    Set<Integer> questions = new TreeSet<>();
    for (IndexedRule rule : knowledge.rules()) {
      if (within.test(rule)) {
        Knowledge.told(rule)
            .flatMap(told -> told.questions().stream())
            .map(grid::place)
            .filter(place -> place >= 0)
            .forEach(questions::add);
      }
    }
    double size = 1;
    for (int q : questions) {
      size *= Integer.bitCount(grid.full(q));
    }
    return new Slice(of, List.copyOf(questions), size);
  }

  /**
   * The states that a rule, and the evidence for what it bears on, name as answers that must be
   * given; "not known" is always among them.
   */
  int[] named(IndexedRule rule) {
    int[] states = new int[grid.size()];
    Arrays.fill(states, Grid.ABSENT);
    Set<IndexedRule> rules = new HashSet<>(Set.of(rule));
    if (rule.acts(Verb.CLAIM).findAny().isPresent()) {
      knowledge.rules().stream()
          .filter(one -> one.acts(Verb.EVIDENCE).findAny().isPresent())
          .forEach(rules::add);
    }
    for (IndexedRule one : rules) {
      Knowledge.told(one).filter(told -> !told.absent()).forEach(told -> name(told, states));
    }
    return states;
  }

  private void name(Told told, int[] states) {
    for (String id : told.questions()) {
      int q = grid.place(id);
      if (q >= 0) {
        states[q] |= told.values().isEmpty() ? grid.full(q) : grid.mask(q, told.values());
      }
    }
  }
}
