package insidelift.engine.geometry.kart;

import java.util.List;

/**
 * A corner to judge a change in: turned to the left, with the accelerations that a logger shows.
 *
 * @param name what to call it
 * @param steerDeg rotation about the kingpins, degrees, 0 to 45
 * @param lateralG lateral acceleration, g
 * @param longitudinalG longitudinal acceleration, g, negative when slowing
 */
public record Corner(String name, double steerDeg, double lateralG, double longitudinalG) {

  /**
   * Turning in while still slowing. Accelerations: one published log of a kart (7.5 to 14 m, 0.7 to
   * 1.2 g with 0.55 g of braking). Steer: wheelbase over radius gives 4 to 8°, the rest is slip and
   * the locked axle (derived, in part from memory). Provisional.
   */
  public static final Corner TURN_IN = new Corner("turn-in on the brake", 12, 0.9, -0.6);

  /** The middle of a dry corner: the same log; the slowing is the drag of the steered tyres. */
  public static final Corner APEX = new Corner("apex", 8, 1.3, -0.1);

  /** A corner in the wet. From memory, provisional. */
  public static final Corner WET = new Corner("wet corner", 15, 0.6, -0.2);

  /**
   * The corners that a situation is about.
   *
   * @param water how wet the track is, as answered; null if not known
   * @param phase which part of the corner hurts most, as answered; null if not known
   */
  public static List<Corner> about(String water, String phase) {
    if (water != null && !water.equals("dry")) {
      return List.of(WET);
    }
    if (phase == null) {
      return List.of(TURN_IN, APEX);
    }
    return List.of(phase.equals("turn-in") ? TURN_IN : APEX);
  }

  /** No kart is judged nearer to tipping over than this. */
  private static final double OF_TIPPING = 0.9;

  /** The same corner, taken no faster than nine tenths of where this kart tips over. */
  public Corner takenBy(KartGeometry kart) {
    return new Corner(
        name, steerDeg, Math.min(lateralG, hardestG(kart, longitudinalG)), longitudinalG);
  }

  /** The lateral acceleration, g, beyond which this kart is not judged. */
  static double hardestG(KartGeometry kart, double longitudinalG) {
    return OF_TIPPING * kart.tipsOverAtG(longitudinalG);
  }

  public CornerState state(KartGeometry kart) {
    return CornerState.of(kart, steerDeg, lateralG, longitudinalG);
  }
}
