package insidelift.engine.sheet;

/**
 * How one lever stands on one state of the track.
 *
 * @param left the left side: degrees, or mm of toe-out
 * @param right the right side
 * @param origin how that is known
 */
public record Cell(double left, double right, Origin origin) {

  /** How a figure is known. */
  public enum Origin {
    /** It was read on this kart. */
    OWN,
    /** It lies between or beyond this kart's own two, as the starting points do; worked out. */
    STEP,
    /** Where the trade or this program starts a kart without a record; never of this kart. */
    START,
    /** Nobody told it. */
    NONE
  }

  static final Cell EMPTY = new Cell(0, 0, Origin.NONE);

  static Cell both(double value, Origin origin) {
    return new Cell(value, value, origin);
  }

  double middle() {
    return (left + right) / 2;
  }

  /** Whether there is a figure. */
  public boolean told() {
    return origin != Origin.NONE;
  }
}
