package insidelift.engine.geometry;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.RealMatrix;

/**
 * The potential energy of a kart on the ground, in N·mm, over the heights of the frame above its
 * four corners, in mm. Four one-sided springs (a tyre pushes and never pulls), the frame's twist
 * spring, gravity and a lateral load. It is convex, being a sum of squares of one-sided and linear
 * terms; before the kart tips its minimum is unique, also with a wheel in the air (derived). Roll
 * is small and enters linearly; the centre of gravity's own fall under roll is left out, which
 * keeps the energy convex.
 */
final class FrameEnergy {

  static final int FRONT_INNER = 0;
  static final int FRONT_OUTER = 1;
  static final int REAR_INNER = 2;
  static final int REAR_OUTER = 3;
  static final int CORNERS = 4;

  /** m/s²; the value that the published loads are compared with. */
  static final double GRAVITY = 9.81;

  private static final double MM_PER_M = 1000;
  private static final double TRACE = 1e-7;

  private final double[] stiffness;
  private final double[] wheelHeight;

  /** The work of gravity and of the lateral load per mm of each corner, N. */
  private final double[] push;

  /** Twist of the frame per mm of each corner, rad. */
  private final double[] twist;

  private final double twistStiffness;

  FrameEnergy(KartGeometry kart, double steerDeg, double lateralG) {
    double front = kart.value(Dimension.TYRE_STIFFNESS_FRONT);
    double rear = kart.value(Dimension.TYRE_STIFFNESS_REAR);
    stiffness = new double[] {front, front, rear, rear};
    SteeredWheels wheels = SteeredWheels.of(kart, steerDeg);
    wheelHeight = new double[] {wheels.inner().heightMm(), wheels.outer().heightMm(), 0, 0};

    double weight = kart.value(Dimension.MASS) * GRAVITY;
    double frontHalf = weight * kart.value(Dimension.FRONT_SHARE) / 2;
    double rearHalf = weight / 2 - frontHalf;
    double rollMoment = weight * lateralG * kart.value(Dimension.CG_HEIGHT);
    double frontTrack = kart.value(Dimension.FRONT_TRACK);
    double rearTrack = kart.value(Dimension.REAR_TRACK);
    double frontRoll = rollMoment * kart.value(Dimension.ROLL_SHARE_FRONT) / frontTrack;
    double rearRoll = rollMoment * (1 - kart.value(Dimension.ROLL_SHARE_FRONT)) / rearTrack;
    push =
        new double[] {
          frontRoll - frontHalf, -frontRoll - frontHalf, rearRoll - rearHalf, -rearRoll - rearHalf
        };
    twist = new double[] {1 / frontTrack, -1 / frontTrack, -1 / rearTrack, 1 / rearTrack};
    twistStiffness = kart.value(Dimension.FRAME_STIFFNESS) * MM_PER_M * Math.toDegrees(1);
  }

  /** The energy, N·mm, apart from a constant. */
  double value(double[] corners) {
    double energy = twistStiffness * square(twistRad(corners)) / 2;
    for (int i = 0; i < CORNERS; i++) {
      energy += stiffness[i] * square(Math.max(0, squeeze(corners, i))) / 2 - push[i] * corners[i];
    }
    return energy;
  }

  /** The slope of the energy, N: what is still out of balance at each corner. */
  double[] gradient(double[] corners) {
    double twisting = twistStiffness * twistRad(corners);
    double[] slope = new double[CORNERS];
    for (int i = 0; i < CORNERS; i++) {
      slope[i] = twisting * twist[i] - load(corners, i) - push[i];
    }
    return slope;
  }

  /**
   * The curvature of the energy, N/mm, with the wheels that now stand. A wheel in the air keeps a
   * trace of its spring, so that a step is defined even from where two are: it slows the last steps
   * by nothing that shows and moves no minimum.
   */
  RealMatrix curvature(double[] corners) {
    RealMatrix matrix = new Array2DRowRealMatrix(CORNERS, CORNERS);
    for (int i = 0; i < CORNERS; i++) {
      for (int j = 0; j < CORNERS; j++) {
        matrix.setEntry(i, j, twistStiffness * twist[i] * twist[j]);
      }
      matrix.addToEntry(i, i, stiffness[i] * (squeeze(corners, i) > 0 ? 1 : TRACE));
    }
    return matrix;
  }

  /** Where the frame would stand if its corners were not joined: a good place to start. */
  double[] start() {
    double[] corners = new double[CORNERS];
    for (int i = 0; i < CORNERS; i++) {
      corners[i] = -wheelHeight[i] + push[i] / stiffness[i];
    }
    return corners;
  }

  /** How far a tyre is pressed in, mm; negative: how far it is off the ground. */
  double squeeze(double[] corners, int corner) {
    return -corners[corner] - wheelHeight[corner];
  }

  /** The load of a wheel, N. */
  double load(double[] corners, int corner) {
    return stiffness[corner] * Math.max(0, squeeze(corners, corner));
  }

  double twistRad(double[] corners) {
    double angle = 0;
    for (int i = 0; i < CORNERS; i++) {
      angle += twist[i] * corners[i];
    }
    return angle;
  }

  double frontRollRad(double[] corners) {
    return twist[FRONT_INNER] * corners[FRONT_INNER] + twist[FRONT_OUTER] * corners[FRONT_OUTER];
  }

  private static double square(double x) {
    return x * x;
  }
}
