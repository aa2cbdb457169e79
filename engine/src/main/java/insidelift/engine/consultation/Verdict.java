package insidelift.engine.consultation;

import insidelift.engine.sizing.Sized;
import insidelift.shared.Contribution.Origin;
import insidelift.shared.Kind;
import insidelift.shared.Lever;
import java.util.List;
import java.util.Optional;

/**
 * What is to become of one lever.
 *
 * @param lever the lever
 * @param kind target or correction
 * @param sized the move, or the stay
 * @param wishes the wishes that stand behind it
 * @param holders the rules that keep it where it is
 * @param heldBy the note that says why it stays
 */
public record Verdict(
    Lever lever,
    Kind kind,
    Sized sized,
    List<Wish> wishes,
    List<Origin> holders,
    Optional<String> heldBy) {

  /** Whether the lever moves. */
  public boolean moves() {
    return sized.moves();
  }

  /** Whether the last change is taken back. */
  public boolean undo() {
    return wishes.stream().anyMatch(Wish::undo);
  }

  /** The strongest evidence behind it, in decibans. */
  public int strength() {
    return wishes.stream().mapToInt(Wish::strength).max().orElse(0);
  }
}
