package insidelift.engine.geometry.toe;

import insidelift.engine.geometry.Range;
import insidelift.engine.geometry.RefusedInputException;

/**
 * Toe of one wheel, never of both together: that is {@link TotalToe}. In mm it is how much farther
 * from the middle of the kart the wheel stands in front than behind, over a given length: mm =
 * length · sin(angle) (derived).
 *
 * @param outDeg degrees, positive is toe-out, −10 to 10: a reading is within 5° either way, and a
 *     change may go from one end to the other
 */
record SideToe(double outDeg) {

  static final double MOST_DEG = 5;

  /** A toe that a wheel can have, or a change of it. */
  SideToe {
    Range.check("toe.side", outDeg, -2 * MOST_DEG, 2 * MOST_DEG, "° (provisional)");
  }

  /**
   * Toe of one wheel from mm.
   *
   * @param outMm mm of this wheel alone, positive is toe-out
   * @param overMm the length that it was read over, mm
   * @throws RefusedInputException if that is more than 5° either way
   */
  static SideToe ofMm(double outMm, double overMm) {
    double most = overMm * Math.sin(Math.toRadians(MOST_DEG));
    Range.check("toe.side", outMm, -most, most, "mm (5° a wheel, provisional)");
    double outDeg = Math.toDegrees(Math.asin(outMm / overMm)) + 0.0;
    // The sine of the largest angle does not come back as quite that angle.
    return new SideToe(Math.max(-MOST_DEG, Math.min(MOST_DEG, outDeg)));
  }

  /** This wheel alone, mm over that length, positive is toe-out. */
  double mmOver(double overMm) {
    return overMm * Math.sin(Math.toRadians(outDeg)) + 0.0;
  }

  /** What this wheel has to gain to stand as wanted, positive is toward toe-out. */
  SideToe upTo(SideToe wanted) {
    return new SideToe(wanted.outDeg - outDeg);
  }

  /** Both wheels together when the other one stands the same. */
  TotalToe doubled() {
    return TotalToe.of(this, this);
  }
}
