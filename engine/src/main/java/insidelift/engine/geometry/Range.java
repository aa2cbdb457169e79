package insidelift.engine.geometry;

/** The one form in which a number outside its range is refused. */
public final class Range {

  private Range() {}

  /**
   * Holds a value to its bounds.
   *
   * @throws RefusedInputException if the value is not within the bounds, both included, or not a
   *     number
   */
  public static void check(
      String place, double value, double least, double most, String unitAndReason) {
    if (!(value >= least && value <= most)) {
      throw new RefusedInputException(
          place,
          Printed.exact(value)
              + " is outside "
              + bound(least)
              + " to "
              + bound(most)
              + (unitAndReason.isEmpty() ? "" : " " + unitAndReason));
    }
  }

  /** A bound that was computed needs no more than a hundredth. */
  private static String bound(double value) {
    return Printed.exact(Double.parseDouble(Printed.fixed(value, 2)));
  }
}
