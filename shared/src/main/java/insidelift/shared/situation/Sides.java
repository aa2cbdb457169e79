package insidelift.shared.situation;

import insidelift.shared.Degrees;

/**
 * The same angle on both sides of the kart.
 *
 * @param left the left side's
 * @param right the right side's
 */
public record Sides(Degrees left, Degrees right) {

  /**
   * Readings this close count as equal. Provisional: no published figure was found; it is about
   * what a careful reading with a garage laser repeats to.
   */
  public static final Degrees EQUAL_WITHIN = Degrees.of(0.25);

  /** The same angle on either side. */
  public static Sides both(Degrees angle) {
    return new Sides(angle, angle);
  }

  /** What the two sides differ by. */
  public Degrees difference() {
    return left.minus(right).size();
  }

  /** Whether the two sides count as equal. */
  public boolean equal() {
    return !difference().exceeds(EQUAL_WITHIN);
  }

  /** The reading of the pair. */
  public Degrees middle() {
    return left.middle(right);
  }
}
