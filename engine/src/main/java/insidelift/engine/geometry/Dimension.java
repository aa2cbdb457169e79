package insidelift.engine.geometry;

/**
 * One measure of a kart: its JSON key, the range accepted, the value taken when the user gives
 * none, and where each of these comes from.
 *
 * <p>The typical kart is the one of the published simulation cited below. Its hub offset, height of
 * the centre of gravity and front share of the roll moment are not published: they are calibrated
 * on the three published rows of wheel loads, with the steering angle printed there taken as the
 * rotation about the kingpins. The share follows from the paper's own finding that the frame's
 * twist follows the steering and not the lateral acceleration: so it is with the share that tyres
 * and tracks would take on a rigid frame, 0.34. With it, a least-squares fit of the other two gives
 * 74.5 and 303 mm at 5.5 N root mean square; fitting all three gains less than 0.1 N. {@code
 * CalibrationTest} repeats the fit.
 */
public enum Dimension {
  /** Caster, degrees, positive with the top of the kingpin rearward. */
  CASTER(
      "casterDeg",
      " °",
      0,
      35,
      "provisional; published baselines run from about 8 to over 20 °",
      12.8,
      Source.PUBLISHED),
  /** Kingpin inclination, degrees, positive with the top inboard. */
  KINGPIN_INCLINATION("kpiDeg", " °", -5, 25, "provisional", 6.5, Source.PUBLISHED),
  /** Static camber, degrees, positive with the top of the wheel outboard. */
  CAMBER("camberDeg", " °", -8, 8, "provisional", 0, "common practice: zero in the dry"),
  /** Loaded radius of a front wheel, mm. */
  WHEEL_RADIUS(
      "wheelRadiusMm",
      " mm",
      90,
      160,
      "provisional; from the smallest children's wheels to beyond a 280 mm front tyre",
      130,
      Source.PUBLISHED),
  /** From the kingpin axis to the wheel centre at hub height, mm. */
  HUB_OFFSET("hubOffsetMm", " mm", 10, 250, "provisional", 75, Source.CALIBRATED),
  /** Wheelbase, mm. */
  WHEELBASE(
      "wheelbaseMm",
      " mm",
      700,
      1270,
      "at most 1270 mm: " + Source.RULES + " 3.1; at least: provisional, the smallest karts",
      1068,
      Source.PUBLISHED),
  /** Front track between the contact centres, mm; at least two thirds of the wheelbase. */
  FRONT_TRACK("frontTrackMm", " mm", 467, 1400, Source.TRACK, 960, Source.PUBLISHED),
  /** Rear track between the contact centres, mm; at least two thirds of the wheelbase. */
  REAR_TRACK("rearTrackMm", " mm", 467, 1400, Source.TRACK, 1160, Source.PUBLISHED),
  /** Mass with the driver, kg. */
  MASS(
      "massKg",
      " kg",
      50,
      350,
      "provisional",
      143.6,
      "the sum of the loads plotted in " + Source.PAPER + " (its text says 140 kg)"),
  /** Share of the weight on the front axle. */
  FRONT_SHARE("frontShare", "", 0.3, 0.6, "provisional", 0.43, Source.PUBLISHED),
  /** Height of the centre of gravity above the ground, mm. */
  CG_HEIGHT("cgHeightMm", " mm", 100, 500, "provisional", 303, Source.CALIBRATED),
  /** Torsional stiffness of the frame between the axles, N·m per degree. */
  FRAME_STIFFNESS(
      "frameStiffnessNmPerDeg", " N·m/°", 20, 2000, "provisional", 166, Source.PUBLISHED),
  /** Vertical stiffness of one front tyre, N/mm. */
  TYRE_STIFFNESS_FRONT(
      "tyreStiffnessFrontNPerMm", " N/mm", 30, 600, "provisional", 150, Source.PUBLISHED),
  /** Vertical stiffness of one rear tyre, N/mm. */
  TYRE_STIFFNESS_REAR(
      "tyreStiffnessRearNPerMm", " N/mm", 30, 600, "provisional", 200, Source.PUBLISHED),
  /** Share of the lateral mass's roll moment that acts on the front half of the frame. */
  ROLL_SHARE_FRONT("rollShareFront", "", 0, 1, "a share", 0.34, Source.CALIBRATED);

  private final String key;
  private final String unit;
  private final double least;
  private final double most;
  private final String rangeSource;
  private final double typical;
  private final String typicalSource;

  Dimension(
      String key,
      String unit,
      double least,
      double most,
      String rangeSource,
      double typical,
      String typicalSource) {
    this.key = key;
    this.unit = unit;
    this.least = least;
    this.most = most;
    this.rangeSource = rangeSource;
    this.typical = typical;
    this.typicalSource = typicalSource;
  }

  /** The JSON key, which ends in the unit. */
  public String key() {
    return key;
  }

  /** The unit as printed behind a number, with its space; empty for a share. */
  public String unit() {
    return unit;
  }

  /** The smallest value accepted, in the unit of the key. */
  public double least() {
    return least;
  }

  /** The largest value accepted, in the unit of the key. */
  public double most() {
    return most;
  }

  /** Where the range comes from, or that it is provisional. */
  public String rangeSource() {
    return rangeSource;
  }

  /** The value taken when the user gives none. */
  public double typical() {
    return typical;
  }

  /** Where the typical value comes from. */
  public String typicalSource() {
    return typicalSource;
  }

  /** Where the numbers come from; an enum's own constants cannot be read in its constructor. */
  private static final class Source {
    static final String PAPER = "G. Mirone, Int. J. Automotive Technology 11(4), 2010, 461-469";
    static final String PUBLISHED = PAPER;
    static final String CALIBRATED = "calibrated on three rows of wheel loads of " + PAPER;
    static final String RULES =
        "Motorsport UK National Competition Rules 2026, kart dimensions (as reported in an"
            + " excerpt)";
    static final String TRACK =
        "track at least two thirds of the wheelbase, overall width at most 1400 mm: "
            + RULES
            + " 3.2, 3.4";
  }
}
