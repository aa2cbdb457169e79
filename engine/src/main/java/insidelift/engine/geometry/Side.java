package insidelift.engine.geometry;

/** One side of the kart, seen by the driver. */
public enum Side {
  LEFT("left"),
  RIGHT("right");

  private final String word;

  Side(String word) {
    this.word = word;
  }

  /** The word for it, which is also the JSON key. */
  public String word() {
    return word;
  }

  /**
   * Which way a washer turns, seen from above, when its pivot goes from rearward by outward to
   * forward: clockwise on the left, and mirrored on the right.
   */
  public String turning(double clockingDeg) {
    boolean clockwise = (clockingDeg > 0) == (this == LEFT);
    return clockwise ? "clockwise" : "anticlockwise";
  }
}
