package insidelift.shared.situation;

/**
 * Tread temperatures of one front tyre in degrees Celsius.
 *
 * @param inner the edge nearest the seat
 * @param middle the middle of the tread
 * @param outer the edge away from the seat
 */
public record EdgeTemperatures(double inner, double middle, double outer) {

  /** What counts as a difference, in kelvin. Provisional: no published figure for karts. */
  public static final double DIFFERENCE = 5.0;

  /** The word for what these readings show, as an answer to {@code front-temps}. */
  String pattern() {
    if (inner - outer >= DIFFERENCE) {
      return "inner-hot";
    }
    if (outer - inner >= DIFFERENCE) {
      return "outer-hot";
    }
    if (middle - Math.max(inner, outer) >= DIFFERENCE) {
      return "middle-hot";
    }
    if (Math.min(inner, outer) - middle >= DIFFERENCE) {
      return "edges-hot";
    }
    return "even";
  }

  /**
   * What both front tyres show together: a pattern counts only where both show it, and otherwise
   * that they differ is what they show. All-hot and all-cold need a tyre maker's window, so they
   * are never read off numbers.
   */
  public static String pattern(EdgeTemperatures left, EdgeTemperatures right) {
    return left.pattern().equals(right.pattern()) ? left.pattern() : "sides-differ";
  }
}
