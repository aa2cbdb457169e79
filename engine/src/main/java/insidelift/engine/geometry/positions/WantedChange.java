package insidelift.engine.geometry.positions;

import insidelift.engine.geometry.Range;
import insidelift.engine.geometry.RefusedInputException;

/**
 * What one kingpin should gain.
 *
 * @param camberDeg change of camber, degrees, positive outboard at the top, −10 to 10
 * @param casterDeg change of caster, degrees, positive rearward at the top, −10 to 10
 */
public record WantedChange(double camberDeg, double casterDeg) {

  private static final double MOST_DEGREES = 10;

  /**
   * A change of that size.
   *
   * @throws RefusedInputException if a change is outside its range
   */
  public WantedChange {
    Range.check("want.camberDeg", camberDeg, -MOST_DEGREES, MOST_DEGREES, "° (provisional)");
    Range.check("want.casterDeg", casterDeg, -MOST_DEGREES, MOST_DEGREES, "° (provisional)");
  }
}
