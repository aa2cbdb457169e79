package insidelift.engine.geometry.positions;

/**
 * One pair of positions and how near it comes.
 *
 * @param to the pair
 * @param camberDeg change of camber that it gives from where the washers are now, degrees
 * @param casterDeg change of caster that it gives, degrees
 * @param camberOverDeg camber given less camber wanted, degrees: the residual, or the cost when
 *     camber was to stay
 * @param casterOverDeg caster given less caster wanted, degrees
 * @param topTurnDeg turn of the top washer by the shorter way, degrees, positive from rearward by
 *     outward to forward; 0 if its clocking is not known
 * @param bottomTurnDeg the same of the bottom washer
 */
public record PositionChoice(
    PositionPair to,
    double camberDeg,
    double casterDeg,
    double camberOverDeg,
    double casterOverDeg,
    double topTurnDeg,
    double bottomTurnDeg) {

  /** How far from what was wanted, degrees, both levers weighing the same (provisional). */
  public double missDeg() {
    return Math.hypot(camberOverDeg, casterOverDeg);
  }

  /** Both turns together, degrees: of two equal choices the one with less to turn is better. */
  double turningDeg() {
    return Math.abs(topTurnDeg) + Math.abs(bottomTurnDeg);
  }
}
