package insidelift.rules.weigh;

import java.util.Comparator;
import java.util.List;

/**
 * What came of a weighing: everything that was known and derived.
 *
 * @param facts all of it, in no order
 */
public record Weighed(List<Object> facts) {

  /** Takes a copy of the facts. */
  public Weighed {
    facts = List.copyOf(facts);
  }

  /** What was chosen. */
  public Choice choice() {
    return all(Choice.class).get(0);
  }

  /** The levers moved now, camber before caster. */
  public List<Now> now() {
    return all(Now.class).stream().sorted(Comparator.comparing(Now::lever)).toList();
  }

  /** The sums of all moves, the best first. */
  public List<Sum> sums() {
    return all(Sum.class).stream()
        .sorted(
            Comparator.comparingInt((Sum sum) -> -sum.gain())
                .thenComparing(Sum::lever)
                .thenComparing(Sum::direction))
        .toList();
  }

  /** The terms of one move's sum, the largest first. */
  public List<Part> parts(String lever, String direction) {
    return all(Part.class).stream()
        .filter(part -> part.lever().equals(lever) && part.direction().equals(direction))
        .sorted(
            Comparator.comparingInt((Part part) -> -Math.abs(part.points()))
                .thenComparing(Part::by)
                .thenComparing(Part::finding))
        .toList();
  }

  /** All facts of one kind. */
  public <T> List<T> all(Class<T> kind) {
    return facts.stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
