package insidelift.engine.geometry;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * A kart's measures: those that the user gave, and for the others the typical ones of {@link
 * Dimension}.
 *
 * @param given the measures given, each in the unit of its key
 */
public record KartGeometry(Map<Dimension, Double> given) {

  private static final String PLACE = "geometry";
  private static final double LEAST_TRACK_SHARE = 2.0 / 3.0;

  /**
   * @throws RefusedInputException if a measure is not finite or outside its range, or a track is
   *     below two thirds of the wheelbase
   */
  public KartGeometry {
    EnumMap<Dimension, Double> copy = new EnumMap<>(Dimension.class);
    copy.putAll(given);
    given = Collections.unmodifiableMap(copy);
    for (Map.Entry<Dimension, Double> entry : given.entrySet()) {
      Dimension dimension = entry.getKey();
      Range.check(
          PLACE + "." + dimension.key(),
          entry.getValue(),
          least(given, dimension),
          dimension.most(),
          (dimension.unit() + " (" + dimension.rangeSource() + ")").strip());
    }
  }

  /** The tracks' lower limit is a share of this kart's own wheelbase, which is checked before. */
  private static double least(Map<Dimension, Double> given, Dimension dimension) {
    boolean track = dimension == Dimension.FRONT_TRACK || dimension == Dimension.REAR_TRACK;
    return track ? LEAST_TRACK_SHARE * valueIn(given, Dimension.WHEELBASE) : dimension.least();
  }

  private static double valueIn(Map<Dimension, Double> given, Dimension dimension) {
    return given.getOrDefault(dimension, dimension.typical());
  }

  /** The kart with nothing given: the typical one throughout. */
  public static KartGeometry typical() {
    return new KartGeometry(Map.of());
  }

  /**
   * Reads a kart file, {@code {"schema":1,"geometry":{…}}}; measures left out are typical.
   *
   * @throws RefusedInputException if the file is missing, is not strict JSON of that shape, has a
   *     key that is unknown or written twice, or a measure outside its range
   */
  public static KartGeometry read(Path file) {
    return fromFile(StrictJson.read(file));
  }

  /**
   * Reads a kart file from a stream, which stays open.
   *
   * @param name what to call the stream in a message
   * @throws RefusedInputException as for a file
   */
  public static KartGeometry read(InputStream in, String name) {
    return fromFile(StrictJson.read(in, name));
  }

  private static KartGeometry fromFile(JsonNode root) {
    Fields fields = Fields.ofFile(root);
    Fields geometry = fields.object(PLACE);
    fields.refuseOthers();
    return from(geometry);
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
    return valueIn(given, dimension);
  }

  /** Whether the measure is the typical one because none was given. */
  public boolean isTypical(Dimension dimension) {
    return !given.containsKey(dimension);
  }

  /**
   * The same kart with one measure replaced.
   *
   * @throws RefusedInputException if the new measure is outside its range
   */
  public KartGeometry with(Dimension dimension, double value) {
    EnumMap<Dimension, Double> changed = new EnumMap<>(Dimension.class);
    changed.putAll(given);
    changed.put(dimension, value);
    return new KartGeometry(changed);
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
   * The lateral acceleration, in g, at which both inner wheels leave the ground: half the track at
   * the centre of gravity over its height (statics). It depends neither on the steer nor on any
   * stiffness.
   */
  public double tipsOverAtG() {
    double share = value(Dimension.FRONT_SHARE);
    double halfTrack =
        (share * value(Dimension.FRONT_TRACK) + (1 - share) * value(Dimension.REAR_TRACK)) / 2;
    return halfTrack / value(Dimension.CG_HEIGHT);
  }

  double radians(Dimension dimension) {
    return Math.toRadians(value(dimension));
  }
}
