package insidelift.engine.geometry.kart;

import com.fasterxml.jackson.databind.JsonNode;
import insidelift.engine.geometry.Fields;
import insidelift.engine.geometry.Range;
import insidelift.engine.geometry.RefusedInputException;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * A kart's measures: those that the user gave, and for the others the typical ones of a kart of its
 * {@link KartSize}.
 *
 * @param given the measures given, each in the unit of its key
 * @param assumed what stands for those that were not given, every measure, in the unit of its key
 */
public record KartGeometry(Map<Dimension, Double> given, Map<Dimension, Double> assumed) {

  private static final String PLACE = "geometry";
  private static final double LEAST_TRACK_SHARE = 2.0 / 3.0;

  /**
   * @throws RefusedInputException if a measure is not finite or outside its range, or a track is
   *     below two thirds of the wheelbase
   */
  public KartGeometry {
    given = copy(given);
    assumed = copy(assumed);
    double wheelbase = value(given, assumed, Dimension.WHEELBASE);
    for (Map.Entry<Dimension, Double> entry : given.entrySet()) {
      check(entry.getKey(), entry.getValue(), wheelbase);
    }
  }

  /** A complaint is worded only when there is one: thousands of plausible karts have none. */
  private static void check(Dimension dimension, double value, double wheelbaseMm) {
    double least = least(dimension, wheelbaseMm);
    if (!(value >= least && value <= dimension.most())) {
      Range.check(
          PLACE + "." + dimension.key(),
          value,
          least,
          dimension.most(),
          (dimension.unit() + " (" + dimension.rangeSource() + ")").strip());
    }
  }

  /**
   * A kart of which some measures are known.
   *
   * @throws RefusedInputException as above
   */
  public KartGeometry(Map<Dimension, Double> given) {
    this(given, KartSize.of(given).typical(given));
  }

  private static Map<Dimension, Double> copy(Map<Dimension, Double> measures) {
    EnumMap<Dimension, Double> copy = new EnumMap<>(Dimension.class);
    copy.putAll(measures);
    return Collections.unmodifiableMap(copy);
  }

  /** The tracks' lower limit is a share of this kart's own wheelbase, which is checked before. */
  private static double least(Dimension dimension, double wheelbaseMm) {
    boolean track = dimension == Dimension.FRONT_TRACK || dimension == Dimension.REAR_TRACK;
    return track ? leastTrackMm(wheelbaseMm) : dimension.least();
  }

  public static double leastTrackMm(double wheelbaseMm) {
    return LEAST_TRACK_SHARE * wheelbaseMm;
  }

  private static double value(
      Map<Dimension, Double> given, Map<Dimension, Double> assumed, Dimension dimension) {
    return given.containsKey(dimension) ? given.get(dimension) : assumed.get(dimension);
  }

  /** The kart with nothing given: the typical one throughout. */
  public static KartGeometry typical() {
    return new KartGeometry(Map.of());
  }

  /**
   * Reads the object under the key {@code geometry} of a kart or case file.
   *
   * @throws RefusedInputException if it is not an object, has an unknown key, or a measure is not a
   *     number or outside its range
   */
  public static KartGeometry from(JsonNode geometry) {
    return from(Fields.of(PLACE, geometry));
  }

  private static KartGeometry from(Fields fields) {
    EnumMap<Dimension, Double> given = new EnumMap<>(Dimension.class);
    for (Dimension dimension : Dimension.values()) {
      if (fields.has(dimension.key())) {
        given.put(dimension, fields.number(dimension.key()));
      }
    }
    fields.refuseOthers();
    return new KartGeometry(given);
  }

  /** The measure, in the unit of its key: as given, or typical. */
  public double value(Dimension dimension) {
    return value(given, assumed, dimension);
  }

  /** Whether the measure is the typical one because none was given. */
  public boolean isTypical(Dimension dimension) {
    return !given.containsKey(dimension);
  }

  /**
   * The same kart with one measure replaced; no other moves with it.
   *
   * @throws RefusedInputException if the new measure is outside its range
   */
  public KartGeometry with(Dimension dimension, double value) {
    EnumMap<Dimension, Double> changed = new EnumMap<>(Dimension.class);
    changed.putAll(given);
    changed.put(dimension, value);
    return new KartGeometry(changed, assumed);
  }

  /**
   * The same kart after both front wheels were set to other angles at the kingpins. The stub turns
   * with the kingpin, so what camber gains the kingpin inclination loses (derived).
   *
   * @param camberDeg the change of camber, degrees, positive outboard at the top
   * @param casterDeg the change of caster, degrees, positive rearward at the top
   * @throws RefusedInputException if the kart would leave the range accepted
   */
  public KartGeometry changed(double camberDeg, double casterDeg) {
    return with(Dimension.CAMBER, value(Dimension.CAMBER) + camberDeg)
        .with(Dimension.KINGPIN_INCLINATION, value(Dimension.KINGPIN_INCLINATION) - camberDeg)
        .with(Dimension.CASTER, value(Dimension.CASTER) + casterDeg);
  }

  /**
   * Mechanical trail, mm: R · tan(caster), with R the loaded radius (textbook form, from memory;
   * Dixon 2009, Milliken and Milliken 1995).
   */
  public double trailMm() {
    return value(Dimension.WHEEL_RADIUS) * Math.tan(radians(Dimension.CASTER));
  }

  /**
   * Scrub radius at the ground, mm, positive with the contact point outboard of the kingpin axis: L
   * − R · tan(kingpin inclination) for an upright wheel, here exact for a cambered one (derived).
   */
  public double scrubRadiusMm() {
    double camber = radians(Dimension.CAMBER);
    double radius = value(Dimension.WHEEL_RADIUS);
    return value(Dimension.HUB_OFFSET)
        - radius * Math.sin(camber)
        - radius * Math.cos(camber) * Math.tan(radians(Dimension.KINGPIN_INCLINATION));
  }

  /**
   * The lateral acceleration, in g, at which both inner wheels leave the ground: (F·Tf + R·Tr) /
   * (2·W·(h + e)), half the track at the centre of gravity over its height (statics). It depends
   * neither on the steer nor on any stiffness.
   *
   * @param longitudinalG longitudinal acceleration, g, negative when slowing
   */
  public double tipsOverAtG(double longitudinalG) {
    double front = frontAxleN(longitudinalG) * value(Dimension.FRONT_TRACK);
    double rear = (weightN() - frontAxleN(longitudinalG)) * value(Dimension.REAR_TRACK);
    return (front + rear) / (2 * weightN() * overturnHeightMm());
  }

  /**
   * The lateral acceleration, in g, below which the inside rear cannot leave the ground whatever
   * the steer and the caster, since the outer front leaves first: (R·Tr − F·Tf) / (2·W·(h + e)),
   * not below nought (statics).
   *
   * @param longitudinalG longitudinal acceleration, g, negative when slowing
   */
  public double leastLiftG(double longitudinalG) {
    double front = frontAxleN(longitudinalG) * value(Dimension.FRONT_TRACK);
    double rear = (weightN() - frontAxleN(longitudinalG)) * value(Dimension.REAR_TRACK);
    return Math.max(0, (rear - front) / (2 * weightN() * overturnHeightMm()));
  }

  public double weightN() {
    return value(Dimension.MASS) * LoadModel.GRAVITY;
  }

  /** What the front axle carries, N: its share less what speeding up takes off it (pitch). */
  public double frontAxleN(double longitudinalG) {
    return weightN() * value(Dimension.FRONT_SHARE)
        - weightN() * longitudinalG * value(Dimension.CG_HEIGHT) / value(Dimension.WHEELBASE);
  }

  /** What the lateral acceleration acts on in roll, mm: h + e. */
  double overturnHeightMm() {
    return value(Dimension.CG_HEIGHT) + value(Dimension.OVERTURN);
  }

  public double radians(Dimension dimension) {
    return Math.toRadians(value(dimension));
  }
}
