package insidelift.engine.geometry;

/**
 * A corner to judge a change in.
 *
 * @param name what to call it
 * @param steerDeg rotation about the kingpins, degrees, 0 to 45
 * @param lateralG lateral acceleration, g
 */
public record Corner(String name, double steerDeg, double lateralG) {

  /**
   * 20° at 0.4 g: close to the middle one of the published rows that the typical kart is calibrated
   * on. Typical, provisional.
   */
  public static final Corner SLOW = new Corner("slow corner", 20, 0.4);

  /** 8° at 1.2 g. Typical, provisional. */
  public static final Corner FAST = new Corner("fast corner", 8, 1.2);

  /** No kart is judged nearer to tipping over than this. */
  private static final double OF_TIPPING = 0.9;

  /** The same corner, taken no faster than nine tenths of where this kart tips over. */
  Corner takenBy(KartGeometry kart) {
    return new Corner(name, steerDeg, Math.min(lateralG, hardestG(kart)));
  }

  /** The lateral acceleration, g, beyond which this kart is not judged. */
  static double hardestG(KartGeometry kart) {
    return OF_TIPPING * kart.tipsOverAtG();
  }
}
