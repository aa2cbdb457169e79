package insidelift.engine.proof;

import insidelift.engine.proof.laps.CleanRun;
import insidelift.engine.proof.statistics.Assumptions;
import insidelift.engine.proof.statistics.Carry;
import insidelift.engine.proof.statistics.ClassicTests;
import insidelift.engine.proof.statistics.HodgesLehmann;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * The laps after a change beside the laps they are compared with, for a given slope within runs:
 * all at the same place of their run, and at the same moment of the day.
 */
final class Alignment {

  private final double[] reference;
  private final double[] after;
  private final double carried;
  private final double fullDrift;

  /**
   * @param runs the run before, the run after and maybe the return run
   * @param design how they lie
   * @param slope the slope within runs, in seconds a lap
   */
  Alignment(List<CleanRun> runs, Design design, double slope) {
    double place = runs.get(1).middlePlace();
    double[] before = atPlace(runs.get(0), slope, place);
    this.after = atPlace(runs.get(1), slope, place);
    if (design.hasReturn()) {
      double[] again = atPlace(runs.get(2), slope, place);
      this.fullDrift = HodgesLehmann.of(before, again, Assumptions.CONFIDENCE).shift();
      this.carried = design.share() * fullDrift;
      this.reference =
          DoubleStream.concat(moved(before, carried), moved(again, carried - fullDrift)).toArray();
    } else {
      double perLap = Carry.of(slope).mean() * slope;
      this.fullDrift = perLap * (design.toAfter() + design.toAgain());
      this.carried = perLap * design.toAfter();
      this.reference = moved(before, carried).toArray();
    }
  }

  /** The times of a run in seconds, each moved along the slope to one place of the run. */
  static double[] atPlace(CleanRun run, double slope, double place) {
    double[] places = run.places();
    double[] seconds = run.seconds();
    for (int i = 0; i < seconds.length; i++) {
      seconds[i] -= slope * (places[i] - place);
    }
    return seconds;
  }

  private static DoubleStream moved(double[] seconds, double by) {
    return Arrays.stream(seconds).map(time -> time + by);
  }

  HodgesLehmann shift() {
    return HodgesLehmann.of(reference, after, Assumptions.CONFIDENCE);
  }

  /** The variance of one lap that the interval of the shift gives away, in s². */
  double lapVariance() {
    double error = shift().standardError();
    return error * error / (1.0 / after.length + 1.0 / reference.length);
  }

  ClassicTests tests() {
    return ClassicTests.of(after, reference);
  }

  /** By what the run before was moved to stand beside the run after, in seconds. */
  double carried() {
    return carried;
  }

  /** The drift from the run before to the return run, measured or expected, in seconds. */
  double fullDrift() {
    return fullDrift;
  }
}
