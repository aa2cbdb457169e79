package insidelift.engine.consultation;

import insidelift.shared.Column;
import insidelift.shared.Contribution.Origin;
import insidelift.shared.Direction;
import insidelift.shared.Kind;
import insidelift.shared.Lever;
import insidelift.shared.Proposal;
import java.util.List;

/**
 * A move that a claim asks for, with everything that spoke for it.
 *
 * @param claim the note that asks
 * @param lever the lever
 * @param direction which way; {@code HOLD} for a target already reached
 * @param kind target or correction
 * @param strength the evidence in decibans
 * @param column the column of the table of targets, for a target
 * @param undo whether it takes back the last change
 * @param origins the rules that asked
 */
public record Wish(
    String claim,
    Lever lever,
    Direction direction,
    Kind kind,
    int strength,
    Column column,
    boolean undo,
    List<Origin> origins) {

  Proposal fact() {
    return new Proposal(claim, lever.id(), direction.id(), kind.id(), strength);
  }

  /** Whether it asks for a move at all. */
  public boolean moves() {
    return direction != Direction.HOLD;
  }
}
