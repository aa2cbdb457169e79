package insidelift.engine.consultation.explanation;

import insidelift.shared.Direction;
import insidelift.shared.Lever;
import java.util.ArrayList;
import java.util.List;

/**
 * Why a lever is not moved that way.
 *
 * @param lever the lever
 * @param direction which way
 * @param advised whether it is moved that way after all
 * @param sum what the move is worth
 * @param stopped what outweighed it or stood in its way, in sentences
 * @param open what would speak for it if it were answered so
 */
public record WhyNot(
    Lever lever,
    Direction direction,
    boolean advised,
    How.Sum sum,
    List<String> stopped,
    List<String> open) {

  /** Takes copies of the lists. */
  public WhyNot {
    stopped = List.copyOf(stopped);
    open = List.copyOf(open);
  }

  /** The explanation as lines of at most 80 columns. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    String move = Said.move(lever, direction);
    lines.add(advised ? "In fact, " + move + " is advised now." : "Why not " + move + ":");
    stopped.forEach(sentence -> Said.wrap(sentence, "  - ", lines));
    sum.lines(lines);
    How.sources(List.of(sum), lines);
    if (!open.isEmpty()) {
      lines.add("It would speak for it, if it were so:");
      open.forEach(premise -> Said.wrap(premise, "  - ", lines));
    }
    return lines;
  }
}
