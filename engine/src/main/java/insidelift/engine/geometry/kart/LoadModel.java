package insidelift.engine.geometry.kart;

import insidelift.engine.geometry.Printed;
import insidelift.engine.geometry.Range;
import insidelift.engine.geometry.RefusedInputException;
import java.util.OptionalDouble;

/**
 * The wheel loads of a kart that corners to the left and slows or speeds up, and the lateral
 * acceleration at which its inside rear wheel leaves the ground.
 *
 * <p>Over the heights of the frame above its four corners the kart has a potential energy: four
 * one-sided springs (a tyre pushes and never pulls), the frame's twist spring, gravity and a
 * lateral load. It is convex, being a sum of squares of one-sided and linear terms; before the kart
 * tips its minimum is unique, also with a wheel in the air. Roll is small and enters linearly; the
 * centre of gravity's own fall under roll is left out, which keeps the energy convex.
 *
 * <p>The corners are coupled by one number alone, the twisting moment in the frame. Where all four
 * wheels stand, the loads and the twist are linear in it, which gives it; a wheel that would have
 * to pull leaves the ground and holds the moment where that wheel carries nothing (derived; checked
 * against a minimiser of the energy and against the complementary energy).
 *
 * <p>Slowing loads the front axle by weight · g · height ÷ wheelbase (statics). Wherever the force
 * comes from, a brake or steered tyres, it acts at the ground, so the total counts that a logger
 * shows.
 */
public final class LoadModel {

  static final int FRONT_INNER = 0;
  static final int FRONT_OUTER = 1;
  static final int REAR_INNER = 2;
  static final int REAR_OUTER = 3;
  static final int CORNERS = 4;

  /** m/s²; the value that the published loads are compared with. */
  public static final double GRAVITY = 9.81;

  private static final double MM_PER_M = 1000;

  /** Just short of tipping, where the load is still determined. */
  private static final double NEARLY_TIPPING = 1 - 1e-6;

  private static final double MOST_LATERAL_G = 3;
  private static final double MOST_SLOWING_G = -1.5;
  private static final double MOST_SPEEDING_UP_G = 1;

  private final double steerDeg;
  private final double lateralG;
  private final double longitudinalG;

  /** N/mm, by corner. */
  final double[] stiffness;

  /** The lowest point of each wheel against straight ahead, mm, negative down. */
  final double[] wheelHeight;

  /** The work of gravity and of the lateral load per mm of each corner, N. */
  final double[] push;

  /** Twist of the frame per mm of each corner, rad. */
  final double[] twist;

  /** N·mm per rad. */
  final double twistStiffness;

  LoadModel(KartGeometry kart, double steerDeg, double lateralG, double longitudinalG) {
    this(kart, SteeredWheels.of(kart, steerDeg), lateralG, longitudinalG);
  }

  private LoadModel(
      KartGeometry kart, SteeredWheels wheels, double lateralG, double longitudinalG) {
    this.steerDeg = wheels.steerDeg();
    this.lateralG = lateralG;
    this.longitudinalG = longitudinalG;
    double front = kart.value(Dimension.TYRE_STIFFNESS_FRONT);
    double rear = kart.value(Dimension.TYRE_STIFFNESS_REAR);
    stiffness = new double[] {front, front, rear, rear};
    wheelHeight = new double[] {wheels.inner().heightMm(), wheels.outer().heightMm(), 0, 0};

    double frontHalf = kart.frontAxleN(longitudinalG) / 2;
    double rearHalf = kart.weightN() / 2 - frontHalf;
    double rollMoment = kart.weightN() * lateralG * kart.overturnHeightMm();
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

  /**
   * The loads at one steer and acceleration.
   *
   * @throws RefusedInputException if one is outside its range, or the kart tips over, to the side
   *     or fore and aft
   */
  public static WheelLoads loads(
      KartGeometry kart, double steerDeg, double lateralG, double longitudinalG) {
    Range.check("lateral-g", lateralG, 0, MOST_LATERAL_G, "g (left turn; provisional)");
    checkLongitudinal(kart, longitudinalG);
    double tips = kart.tipsOverAtG(longitudinalG);
    if (lateralG >= tips * NEARLY_TIPPING) {
      throw new RefusedInputException(
          "lateral-g",
          Printed.exact(lateralG)
              + " g: this kart tips over; both its inner wheels lift at "
              + Printed.fixed(tips, 2)
              + " g, by its tracks, weight shares and height of the centre of gravity");
    }
    return new LoadModel(kart, steerDeg, lateralG, longitudinalG).asLoads();
  }

  /** What the left rear carries standing straight with a board under the left front wheel, N. */
  public static double onBoardN(KartGeometry kart, double boardMm) {
    LoadModel model = new LoadModel(kart, 0, 0, 0);
    // Ground that comes up under a wheel is as good as a wheel that hangs lower.
    model.wheelHeight[FRONT_INNER] -= boardMm;
    return model.asLoads().rearInnerN();
  }

  /**
   * @throws RefusedInputException if the longitudinal acceleration is outside its range, or leaves
   *     an axle nothing to carry
   */
  private static void checkLongitudinal(KartGeometry kart, double longitudinalG) {
    Range.check(
        "longitudinal-g",
        longitudinalG,
        MOST_SLOWING_G,
        MOST_SPEEDING_UP_G,
        "g (below nought when slowing; provisional)");
    double front = kart.frontAxleN(longitudinalG);
    if (front <= 0 || front >= kart.weightN()) {
      throw new RefusedInputException(
          "longitudinal-g",
          Printed.exact(longitudinalG)
              + " g: the "
              + (front <= 0 ? "front" : "rear")
              + " axle would carry nothing, by the wheelbase, weight shares and height of the"
              + " centre of gravity");
    }
  }

  /**
   * The lateral acceleration, g, at which the inside rear wheel leaves the ground: 0 if the steer
   * alone lifts it, nothing if it stands until the kart tips over.
   *
   * <p>It leaves the ground when it would carry nothing with all four wheels down, and the outer
   * front, which unloads by the same twist, would not have left it before. The first is linear in
   * the lateral acceleration and falls with it; below the second the steer does not matter.
   */
  public static OptionalDouble liftOffG(KartGeometry kart, double steerDeg, double longitudinalG) {
    checkLongitudinal(kart, longitudinalG);
    SteeredWheels wheels = SteeredWheels.of(kart, steerDeg);
    double still = new LoadModel(kart, wheels, 0, longitudinalG).withAllDown(REAR_INNER);
    double atOneG = new LoadModel(kart, wheels, 1, longitudinalG).withAllDown(REAR_INNER);
    double lifts = Math.max(zero(still, atOneG), kart.leastLiftG(longitudinalG));
    return lifts >= kart.tipsOverAtG(longitudinalG) * NEARLY_TIPPING
        ? OptionalDouble.empty()
        : OptionalDouble.of(lifts);
  }

  /** Where a line through a value at 0 and one at 1 crosses nought. */
  private static double zero(double atNought, double atOne) {
    return atNought / (atNought - atOne);
  }

  /** What a wheel would carry if all four stood, N; negative where it would have to pull. */
  private double withAllDown(int corner) {
    return twist[corner] * (momentWithAllDown() - unloads(corner));
  }

  /** The twisting moment at which a wheel carries nothing, N·mm. */
  private double unloads(int corner) {
    return push[corner] / twist[corner];
  }

  /** The twisting moment in the frame if all four wheels stood, N·mm. */
  private double momentWithAllDown() {
    double untwisted = 0;
    double yielding = 0;
    for (int i = 0; i < CORNERS; i++) {
      untwisted += twist[i] * free(i);
      yielding += twist[i] * twist[i] / stiffness[i];
    }
    return twistStiffness * untwisted / (1 + twistStiffness * yielding);
  }

  /** The height of a corner if nothing joined it to the others, mm. */
  private double free(int corner) {
    return -wheelHeight[corner] + push[corner] / stiffness[corner];
  }

  /** The twisting moment in the frame, N·mm: no more than leaves every tyre pushing. */
  private double moment() {
    double least = Math.max(unloads(FRONT_INNER), unloads(REAR_OUTER));
    double most = Math.min(unloads(FRONT_OUTER), unloads(REAR_INNER));
    return Math.max(least, Math.min(most, momentWithAllDown()));
  }

  /** The heights of the corners of the frame above the ground, mm. */
  double[] corners() {
    double moment = moment();
    double[] corners = new double[CORNERS];
    double twisted = 0;
    int lightest = 0;
    for (int i = 0; i < CORNERS; i++) {
      corners[i] = free(i) - moment * twist[i] / stiffness[i];
      twisted += twist[i] * corners[i];
      if (load(moment, i) < load(moment, lightest)) {
        lightest = i;
      }
    }
    // What the frame is twisted beyond what its tyres say, a wheel in the air has made free.
    corners[lightest] += (moment / twistStiffness - twisted) / twist[lightest];
    return corners;
  }

  private double load(double moment, int corner) {
    return Math.max(0, twist[corner] * (moment - unloads(corner)));
  }

  private WheelLoads asLoads() {
    double moment = moment();
    double[] corners = corners();
    return new WheelLoads(
        steerDeg,
        lateralG,
        longitudinalG,
        load(moment, REAR_OUTER),
        load(moment, REAR_INNER),
        load(moment, FRONT_INNER),
        load(moment, FRONT_OUTER),
        Math.max(0, corners[REAR_INNER] + wheelHeight[REAR_INNER]),
        Math.toDegrees(moment / twistStiffness),
        Math.toDegrees(
            twist[FRONT_INNER] * corners[FRONT_INNER] + twist[FRONT_OUTER] * corners[FRONT_OUTER]));
  }
}
