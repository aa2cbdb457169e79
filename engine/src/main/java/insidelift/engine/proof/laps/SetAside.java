package insidelift.engine.proof.laps;

/**
 * A lap that was not counted, and why.
 *
 * @param run {@code before}, {@code after} or {@code again}
 * @param lap the number of the lap
 * @param seconds its time in seconds
 * @param kind what sort of lap it was
 * @param reason the reason in words, with the limit it broke
 */
public record SetAside(String run, int lap, double seconds, Kind kind, String reason) {

  /** Sorts of laps that are not counted. */
  public enum Kind {
    /** The first lap of a run: it starts in the pits, on cold tyres. */
    OUT_LAP("out-lap"),
    /** The last lap of a run where it is slow: the driver is coming in. */
    IN_LAP("in-lap"),
    /** A lap much slower than the middle of its run: traffic, a mistake, a yellow flag. */
    SLOW("slow"),
    /** A lap too quick to be whole: a cut corner or a missed timing loop. */
    TOO_QUICK("too-quick");

    private final String id;

    Kind(String id) {
      this.id = id;
    }

    /** The word used for it in JSON. */
    public String id() {
      return id;
    }
  }
}
