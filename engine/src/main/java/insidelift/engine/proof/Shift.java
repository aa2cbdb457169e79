package insidelift.engine.proof;

/**
 * How much the laps changed, in seconds a lap; negative is quicker. All values are rounded to a
 * thousandth, as the clock is, before a verdict is taken from them.
 *
 * @param seconds the Hodges–Lehmann shift after drift is taken out
 * @param low the lower end of the 95 % interval, which covers chance, autocorrelation and drift
 * @param high the upper end
 */
public record Shift(double seconds, double low, double high) {

  static Shift rounded(double seconds, double low, double high) {
    return new Shift(thousandth(seconds), thousandth(low), thousandth(high));
  }

  private static double thousandth(double value) {
    return Math.round(value * 1000) / 1000.0;
  }

  Verdict verdict() {
    if (high < 0) {
      return Verdict.KEEP;
    }
    return low > 0 ? Verdict.UNDO : Verdict.CANNOT_TELL;
  }
}
