package insidelift.engine.proof;

/**
 * The drift of track, tyres and driver that was taken out of the comparison.
 *
 * @param method how it was found
 * @param secondsPerLap the common slope within runs, drawn toward none; negative is getting quicker
 * @param carriedSeconds what the laps before the change were moved by to stand beside those after
 *     it
 */
public record Drift(Method method, double secondsPerLap, double carriedSeconds) {

  /** Ways to find the drift. */
  public enum Method {
    /** The run after lies between two runs on the old setting. */
    RETURN_RUN("return-run"),
    /** There is only the slope within runs, of which a part is taken to carry over. */
    TREND("trend");

    private final String id;

    Method(String id) {
      this.id = id;
    }

    /** The word used for it in JSON. */
    public String id() {
      return id;
    }
  }
}
