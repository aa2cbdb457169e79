package insidelift.engine.geometry.kart;

import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * One front wheel, a thin disc that turns rigidly about its kingpin axis. Exact three-dimensional
 * rotation; the origin is where the kingpin axis passes hub height, and the spindle passes through
 * the axis in side view.
 *
 * @param outboard +1 for the left wheel, −1 for the right: the sign of y on the wheel's outer side
 * @param kingpin unit vector along the kingpin, upward
 * @param spindle unit vector along the spindle, outward, straight ahead
 * @param centre wheel centre, mm, straight ahead
 * @param radius of the disc, mm
 */
record FrontWheel(
    int outboard, Vector3D kingpin, Vector3D spindle, Vector3D centre, double radius) {

  static FrontWheel inner(KartGeometry kart) {
    return of(kart, 1);
  }

  static FrontWheel outer(KartGeometry kart) {
    return of(kart, -1);
  }

  private static FrontWheel of(KartGeometry kart, int outboard) {
    double caster = kart.radians(Dimension.CASTER);
    double inclination = kart.radians(Dimension.KINGPIN_INCLINATION);
    double camber = kart.radians(Dimension.CAMBER);
    return new FrontWheel(
        outboard,
        new Vector3D(-Math.tan(caster), -outboard * Math.tan(inclination), 1).normalize(),
        // With the top outboard the outer end of the spindle points down.
        new Vector3D(0, outboard * Math.cos(camber), -Math.sin(camber)),
        new Vector3D(0, outboard * kart.value(Dimension.HUB_OFFSET), 0),
        kart.value(Dimension.WHEEL_RADIUS));
  }

  /** Camber and height at so many degrees about the kingpin, positive to the left. */
  WheelState at(double steerDeg) {
    Rotation steer = turned(steerDeg);
    return new WheelState(
        camberDeg(steer.applyTo(spindle)), lowest(steer).getZ() - lowest(Rotation.IDENTITY).getZ());
  }

  /**
   * Camber to the ground, degrees, when the front of the frame also rolls.
   *
   * @param rollDeg roll of the frame, degrees, positive with its right side (the outer one) down
   */
  double groundCamberDeg(double steerDeg, double rollDeg) {
    Rotation roll =
        new Rotation(Vector3D.PLUS_I, Math.toRadians(rollDeg), RotationConvention.VECTOR_OPERATOR);
    return camberDeg(roll.applyTo(turned(steerDeg).applyTo(spindle)));
  }

  /**
   * How fast the lowest point moves against the frame, mm per radian of steer: the velocity of the
   * rim's material point that is lowest, since at the lowest point the choice of the point does not
   * matter to first order (derived).
   */
  double heightSlopeMmPerRad(double steerDeg) {
    return kingpin.crossProduct(lowest(turned(steerDeg))).getZ();
  }

  private Rotation turned(double steerDeg) {
    return new Rotation(kingpin, Math.toRadians(steerDeg), RotationConvention.VECTOR_OPERATOR);
  }

  /** The lowest point of the rim, mm: from the centre, straight down within the wheel's plane. */
  private Vector3D lowest(Rotation steer) {
    Vector3D axle = steer.applyTo(spindle);
    Vector3D downInPlane =
        Vector3D.MINUS_K.subtract(axle.scalarMultiply(axle.dotProduct(Vector3D.MINUS_K)));
    return steer.applyTo(centre).add(downInPlane.normalize().scalarMultiply(radius));
  }

  private static double camberDeg(Vector3D axle) {
    return Math.toDegrees(Math.asin(-axle.getZ())) + 0.0;
  }
}
