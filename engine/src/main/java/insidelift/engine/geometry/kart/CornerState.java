package insidelift.engine.geometry.kart;

import insidelift.engine.geometry.RefusedInputException;

/**
 * A kart in one left turn: what stands on the wheels, how the front wheels lean to the ground and
 * what the hands must hold.
 *
 * @param loads the four wheel loads
 * @param innerLeanDeg camber of the inner front wheel to the ground, degrees, with the roll of the
 *     frame's front half; positive with the top outboard, which is into the turn
 * @param outerLeanDeg the same of the outer front wheel; negative is into the turn
 * @param effort the moment about the kingpins
 */
public record CornerState(
    WheelLoads loads, double innerLeanDeg, double outerLeanDeg, SteeringEffort effort) {

  /**
   * The corner at one steer and acceleration.
   *
   * @throws RefusedInputException if steer or acceleration is outside its range, or the kart tips
   *     over
   */
  public static CornerState of(
      KartGeometry kart, double steerDeg, double lateralG, double longitudinalG) {
    WheelLoads loads = LoadModel.loads(kart, steerDeg, lateralG, longitudinalG);
    return new CornerState(
        loads,
        FrontWheel.inner(kart).groundCamberDeg(steerDeg, loads.frontRollDeg()),
        FrontWheel.outer(kart).groundCamberDeg(steerDeg, loads.frontRollDeg()),
        SteeringEffort.of(kart, loads));
  }
}
