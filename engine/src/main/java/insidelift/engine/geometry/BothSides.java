package insidelift.engine.geometry;

import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.shared.Degrees;

/**
 * A reading of each side.
 *
 * @param left of the left wheel
 * @param right of the right wheel
 */
public record BothSides(double left, double right) {

  /** Left and right further apart than this are made equal first: provisional. */
  static final Degrees EQUAL_WITHIN = Degrees.of(0.25);

  /**
   * Reads {@code {"left":…,"right":…}}, each within the range.
   *
   * @throws RefusedInputException if it is not that
   */
  public static BothSides read(Fields parent, String key, double least, double most, String unit) {
    Fields fields = parent.object(key);
    BothSides both =
        new BothSides(
            fields.number(Side.LEFT.word(), least, most, unit),
            fields.number(Side.RIGHT.word(), least, most, unit));
    fields.refuseOthers();
    return both;
  }

  public double of(Side side) {
    return side == Side.LEFT ? left : right;
  }

  /** Both sides the same: the middle between them, and a change. */
  public BothSides middlePlus(double change) {
    double middle = (left + right) / 2 + change;
    return new BothSides(middle, middle);
  }

  /** Left less right. */
  public double difference() {
    return left - right;
  }

  /** Whether two angles in degrees are too far apart to be called equal. */
  public boolean anglesDiffer() {
    return Degrees.of(difference()).size().exceeds(EQUAL_WITHIN);
  }

  /** The complaint about angles that differ; empty if they do not. */
  public String complaint(String what) {
    return anglesDiffer()
        ? "Left and right "
            + what
            + " differ by "
            + Printed.fixed(Math.abs(difference()), 2)
            + "°, more than "
            + Printed.fixed(EQUAL_WITHIN.value(), 2)
            + "° (provisional): make them equal before anything else."
        : "";
  }

  public void putInto(ObjectNode node) {
    node.put(Side.LEFT.word(), left).put(Side.RIGHT.word(), right);
  }
}
