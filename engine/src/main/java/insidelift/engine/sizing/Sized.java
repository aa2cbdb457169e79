package insidelift.engine.sizing;

import insidelift.shared.Degrees;
import insidelift.shared.Direction;
import insidelift.shared.situation.Sides;

/**
 * A move with its size.
 *
 * @param direction which way; {@code HOLD} where nothing is left to move
 * @param degrees how far, without sign
 * @param positions how far in positions of the eccentric, without sign
 * @param target where each side ends: camber absolute, caster as the kart's reference has it
 * @param end why it ends there, if it could not go as far as was asked
 */
public record Sized(Direction direction, Degrees degrees, double positions, Sides target, End end) {

  /** What stopped a move short. */
  public enum End {
    /** Nothing: it goes as far as was asked. */
    NONE,
    /** The setting is there already. */
    ALREADY_THERE,
    /** The lever's range ends. */
    RANGE
  }

  /** Whether the lever moves at all. */
  public boolean moves() {
    return direction != Direction.HOLD;
  }
}
