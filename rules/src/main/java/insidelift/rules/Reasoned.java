package insidelift.rules;

import insidelift.rules.fact.Choice;
import insidelift.rules.fact.Found;
import insidelift.rules.fact.Part;
import insidelift.rules.fact.Spoken;
import insidelift.rules.fact.Step;
import insidelift.rules.fact.Sum;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * What came of a line of reasoning: everything that was known and derived. Whatever comes in a list
 * has an order of its own, so that no result depends on the order in which rules spoke.
 *
 * @param facts all of it, in no order
 */
public record Reasoned(List<Object> facts) {

  /** Takes a copy of the facts. */
  public Reasoned {
    facts = List.copyOf(facts);
  }

  /** What was chosen. */
  public Choice choice() {
    return all(Choice.class).findFirst().orElseThrow();
  }

  /** The levers moved now, camber before caster. */
  public List<Step> now() {
    return all(Step.class).filter(Step::now).sorted(Comparator.comparing(Step::lever)).toList();
  }

  /** What plain rules said of one kind, by the name of the rule. */
  public <T extends Spoken> List<T> spoken(Class<T> kind) {
    return all(kind).sorted(Comparator.comparing(spoken -> spoken.by().rule())).toList();
  }

  /** The findings, the strongest first. */
  public List<Found> found() {
    return all(Found.class)
        .sorted(Comparator.comparingInt((Found one) -> -one.weight()).thenComparing(Found::finding))
        .toList();
  }

  /** The sums of all moves, the best first. */
  public List<Sum> sums() {
    return all(Sum.class)
        .sorted(
            Comparator.comparingInt((Sum sum) -> -sum.gain())
                .thenComparing(Sum::lever)
                .thenComparing(Sum::direction))
        .toList();
  }

  /** The terms of one move's sum, the largest first. */
  public List<Part> parts(String lever, String direction) {
    return all(Part.class)
        .filter(part -> part.lever().equals(lever) && part.direction().equals(direction))
        .sorted(
            Comparator.comparingInt((Part part) -> -Math.abs(part.points()))
                .thenComparing(part -> part.by().rule())
                .thenComparing(Part::finding))
        .toList();
  }

  /** All facts of one kind, in no order. */
  public <T> Stream<T> all(Class<T> kind) {
    return facts.stream().filter(kind::isInstance).map(kind::cast);
  }
}
