package insidelift.engine.geometry;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.rotation.QuaternionRotation;

/**
 * One left front corner in space, by another geometry library and without small angles: a stub that
 * turns about a leaning kingpin, and a tie-rod of fixed length from the column to its arm. x is
 * forward, y left, z up; mm.
 */
public final class ExactFront {

  private static final Vector3D KINGPIN = Vector3D.of(0, 400, 0);

  private final Vector3D inner;
  private final Vector3D joint;
  private final Vector3D still;
  private final QuaternionRotation lean;
  private final double rodMm;

  /**
   * A corner whose stub was rotated about the pivot that stays, with its rod left alone.
   *
   * @param stub rotation of kingpin and stub together
   * @param stillMm height of the pivot that stays
   * @param joint outer end of the rod before that, from the lower pivot
   * @param inner inner end of the rod
   * @param rodMm length of the rod
   */
  private ExactFront(
      QuaternionRotation stub, double stillMm, Vector3D joint, Vector3D inner, double rodMm) {
    this.lean = stub;
    this.still = KINGPIN.add(Vector3D.of(0, 0, stillMm));
    this.joint = still.add(stub.apply(KINGPIN.add(joint).subtract(still)));
    this.inner = inner;
    this.rodMm = rodMm;
  }

  /** A corner with a level rod square to an arm that points straight to the rear, or ahead. */
  public static ExactFront of(double heightMm, double armMm, boolean behind, double stillMm) {
    Vector3D joint = Vector3D.of(behind ? -armMm : armMm, 0, heightMm);
    Vector3D inner = KINGPIN.add(joint).add(Vector3D.of(0, -370, 0));
    return new ExactFront(QuaternionRotation.identity(), stillMm, joint, inner, 370);
  }

  /** The same corner after a change of camber and caster in degrees, the rod left alone. */
  public ExactFront leaned(double camberDeg, double casterDeg) {
    // The top goes outboard (left) by a turn about x that takes z to y, and rearward about y.
    QuaternionRotation stub =
        turn(Vector3D.Unit.PLUS_X, -camberDeg).multiply(turn(Vector3D.Unit.PLUS_Y, -casterDeg));
    return new ExactFront(stub, still.getZ(), joint.subtract(KINGPIN), inner, rodMm);
  }

  /** The same corner with its rod longer. */
  public ExactFront longer(double mm) {
    return new ExactFront(lean, still.getZ(), unleaned(), inner, rodMm + mm);
  }

  /** The same corner with the column's end of the rod moved sideways, left is positive. */
  public ExactFront steered(double leftMm) {
    return new ExactFront(
        lean, still.getZ(), unleaned(), inner.add(Vector3D.of(0, leftMm, 0)), rodMm);
  }

  private Vector3D unleaned() {
    return still.add(lean.inverse().apply(joint.subtract(still))).subtract(KINGPIN);
  }

  /** How far the wheel points outward, degrees seen from above, with the rod at its length. */
  public double toeOutDeg() {
    Vector3D axis = lean.apply(Vector3D.Unit.PLUS_Z);
    DoubleUnaryOperator tooLong =
        turned ->
            still.add(turn(axis, turned).apply(joint.subtract(still))).distance(inner) - rodMm;
    double low = -45;
    double high = 45;
    boolean rises = tooLong.applyAsDouble(high) > tooLong.applyAsDouble(low);
    for (int i = 0; i < 100; i++) {
      double middle = (low + high) / 2;
      if (tooLong.applyAsDouble(middle) > 0 == rises) {
        high = middle;
      } else {
        low = middle;
      }
    }
    Vector3D ahead = turn(axis, low).apply(lean.apply(Vector3D.Unit.PLUS_Y));
    // The spindle of a left wheel points left; toed out it points back as well.
    return Math.toDegrees(Math.atan2(-ahead.getX(), ahead.getY()));
  }

  public static QuaternionRotation turn(Vector3D axis, double degrees) {
    return QuaternionRotation.fromAxisAngle(axis, Math.toRadians(degrees));
  }
}
