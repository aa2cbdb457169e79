package insidelift.engine.proof;

import insidelift.engine.proof.laps.CleanRun;
import java.util.List;

/**
 * How many laps there are where, real or planned; no times.
 *
 * @param before counted laps before the change
 * @param after counted laps after it
 * @param again counted laps of the return run, 0 without one
 * @param toAfter laps driven from the start of the run before to the start of the run after
 * @param toAgain laps driven from there to the start of the return run
 * @param placeSpread the sum of squared distances of the laps from the middle of their run
 * @param mismatch how much later in its run the run after counts, in laps
 */
record Design(
    int before,
    int after,
    int again,
    double toAfter,
    double toAgain,
    double placeSpread,
    double mismatch) {

  static Design of(List<CleanRun> runs) {
    CleanRun before = runs.get(0);
    CleanRun after = runs.get(1);
    CleanRun again = runs.size() > 2 ? runs.get(2) : null;
    double spread = runs.stream().mapToDouble(CleanRun::placeSpread).sum();
    double place = before.middlePlace();
    if (again != null) {
      double share = share(before.driven(), after.driven());
      place += share * (again.middlePlace() - place);
    }
    return new Design(
        before.counted(),
        after.counted(),
        again == null ? 0 : again.counted(),
        before.driven(),
        after.driven(),
        spread,
        after.middlePlace() - place);
  }

  private static double share(double toAfter, double toAgain) {
    return toAfter / (toAfter + toAgain);
  }

  boolean hasReturn() {
    return again > 0;
  }

  int runs() {
    return hasReturn() ? 3 : 2;
  }

  int laps() {
    return before + after + again;
  }

  /** How far from the run before to the return run the run after lies, from 0 to 1. */
  double share() {
    return share(toAfter, toAgain);
  }

  /** By what the variance of a lap is multiplied to give that of the compared difference. */
  double sampling() {
    double reference =
        hasReturn()
            ? (1 - share()) * (1 - share()) / before + share() * share() / again
            : 1.0 / before;
    return 1.0 / after + reference;
  }

  /** This design with so many laps more in each run. */
  Design withEachRunLonger(int more) {
    return new Design(
        before + more,
        after + more,
        hasReturn() ? again + more : 0,
        toAfter + more,
        toAgain + more,
        Math.max(
            placeSpread,
            spread(before + more)
                + spread(after + more)
                + (hasReturn() ? spread(again + more) : 0)),
        mismatch);
  }

  /** This design with a return run of so many laps. */
  Design withReturnOf(int laps) {
    return new Design(before, after, laps, toAfter, toAgain, placeSpread + spread(laps), mismatch);
  }

  /** Of n laps in a row: n (n² − 1) / 12. */
  private static double spread(double laps) {
    return laps * (laps * laps - 1) / 12;
  }
}
