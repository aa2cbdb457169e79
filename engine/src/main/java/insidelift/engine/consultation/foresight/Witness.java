package insidelift.engine.consultation.foresight;

import insidelift.shared.index.Premise;
import insidelift.shared.index.RuleIndex;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.Verb;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Builds situations in which a rule comes true and nothing else is wrong: where an answer matters
 * rarely, chance seldom finds the situation that shows it, and this does.
 */
public final class Witness {

  private final Grid grid;
  private final List<IndexedRule> rules;
  private final List<IndexedRule> evidence;
  private final List<IndexedRule> terms;
  private final Map<String, List<IndexedRule>> reading = new HashMap<>();

  /** Witnesses for the plain rules of an index. */
  public Witness(RuleIndex index, Grid grid) {
    this.grid = grid;
    this.rules =
        index.rules().stream()
            .filter(IndexedRule::plain)
            .filter(rule -> rule.premises().stream().allMatch(Premise.Told.class::isInstance))
            .toList();
    this.evidence =
        rules.stream()
            .filter(rule -> rule.acts(Verb.EVIDENCE).anyMatch(act -> act.number(1) > 0))
            .toList();
    for (IndexedRule rule : rules) {
      rule.premises().stream()
          .flatMap(premise -> OpenQuestions.questions(premise).stream())
          .distinct()
          .forEach(
              question -> reading.computeIfAbsent(question, key -> new ArrayList<>()).add(rule));
    }
    this.terms = rules.stream().filter(rule -> rule.acts(Verb.TERM).findAny().isPresent()).toList();
  }

  /** Situations in which each rule that answers decide comes true; not all of them make sense. */
  public List<int[]> all() {
    int[] box = grid.all();
    int[] now = grid.nothing();
    List<int[]> points = new ArrayList<>();
    rules.forEach(rule -> of(rule, box, now).ifPresent(points::add));
    for (int q = 0; q < grid.size(); q++) {
      of(grid.question(q).id(), rules, box, now).forEach(points::add);
    }
    return points;
  }

  /**
   * Situations to try a question in: each rule that reads it made true, by itself and beside each
   * complaint that there is evidence of.
   *
   * @param live the rules that can still come true and are heard
   * @param box all completions
   * @param now what is known, with every open question not known
   */
  Stream<int[]> of(String question, Collection<IndexedRule> live, int[] box, int[] now) {
    List<IndexedRule> felt = evidence.stream().filter(live::contains).toList();
    return reading.getOrDefault(question, List.of()).stream()
        .filter(live::contains)
        .flatMap(
            rule ->
                Stream.concat(
                    of(rule, box, now).stream(),
                    felt.stream().flatMap(beside -> both(rule, beside, box, now).stream())));
  }

  private Optional<int[]> both(IndexedRule rule, IndexedRule beside, int[] box, int[] now) {
    int[] point = now.clone();
    return satisfy(rule, box, point) && satisfy(beside, box, point)
        ? Optional.of(point)
        : Optional.empty();
  }

  /**
   * A situation in which a rule comes true as far as answers go, and a claim has something to bear
   * on; empty if there is none.
   */
  public Optional<int[]> of(IndexedRule rule, int[] box, int[] now) {
    int[] point = now.clone();
    if (!satisfy(rule, box, point)) {
      return Optional.empty();
    }
    Set<String> on = rule.acts(Verb.CLAIM).map(act -> act.word(2)).collect(Collectors.toSet());
    if (!on.isEmpty()) {
      Set<String> borne =
          terms.stream()
              .flatMap(term -> term.acts(Verb.TERM))
              .filter(term -> on.contains(term.word(1)))
              .filter(term -> term.word(4).equals("true") || term.word(0).equals(term.word(1)))
              .map(term -> term.word(0))
              .collect(Collectors.toSet());
      boolean found =
          evidence.stream()
              .filter(
                  piece -> piece.acts(Verb.EVIDENCE).anyMatch(act -> borne.contains(act.word(0))))
              .anyMatch(piece -> satisfy(piece, box, point));
      return found ? Optional.of(point) : Optional.empty();
    }
    return Optional.of(point);
  }

  /** Makes a rule come true as far as open questions allow; what is absent stays absent. */
  private boolean satisfy(IndexedRule rule, int[] box, int[] point) {
    for (Premise premise : rule.premises()) {
      if (premise instanceof Premise.Told told && !satisfy(told, box, point)) {
        return false;
      }
    }
    return true;
  }

  private boolean satisfy(Premise.Told told, int[] box, int[] point) {
    int[] places =
        told.questions().stream().mapToInt(grid::place).filter(place -> place >= 0).toArray();
    boolean there =
        Arrays.stream(places).anyMatch(place -> (point[place] & mask(told, place)) != 0);
    if (told.absent() || there) {
      return there != told.absent();
    }
    for (int place : places) {
      int possible = box[place] & mask(told, place);
      if (possible != 0 && point[place] == Grid.ABSENT) {
        point[place] = Integer.lowestOneBit(possible);
        return true;
      }
    }
    return false;
  }

  private int mask(Premise.Told told, int place) {
    return told.values().isEmpty()
        ? grid.full(place) & ~Grid.ABSENT
        : grid.mask(place, told.values());
  }
}
