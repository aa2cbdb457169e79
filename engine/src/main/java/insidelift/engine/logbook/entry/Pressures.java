package insidelift.engine.logbook.entry;

/**
 * The pressures of four tyres in bar above the air around, each from 0.2 to 3.
 *
 * @param frontLeft front left
 * @param frontRight front right
 * @param rearLeft rear left
 * @param rearRight rear right
 */
public record Pressures(double frontLeft, double frontRight, double rearLeft, double rearRight) {

  /**
   * @throws RefusedEntryException if a pressure is out of range, as one in psi or kPa is
   */
  public Pressures {
    bar("front left", frontLeft);
    bar("front right", frontRight);
    bar("rear left", rearLeft);
    bar("rear right", rearRight);
  }

  private static void bar(String tyre, double value) {
    LogLimits.number("pressure " + tyre, value, LogLimits.LEAST_BAR, LogLimits.MOST_BAR, "bar");
  }
}
