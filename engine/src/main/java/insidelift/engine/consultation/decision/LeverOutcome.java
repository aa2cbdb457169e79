package insidelift.engine.consultation.decision;

import insidelift.engine.sizing.Sized;
import insidelift.rules.fact.Part;
import insidelift.rules.fact.Spoken.By;
import insidelift.shared.Direction;
import insidelift.shared.Kind;
import insidelift.shared.Lever;
import java.util.List;
import java.util.Optional;

/**
 * What is to become of one lever.
 *
 * @param lever the lever
 * @param kind why it moves, or would
 * @param sized the move, or the stay
 * @param first whether it is made now
 * @param by the rules it rests on beside its sum: those that name the place it goes to, or that
 *     keep it where it is
 * @param parts the terms of the sum of the move; none where the place alone decides
 * @param gain what the move is worth; 0 where the place alone decides
 */
public record LeverOutcome(
    Lever lever, Kind kind, Sized sized, boolean first, List<By> by, List<Part> parts, int gain) {

  /** Takes copies of the lists. */
  public LeverOutcome {
    by = List.copyOf(by);
    parts = List.copyOf(parts);
  }

  /** Whether the lever moves. */
  public boolean moves() {
    return sized.moves();
  }

  /** The note that says why it stays, if it stays. */
  public Optional<String> heldBy() {
    return moves() ? Optional.empty() : by.stream().map(By::note).findFirst();
  }

  /** What speaks for the move, the largest first. */
  public List<Part> helps() {
    return parts.stream().filter(part -> part.points() > 0).toList();
  }

  /** What speaks for the move with at least a quarter of what speaks for it most. */
  public List<Part> weighty() {
    List<Part> helps = helps();
    return helps.stream().filter(part -> 4 * part.points() >= helps.get(0).points()).toList();
  }

  /** What speaks for the move most and is disputed by nobody; failing that, what speaks most. */
  public Optional<Part> headline() {
    return helps().stream()
        .filter(part -> !part.disputed())
        .findFirst()
        .or(() -> helps().stream().findFirst());
  }

  /** Whether a camp of the trade contradicts what speaks for it most. */
  public boolean disputed() {
    return helps().stream().findFirst().filter(Part::disputed).isPresent();
  }

  /** Whether it goes that way. */
  public boolean goes(Direction direction) {
    return sized.direction() == direction;
  }
}
