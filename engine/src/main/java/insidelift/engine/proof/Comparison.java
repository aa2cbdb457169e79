package insidelift.engine.proof;

import insidelift.engine.proof.laps.CleanRun;
import insidelift.engine.proof.statistics.Assumptions;
import insidelift.engine.proof.statistics.Autocorrelation;
import insidelift.engine.proof.statistics.ClassicTests;
import java.util.ArrayList;
import java.util.List;

/** The arithmetic of one proof, from clean runs to a shift, its interval and the laps to come. */
final class Comparison {

  private final List<CleanRun> runs;
  private final Design design;
  private final Noise noise;
  private final double slope;
  private final double lag1;
  private final Alignment alignment;
  private final Shift shift;

  /**
   * @param runs the run before, the run after and maybe the return run, each of at least two laps
   */
  Comparison(List<CleanRun> runs) {
    this.runs = List.copyOf(runs);
    this.design = Design.of(runs);
    double measured = Trend.medianSlope(runs);
    this.lag1 = lag1(measured);
    double rho = Autocorrelation.toReckonWith(lag1, runs.size(), design.laps());
    // The noise has to be known before the slope can be drawn in, so look once with the slope as
    // measured and again with the slope as used.
    Alignment first = new Alignment(runs, design, measured);
    Noise rough = new Noise(first.lapVariance(), rho, measured, first.fullDrift());
    this.slope = rough.trend(design).perLap();
    this.alignment = new Alignment(runs, design, slope);
    this.noise = new Noise(alignment.lapVariance(), rho, measured, alignment.fullDrift());
    double seconds = alignment.shift().shift();
    double margin = noise.margin(design);
    this.shift = Shift.rounded(seconds, seconds - margin, seconds + margin);
  }

  private double lag1(double measured) {
    List<double[]> residuals = new ArrayList<>();
    List<double[]> places = new ArrayList<>();
    for (CleanRun run : runs) {
      residuals.add(Alignment.atPlace(run, measured, 0));
      places.add(run.places());
    }
    return Autocorrelation.pooled(residuals, places);
  }

  Shift shift() {
    return shift;
  }

  Drift drift() {
    Drift.Method method = design.hasReturn() ? Drift.Method.RETURN_RUN : Drift.Method.TREND;
    return new Drift(method, slope, alignment.carried());
  }

  ClassicTests tests() {
    return alignment.tests();
  }

  /** The autocorrelation as measured. */
  double lag1() {
    return lag1;
  }

  /** The autocorrelation reckoned with. */
  double rho() {
    return noise.rho();
  }

  double effective(CleanRun run) {
    return noise.effective(run.counted());
  }

  /**
   * The fewest laps in all with which the shift seen so far, or the smallest worth looking for,
   * would show with the chance wanted: in the runs there are, as a return run, or as both.
   */
  MoreLaps moreLaps() {
    double seen = Math.abs(shift.seconds());
    double smallest = Math.max(seen, Assumptions.WORTH_SECONDS);
    // Where whatever is worth looking for would have shown, only the shift seen is left to ask for.
    double wanted = enough(smallest, design) ? seen : smallest;
    int most = Assumptions.MOST_MORE_LAPS;
    MoreLaps best = new MoreLaps(most * design.runs(), most, 0, false);
    for (int more = 0; more <= most; more++) {
      Design longer = more == 0 ? design : design.withEachRunLonger(more);
      int laps = more * design.runs();
      if (enough(wanted, longer)) {
        best = fewer(best, new MoreLaps(laps, more, 0, true));
      }
      if (!design.hasReturn()) {
        int least = Math.max(Assumptions.FEWEST_LAPS, more == 0 ? 0 : longer.after());
        int longest = more == 0 ? most : least;
        for (int back = least; back <= longest; back++) {
          if (enough(wanted, longer.withReturnOf(back))) {
            best = fewer(best, new MoreLaps(laps + back, more, back, true));
          }
        }
      }
    }
    return best;
  }

  private static MoreLaps fewer(MoreLaps best, MoreLaps found) {
    return best.enough() && best.laps() <= found.laps() ? best : found;
  }

  private boolean enough(double wanted, Design planned) {
    return noise.power(wanted, planned) >= Assumptions.POWER;
  }
}
