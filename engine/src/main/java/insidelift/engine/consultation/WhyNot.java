package insidelift.engine.consultation;

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
 * @param rules the rules that ask for it, those that spoke first
 * @param stopped what outweighed, barred or set it aside, in sentences
 */
public record WhyNot(
    Lever lever, Direction direction, boolean advised, List<Asks> rules, List<String> stopped) {

  /**
   * One rule that could ask for the move.
   *
   * @param rule its id
   * @param title its note's title
   * @param spoke whether it did
   * @param missing its premises that nobody has answered
   * @param contradicted its premises that do not hold
   */
  public record Asks(
      String rule, String title, boolean spoke, List<String> missing, List<String> contradicted) {}

  /** The explanation as lines of at most 80 columns. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    String move = lever.id() + " " + direction.id();
    lines.add(advised ? "In fact, " + move + " is advised now." : "Why not " + move + ":");
    stopped.forEach(sentence -> Said.wrap(sentence, "  - ", lines));
    for (Asks asks : rules) {
      Said.wrap((asks.spoke() ? "spoke: " : "did not speak: ") + asks.title(), "  - ", lines);
      asks.contradicted().forEach(one -> Said.wrap("does not hold: " + one, "      ", lines));
      asks.missing().forEach(one -> Said.wrap("not known: " + one, "      ", lines));
    }
    return lines;
  }
}
