package insidelift.engine.geometry.effect;

import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.geometry.RefusedInputException;
import insidelift.engine.geometry.kart.Corner;
import insidelift.engine.geometry.kart.CornerState;
import insidelift.engine.geometry.kart.KartGeometry;
import insidelift.engine.geometry.kart.LoadModel;
import insidelift.engine.geometry.kart.SteeredWheels;
import insidelift.engine.geometry.kart.WheelLoads;
import insidelift.engine.geometry.plausible.CornerBands;
import insidelift.engine.geometry.plausible.FittedKart;
import insidelift.engine.geometry.plausible.MeasuredKart;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a kart's geometry does to its front wheels and to its four wheel loads, over a list of
 * steering angles and of lateral accelerations: for the kart of the measures given or typical, and
 * in bands over the karts that fit what is known.
 */
public final class Prediction {

  /** Degrees of steer computed when none is asked for: straight ahead to a hairpin. */
  public static final List<Double> USUAL_STEERS = List.of(0.0, 5.0, 10.0, 15.0, 20.0, 25.0, 30.0);

  /** The lateral acceleration when none is asked for, g: what the kart shows standing on scales. */
  public static final List<Double> USUAL_LATERAL_G = List.of(0.0);

  private static final List<Corner> USUAL_CORNERS =
      List.of(Corner.TURN_IN, Corner.APEX, Corner.WET);

  private final KartGeometry kart;
  private final double longitudinalG;
  private final List<SteeredWheels> wheels;
  private final List<CornerState> corners;
  private final List<LiftOff> liftOffs;
  private final List<CornerBands> bands;
  private final FittedKart fitted;

  /**
   * The lateral acceleration at which the inside rear wheel leaves the ground.
   *
   * @param steerDeg at this steer, degrees
   * @param lateralG in g; empty if the wheel stands until the kart tips over
   */
  record LiftOff(double steerDeg, OptionalDouble lateralG) {}

  private Prediction(
      KartGeometry kart,
      double longitudinalG,
      List<SteeredWheels> wheels,
      List<CornerState> corners,
      List<LiftOff> liftOffs,
      List<CornerBands> bands,
      FittedKart fitted) {
    this.kart = kart;
    this.longitudinalG = longitudinalG;
    this.wheels = List.copyOf(wheels);
    this.corners = List.copyOf(corners);
    this.liftOffs = List.copyOf(liftOffs);
    this.bands = List.copyOf(bands);
    this.fitted = fitted;
  }

  /**
   * Predicts every steer, and every steer with every lateral acceleration.
   *
   * @param steersDeg rotation about the kingpins, degrees, 0 to 45, left turn; empty: {@link
   *     #USUAL_STEERS}
   * @param lateralGs lateral acceleration, g, 0 to 3; empty: {@link #USUAL_LATERAL_G}
   * @param longitudinalG longitudinal acceleration, g, −1.5 to 1, negative when slowing
   * @throws RefusedInputException if a value is outside its range, or the kart tips over at one
   */
  public static Prediction of(
      KartGeometry kart, List<Double> steersDeg, List<Double> lateralGs, double longitudinalG) {
    return of(new MeasuredKart(kart, List.of()), steersDeg, lateralGs, longitudinalG);
  }

  /**
   * The same of a kart on which something was read: its bands are those of the karts that show it.
   *
   * @throws RefusedInputException as above
   */
  public static Prediction of(
      MeasuredKart measured, List<Double> steersDeg, List<Double> lateralGs, double longitudinalG) {
    return of(measured, steersDeg, lateralGs, longitudinalG, USUAL_CORNERS);
  }

  /**
   * The same in corners of its own track.
   *
   * @param corners at least one
   * @throws RefusedInputException if the kart tips over in one of them
   */
  public static Prediction of(MeasuredKart measured, List<Corner> corners) {
    return of(measured, List.of(), List.of(), 0, corners);
  }

  private static Prediction of(
      MeasuredKart measured,
      List<Double> steersDeg,
      List<Double> lateralGs,
      double longitudinalG,
      List<Corner> usual) {
    KartGeometry kart = measured.kart();
    List<Double> steers = steersDeg.isEmpty() ? USUAL_STEERS : steersDeg;
    List<Double> accelerations = lateralGs.isEmpty() ? USUAL_LATERAL_G : lateralGs;
    List<SteeredWheels> wheels = new ArrayList<>();
    List<CornerState> corners = new ArrayList<>();
    List<LiftOff> liftOffs = new ArrayList<>();
    for (double steer : steers) {
      wheels.add(SteeredWheels.of(kart, steer));
      for (double lateralG : accelerations) {
        corners.add(CornerState.of(kart, steer, lateralG, longitudinalG));
      }
      liftOffs.add(new LiftOff(steer, LoadModel.liftOffG(kart, steer, longitudinalG)));
    }
    FittedKart fitted = FittedKart.of(kart, measured.readings());
    List<Corner> asked =
        steersDeg.isEmpty() && lateralGs.isEmpty()
            ? usual
            : corners.stream().map(Prediction::asked).toList();
    return new Prediction(
        kart,
        longitudinalG,
        wheels,
        corners,
        liftOffs,
        asked.stream().map(corner -> CornerBands.of(corner, fitted.karts())).toList(),
        fitted);
  }

  private static Corner asked(CornerState row) {
    WheelLoads at = row.loads();
    return new Corner("", at.steerDeg(), at.lateralG(), at.longitudinalG());
  }

  /** The kart predicted. */
  public KartGeometry kart() {
    return kart;
  }

  /** The longitudinal acceleration, g, negative when slowing. */
  double longitudinalG() {
    return longitudinalG;
  }

  /** The front wheels, one row per steer. */
  public List<SteeredWheels> wheels() {
    return wheels;
  }

  /** Loads, lean and effort, one row per steer and lateral acceleration. */
  public List<CornerState> corners() {
    return corners;
  }

  /** The corners asked for over the plausible karts; the three usual ones if none was. */
  public List<CornerBands> bands() {
    return bands;
  }

  FittedKart fitted() {
    return fitted;
  }

  List<LiftOff> liftOffs() {
    return liftOffs;
  }

  /**
   * The lateral acceleration, g, at which the inside rear leaves the ground at the one steer asked
   * for; empty if it never does, or if several steers were asked for.
   */
  public OptionalDouble liftOffG() {
    return liftOffs.size() == 1 ? liftOffs.get(0).lateralG() : OptionalDouble.empty();
  }

  /** The prediction as JSON, numbers unrounded. */
  public ObjectNode json() {
    return PredictionJson.of(this);
  }

  /** The prediction as plain text of at most 80 columns. */
  public List<String> lines() {
    return PredictionText.of(this);
  }
}
