package insidelift.engine.geometry.toe;

import insidelift.engine.geometry.Range;
import insidelift.engine.geometry.RefusedInputException;

/**
 * Toe of both wheels together, never of one: that is {@link SideToe}. In mm it is how much wider
 * the wheels stand in front than behind, over a given length: mm = 2 · length · sin(angle / 2)
 * (derived, for wheels that stand alike).
 *
 * @param outDeg degrees, positive is toe-out, −10 to 10
 */
public record TotalToe(double outDeg) {

  public static final double MOST_DEG = 2 * SideToe.MOST_DEG;

  /** A toe that two wheels can have. */
  public TotalToe {
    Range.check("toe.total", outDeg, -MOST_DEG, MOST_DEG, "° (provisional)");
  }

  /** The toe of two wheels added up. */
  static TotalToe of(SideToe left, SideToe right) {
    return new TotalToe(left.outDeg() + right.outDeg());
  }

  /**
   * Toe of both wheels from mm.
   *
   * @param outMm mm of both wheels together, positive is toe-out
   * @param overMm the length that it was read over, mm
   * @throws RefusedInputException if that is more than 10° either way
   */
  public static TotalToe ofMm(double outMm, double overMm) {
    double most = 2 * overMm * Math.sin(Math.toRadians(MOST_DEG / 2));
    Range.check("toe.total", outMm, -most, most, "mm (10° in all, provisional)");
    double outDeg = 2 * Math.toDegrees(Math.asin(outMm / (2 * overMm))) + 0.0;
    // The sine of the largest angle does not come back as quite that angle.
    return new TotalToe(Math.max(-MOST_DEG, Math.min(MOST_DEG, outDeg)));
  }

  /** Both wheels together, mm over that length, positive is toe-out. */
  public double mmOver(double overMm) {
    return 2 * overMm * Math.sin(Math.toRadians(outDeg / 2)) + 0.0;
  }

  /** What is left for each wheel when both take the same. */
  SideToe half() {
    return new SideToe(outDeg / 2);
  }
}
