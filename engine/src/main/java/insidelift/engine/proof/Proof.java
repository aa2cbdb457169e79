package insidelift.engine.proof;

import insidelift.engine.proof.laps.CleanRun;
import insidelift.engine.proof.laps.LapTimes;
import insidelift.engine.proof.laps.SetAside;
import insidelift.engine.proof.statistics.Assumptions;
import insidelift.engine.proof.statistics.ClassicTests;
import java.util.ArrayList;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Did a change make the laps quicker? The verdict on a run before and a run after it, and better
 * still a return run on the old setting.
 *
 * <p>Out-lap, slow laps and in-lap are set aside ({@link SetAside}). The drift is taken out: with a
 * return run the laps after the change are compared with what the two runs on the old setting give
 * at that moment, otherwise with the run before moved along the slope within runs ({@link Drift}).
 * The {@linkplain Shift shift} is Hodges and Lehmann's; its 95 % interval widens for
 * autocorrelation and for drift that laps cannot show. The verdict is <em>keep</em> where the whole
 * interval is quicker, <em>undo</em> where it is slower, else <em>cannot tell</em>.
 */
public final class Proof {

  /**
   * What became of one run.
   *
   * @param role {@code before}, {@code after} or {@code again}
   * @param name what the user calls it
   * @param driven laps from the first to the last, counted or not
   * @param counted laps that count
   * @param effective how many independent laps the counted ones are worth; NaN where not reckoned
   */
  public record Run(String role, String name, int driven, int counted, double effective) {}

  private static final List<String> ROLES = List.of("before", "after", "again");

  private final List<CleanRun> cleanRuns;
  private final List<Run> runs;
  private final Optional<Comparison> comparison;
  private final Feel feel;

  private Proof(List<LapTimes> times, Feel feel) {
    List<CleanRun> clean = new ArrayList<>();
    for (int i = 0; i < times.size(); i++) {
      clean.add(CleanRun.of(ROLES.get(i), times.get(i)));
    }
    boolean enough = clean.stream().allMatch(run -> run.counted() >= Assumptions.FEWEST_LAPS);
    this.cleanRuns = List.copyOf(clean);
    this.comparison = enough ? Optional.of(new Comparison(clean)) : Optional.empty();
    this.feel = feel;
    List<Run> counts = new ArrayList<>();
    for (int i = 0; i < clean.size(); i++) {
      CleanRun run = clean.get(i);
      double effective = comparison.map(c -> c.effective(run)).orElse(Double.NaN);
      counts.add(new Run(run.role(), times.get(i).name(), run.driven(), run.counted(), effective));
    }
    this.runs = List.copyOf(counts);
  }

  /** The proof of a change from the run before it and the run after it. */
  public static Proof of(LapTimes before, LapTimes after) {
    return of(before, after, Optional.empty(), Feel.UNKNOWN);
  }

  /**
   * The proof of a change.
   *
   * @param before the run on the old setting
   * @param after the run on the new setting, next in time
   * @param again the return run on the old setting, next in time, if there was one
   * @param feel what the driver felt of the change
   */
  public static Proof of(LapTimes before, LapTimes after, Optional<LapTimes> again, Feel feel) {
    List<LapTimes> times = new ArrayList<>(List.of(before, after));
    again.ifPresent(times::add);
    return new Proof(times, Objects.requireNonNull(feel, "feel"));
  }

  /** What to do with the change; {@link Verdict#CANNOT_TELL} too where laps are too few. */
  public Verdict verdict() {
    return shift().map(Shift::verdict).orElse(Verdict.CANNOT_TELL);
  }

  /** The shift with its interval; empty where a run has fewer than five laps that count. */
  public Optional<Shift> shift() {
    return comparison.map(Comparison::shift);
  }

  /**
   * How many laps more would tell with a chance of 80 %, if they are like these and the shift is as
   * seen, or 0.15 s where less was seen.
   */
  public MoreLaps moreLaps() {
    if (comparison.isEmpty()) {
      IntSummaryStatistics missing =
          cleanRuns.stream()
              .mapToInt(run -> Math.max(0, Assumptions.FEWEST_LAPS - run.counted()))
              .summaryStatistics();
      return new MoreLaps((int) missing.getSum(), missing.getMax(), 0, false);
    }
    return verdict() == Verdict.CANNOT_TELL ? comparison.get().moreLaps() : MoreLaps.NONE;
  }

  /** The laps that do not count, run by run. */
  public List<SetAside> setAside() {
    return cleanRuns.stream().flatMap(run -> run.setAside().stream()).toList();
  }

  /** The runs, in the order driven. */
  public List<Run> runs() {
    return runs;
  }

  /** The drift taken out; empty where laps are too few. */
  public Optional<Drift> drift() {
    return comparison.map(Comparison::drift);
  }

  /** The textbook tests; empty where laps are too few. */
  public Optional<ClassicTests> tests() {
    return comparison.map(Comparison::tests);
  }

  /** The lag-1 autocorrelation of the laps as measured; empty where laps are too few. */
  public OptionalDouble autocorrelation() {
    return comparison.stream().mapToDouble(Comparison::lag1).findFirst();
  }

  /**
   * The autocorrelation reckoned with, from 0 to 0.8: the measured one, drawn toward what is usual
   * as far as so few laps ask; empty where laps are too few.
   */
  public OptionalDouble autocorrelationUsed() {
    return comparison.stream().mapToDouble(Comparison::rho).findFirst();
  }

  /** What the driver felt. */
  public Feel feel() {
    return feel;
  }

  /** Warnings, each one sentence: where feel and clock disagree, and what weakens the proof. */
  public List<String> warnings() {
    return ProofWords.warnings(this);
  }

  /** The verdict in one sentence. */
  public String sentence() {
    return ProofWords.sentence(this);
  }

  /** All of it in words, the verdict first, the strip plot last; lines of at most 80 columns. */
  public List<String> text() {
    List<String> lines = new ArrayList<>(ProofWords.lines(this));
    lines.add("");
    lines.addAll(stripPlot());
    return List.copyOf(lines);
  }

  /** Every lap of every run on one time scale: ASCII, at most 80 columns, no terminal codes. */
  public List<String> stripPlot() {
    return StripPlot.of(cleanRuns);
  }

  /** The proof as a JSON object, in lines, without a line end after the last. */
  public String toJson() {
    return ProofJson.write(this);
  }
}
