package insidelift.engine.proof.laps;

import insidelift.engine.proof.laps.LapTimes.Lap;
import insidelift.engine.proof.laps.SetAside.Kind;
import insidelift.engine.proof.statistics.Sample;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A run after setting aside what says nothing about the kart.
 *
 * <p>The rule. The first lap is the out-lap. Of the others, with median M and spread S = 1.4826 ×
 * the median of |time − M|, a lap slower than M + max(3.5 S, 0.2 s) is set aside, as in-lap where
 * it is the last; so is a lap quicker than M by more than both 3.5 S and 3 % of M. Median, median
 * deviation and the factor 1.4826 (1/0.6745) are Hampel's (1974, J. Amer. Statist. Assoc. 69:383);
 * the limit of 3.5 is that of Iglewicz &amp; Hoaglin (1993, How to Detect and Handle Outliers,
 * ASQC). The floors of 0.2 s and 3 % are judgement: they keep an even driver's ordinary laps.
 *
 * @param role {@code before}, {@code after} or {@code again}
 * @param driven how many laps the run had, counted or not
 * @param first the number of its first lap
 * @param laps the laps that count
 * @param setAside the laps that do not
 */
public record CleanRun(
    String role, int driven, int first, List<Lap> laps, List<SetAside> setAside) {

  private static final double NORMAL = 1.4826;
  private static final double LIMIT = 3.5;
  private static final double SLOW_FLOOR_SECONDS = 0.2;
  private static final double QUICK_FLOOR_SHARE = 0.03;

  public static CleanRun of(String role, LapTimes times) {
    List<Lap> all = times.laps();
    if (all.isEmpty()) {
      return new CleanRun(role, 0, 1, List.of(), List.of());
    }
    List<Lap> kept = new ArrayList<>();
    List<SetAside> aside = new ArrayList<>();
    Lap out = all.get(0);
    aside.add(
        new SetAside(
            role, out.number(), out.seconds(), Kind.OUT_LAP, "the first lap starts in the pits"));
    List<Lap> flying = all.subList(1, all.size());
    double[] seconds = flying.stream().mapToDouble(Lap::seconds).toArray();
    double middle = Sample.median(seconds);
    double spread = NORMAL * Sample.medianDeviation(seconds);
    double slow = Math.max(LIMIT * spread, SLOW_FLOOR_SECONDS);
    double quick = Math.max(LIMIT * spread, QUICK_FLOOR_SHARE * middle);
    for (int i = 0; i < flying.size(); i++) {
      Lap lap = flying.get(i);
      double off = lap.seconds() - middle;
      boolean last = i == flying.size() - 1;
      if (off > slow) {
        String reason =
            String.format(
                Locale.ROOT, "%.2f s slower than the middle lap, limit %.2f s", off, slow);
        Kind kind = last ? Kind.IN_LAP : Kind.SLOW;
        aside.add(new SetAside(role, lap.number(), lap.seconds(), kind, reason));
      } else if (off < -quick) {
        String reason =
            String.format(
                Locale.ROOT,
                "%.2f s quicker than the middle lap, limit %.2f s: hardly a whole lap",
                -off,
                quick);
        aside.add(new SetAside(role, lap.number(), lap.seconds(), Kind.TOO_QUICK, reason));
      } else {
        kept.add(lap);
      }
    }
    int driven = all.get(all.size() - 1).number() - out.number() + 1;
    return new CleanRun(role, driven, out.number(), List.copyOf(kept), List.copyOf(aside));
  }

  /** How many laps count. */
  public int counted() {
    return laps.size();
  }

  /** The counted times in seconds, in driving order. */
  public double[] seconds() {
    return laps.stream().mapToDouble(Lap::seconds).toArray();
  }

  /** Where in the run each counted lap lies, in laps from the out-lap. */
  public double[] places() {
    return laps.stream().mapToDouble(lap -> lap.number() - first).toArray();
  }

  /** The mean place of the counted laps. */
  public double middlePlace() {
    return Sample.mean(places());
  }

  /** The sum of squared distances of the places from their mean. */
  public double placeSpread() {
    double middle = middlePlace();
    double sum = 0;
    for (double place : places()) {
      sum += (place - middle) * (place - middle);
    }
    return sum;
  }
}
