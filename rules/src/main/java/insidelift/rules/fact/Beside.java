package insidelift.rules.fact;

import java.util.Comparator;

/**
 * Another lever than camber and caster that gains enough to be named.
 *
 * @param lever a lever's id
 * @param direction which way
 * @param gain the sum of its move
 * @param minutes how long it takes
 */
public record Beside(String lever, String direction, int gain, int minutes) {

  /** Another lever that comes first, and which way: before a move of the front end, or alone. */
  public record Lead(String lever, String direction) {}

  /** What gains most first; of equals, in the order of their names. */
  public static final Comparator<Beside> BY_GAIN =
      Comparator.comparing((Beside one) -> -one.gain())
          .thenComparing(Beside::lever)
          .thenComparing(Beside::direction);

  /** Whether it comes before another by what it gains. */
  public boolean ahead(Beside other) {
    return BY_GAIN.compare(this, other) < 0;
  }
}
