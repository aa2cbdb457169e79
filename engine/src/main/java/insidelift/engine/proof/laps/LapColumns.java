package insidelift.engine.proof.laps;

import java.util.Objects;

/**
 * The names of the two columns of a lap-time file, compared without regard to case.
 *
 * @param lap the column of lap numbers
 * @param time the column of lap times
 */
public record LapColumns(String lap, String time) {

  /** The columns {@code lap} and {@code time}. */
  public static final LapColumns STANDARD = new LapColumns("lap", "time");

  /**
   * @throws IllegalArgumentException if a name is blank or both are the same
   */
  public LapColumns {
    Objects.requireNonNull(lap, "lap");
    Objects.requireNonNull(time, "time");
    if (lap.isBlank() || time.isBlank()) {
      throw new IllegalArgumentException("a column needs a name");
    }
    if (lap.equalsIgnoreCase(time)) {
      throw new IllegalArgumentException("lap and time cannot be the same column");
    }
  }
}
