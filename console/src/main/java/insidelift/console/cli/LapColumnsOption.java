package insidelift.console.cli;

import insidelift.engine.proof.laps.LapColumns;
import picocli.CommandLine.Option;

/** {@code --lap-column} and {@code --time-column}: where the laps stand in a lap file. */
public final class LapColumnsOption {

  @Option(
      names = "--lap-column",
      paramLabel = "NAME",
      description = "the file's column of lap numbers")
  private String lap;

  @Option(names = "--time-column", paramLabel = "NAME", description = "the file's column of times")
  private String time;

  /** Whether a column was named. */
  public boolean named() {
    return lap != null || time != null;
  }

  /**
   * The columns to read.
   *
   * @throws IllegalArgumentException if a name is blank or both are the same
   */
  public LapColumns read() {
    LapColumns standard = LapColumns.STANDARD;
    return new LapColumns(
        lap == null ? standard.lap() : lap, time == null ? standard.time() : time);
  }
}
