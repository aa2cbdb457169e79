package insidelift.engine.logbook.use;

import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.proof.laps.LapTimes.Lap;
import java.util.OptionalDouble;

/**
 * The laps of a run after its out-lap, for tables and plots; a proof looks closer.
 *
 * @param best the quickest of them in seconds; empty where there are none
 * @param middle their median in seconds
 */
record Flying(OptionalDouble best, OptionalDouble middle) {

  static Flying of(RunEntry run) {
    double[] seconds = run.laps().stream().skip(1).mapToDouble(Lap::seconds).sorted().toArray();
    if (seconds.length == 0) {
      return new Flying(OptionalDouble.empty(), OptionalDouble.empty());
    }
    int half = seconds.length / 2;
    double middle =
        seconds.length % 2 == 1 ? seconds[half] : (seconds[half - 1] + seconds[half]) / 2;
    return new Flying(OptionalDouble.of(seconds[0]), OptionalDouble.of(middle));
  }
}
