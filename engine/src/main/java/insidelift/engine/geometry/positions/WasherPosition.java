package insidelift.engine.geometry.positions;

import java.util.OptionalDouble;

/**
 * One position of one eccentric washer.
 *
 * @param name what the user calls it: a hole, a mark, a number
 * @param clockingDeg where the washer has moved its pivot to, degrees: 0 rearward, 90 outward, 180
 *     forward, 270 inward; empty when only the effect was measured
 * @param camberTan tangent of the camber that it gives against a centred pivot
 * @param casterTan tangent of the caster that it gives against a centred pivot
 */
record WasherPosition(String name, OptionalDouble clockingDeg, double camberTan, double casterTan) {

  /** The only "position" of a pivot that has no washer. */
  static final WasherPosition FIXED = new WasherPosition("fixed", OptionalDouble.empty(), 0, 0);

  /** A position whose effect was measured, degrees. */
  static WasherPosition measured(String name, double camberDeg, double casterDeg) {
    return new WasherPosition(
        name,
        OptionalDouble.empty(),
        Math.tan(Math.toRadians(camberDeg)),
        Math.tan(Math.toRadians(casterDeg)));
  }

  /**
   * A position by its clocking: throw over pivot spacing, split into the part outward and the part
   * rearward (derived; the angles are the arc tangents of these). At the top pivot outward is
   * camber more and rearward caster more; at the bottom pivot both act the other way.
   *
   * @param sign +1 for the top pivot, −1 for the bottom one
   */
  static WasherPosition clocked(
      String name, double clockingDeg, double throwOverSpacing, boolean camberOnly, int sign) {
    double clocking = Math.toRadians(clockingDeg);
    return new WasherPosition(
        name,
        OptionalDouble.of(clockingDeg),
        sign * throwOverSpacing * Math.sin(clocking),
        camberOnly ? 0 : sign * throwOverSpacing * Math.cos(clocking));
  }

  /** Degrees from this clocking to another by the shorter way, −180 to 180; 0 if not known. */
  double turnTo(WasherPosition other) {
    if (clockingDeg.isEmpty() || other.clockingDeg.isEmpty()) {
      return 0;
    }
    return Math.IEEEremainder(other.clockingDeg.getAsDouble() - clockingDeg.getAsDouble(), 360);
  }
}
