package insidelift.engine.logbook.entry;

import insidelift.shared.situation.EdgeTemperatures;
import java.util.Objects;
import java.util.Optional;

/**
 * What was measured at the tyres around a run.
 *
 * @param cold the pressures before it
 * @param hot the pressures straight after it
 * @param left the tread of the front left tyre straight after it
 * @param right the tread of the front right tyre straight after it
 */
public record Tyres(
    Optional<Pressures> cold,
    Optional<Pressures> hot,
    Optional<EdgeTemperatures> left,
    Optional<EdgeTemperatures> right) {

  /** Nothing measured. */
  public static final Tyres UNKNOWN =
      new Tyres(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /**
   * @throws RefusedEntryException if a temperature is not from −20 to 200 °C
   */
  public Tyres {
    Objects.requireNonNull(cold, "cold");
    Objects.requireNonNull(hot, "hot");
    left.ifPresent(tread -> checked("front left", tread));
    right.ifPresent(tread -> checked("front right", tread));
  }

  private static void checked(String tyre, EdgeTemperatures tread) {
    celsius(tyre + " inner", tread.inner());
    celsius(tyre + " middle", tread.middle());
    celsius(tyre + " outer", tread.outer());
  }

  private static void celsius(String edge, double value) {
    LogLimits.number(
        "temperature " + edge, value, LogLimits.COLDEST, LogLimits.HOTTEST, "degrees Celsius");
  }
}
