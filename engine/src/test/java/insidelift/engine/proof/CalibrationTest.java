package insidelift.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import insidelift.engine.proof.SimulatedDay.Sizes;
import insidelift.engine.proof.statistics.Assumptions;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * How often the proof errs and how often it sees what is there, on invented days. The ordinary
 * build takes 2,000 days for each figure; {@code -Dproof.days=10000} takes more, and {@code
 * -Dproof.report=true} prints the table of powers.
 */
class CalibrationTest {

  private static final int DAYS = Integer.getInteger("proof.days", 2_000);

  /** The mark for a false keep, which is the dear mistake. */
  private static final double MOST_FALSE = 0.05;

  @ParameterizedTest
  @ValueSource(ints = {8, 10, 15, 20, 25})
  void fewFalseVerdictsWithoutAReturnRun(int laps) {
    assertFewFalse(laps, false);
  }

  @ParameterizedTest
  @ValueSource(ints = {8, 10, 15, 20, 25})
  void fewFalseVerdictsWithAReturnRun(int laps) {
    assertFewFalse(laps, true);
  }

  private static void assertFewFalse(int laps, boolean returnRun) {
    double keep = SimulatedDay.share(Verdict.KEEP, DAYS, Sizes.REALISTIC, laps, 0, returnRun);
    double undo = SimulatedDay.share(Verdict.UNDO, DAYS, Sizes.REALISTIC, laps, 0, returnRun);
    report("no change, %d laps, return run %b: keep %.4f, undo %.4f", laps, returnRun, keep, undo);
    assertThat(keep).isLessThan(MOST_FALSE);
    assertThat(undo).isLessThan(MOST_FALSE);
  }

  @Test
  void aClearChangeOverTwelveCleanLapsIsSeen() {
    assertThat(SimulatedDay.share(Verdict.KEEP, DAYS, Sizes.CLEAN, 13, -0.4, false))
        .isGreaterThan(0.95);
    assertThat(SimulatedDay.share(Verdict.UNDO, DAYS, Sizes.CLEAN, 13, 0.4, false))
        .isGreaterThan(0.95);
    assertThat(SimulatedDay.share(Verdict.KEEP, DAYS, Sizes.CLEAN, 13, -0.4, true))
        .isGreaterThan(0.99);
  }

  @ParameterizedTest
  @CsvSource({"10, 0.60", "15, 0.85", "20, 0.90"})
  void aReturnRunSeesThreeTenths(int laps, double least) {
    assertThat(SimulatedDay.share(Verdict.KEEP, DAYS, Sizes.REALISTIC, laps, -0.3, true))
        .isGreaterThan(least);
  }

  @Test
  @EnabledIfSystemProperty(named = "proof.report", matches = "true")
  void theTableOfPowers() {
    for (boolean returnRun : List.of(false, true)) {
      for (int laps : List.of(10, 15, 20)) {
        for (double shift : List.of(0.1, 0.2, 0.3)) {
          double realistic =
              SimulatedDay.share(Verdict.KEEP, DAYS, Sizes.REALISTIC, laps, -shift, returnRun);
          double clean =
              SimulatedDay.share(Verdict.KEEP, DAYS, Sizes.CLEAN, laps, -shift, returnRun);
          report(
              "%.1f s quicker, %d laps, return run %b: keep %.3f, on a clean day %.3f",
              shift, laps, returnRun, realistic, clean);
        }
      }
    }
  }

  /**
   * A day harsher than what is taken for granted: with a track that gains 0.02 s a lap at most and
   * as much in the pause, two runs can mislead; three do not.
   */
  @Test
  void onlyAReturnRunStandsAHarshDay() {
    Sizes cleaning = new Sizes(0.15, 0.4, 0.020, 20, 0, 0.3, 0.02, 0.10);
    double two = SimulatedDay.share(Verdict.KEEP, DAYS, cleaning, 15, 0, false);
    double three = SimulatedDay.share(Verdict.KEEP, DAYS, cleaning, 15, 0, true);
    report(
        "a track being cleaned, 15 laps: false keep %.3f of two runs, %.3f of three", two, three);
    assertThat(three).isLessThan(MOST_FALSE);
  }

  /** The laps asked for rest on a forecast of power; here is how the forecast turns out. */
  @ParameterizedTest
  @CsvSource({"10, 0.2", "15, 0.15", "20, 0.2"})
  void theForecastOfPowerComesTrue(int laps, double shift) {
    // What the proof reckons with on a clean day: 0.15 s of noise, the usual autocorrelation.
    Sizes usual = new Sizes(0.15, 2 * Assumptions.RHO_MEAN, 0, 0, 0, 0, 0.02, 0);
    int counted = laps - 1;
    double spread = 3 * counted * (counted * (double) counted - 1) / 12;
    Design design = new Design(counted, counted, counted, laps, laps, spread, 0);
    double lapVariance = 0.15 * 0.15 * Math.PI / 3;
    double forecast = new Noise(lapVariance, Assumptions.RHO_MEAN, 0, 0).power(shift, design);
    double seen = SimulatedDay.share(Verdict.KEEP, DAYS, usual, laps, -shift, true);
    report("forecast of power %.3f, seen %.3f", forecast, seen);
    assertThat(seen).isCloseTo(forecast, within(0.12));
  }

  private static void report(String format, Object... values) {
    if (Boolean.getBoolean("proof.report")) {
      System.out.println(String.format(Locale.ROOT, format, values));
    }
  }
}
