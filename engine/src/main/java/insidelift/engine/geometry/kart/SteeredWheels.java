package insidelift.engine.geometry.kart;

import insidelift.engine.geometry.Range;
import insidelift.engine.geometry.RefusedInputException;

/**
 * Both front wheels at one angle of steer.
 *
 * @param steerDeg rotation about both kingpins, degrees, 0 to 45, to the left
 * @param inner the left wheel
 * @param outer the right wheel
 */
public record SteeredWheels(double steerDeg, WheelState inner, WheelState outer) {

  public static final double MOST_STEER_DEG = 45;

  /**
   * Turns both front wheels, exactly and in three dimensions.
   *
   * @throws RefusedInputException if the steer is outside 0 to 45 degrees
   */
  public static SteeredWheels of(KartGeometry kart, double steerDeg) {
    Range.check(
        "steer",
        steerDeg,
        0,
        MOST_STEER_DEG,
        "° (rotation about the kingpins, left turn positive; provisional)");
    return new SteeredWheels(
        steerDeg, FrontWheel.inner(kart).at(steerDeg), FrontWheel.outer(kart).at(steerDeg));
  }

  /** How much lower against the frame the inner wheel hangs than the outer, mm. */
  public double heightDifferenceMm() {
    return outer.heightMm() - inner.heightMm();
  }
}
