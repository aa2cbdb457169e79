package insidelift.engine.geometry.kart;

/**
 * One measure of a kart: its JSON key, the range accepted, the value taken when the user gives
 * none, and where each of these comes from.
 *
 * <p>The typical kart stands between two published sets of parameters, a simulated kart with wheel
 * loads (Mirone 2010) and one used for lap simulation (Lot and Dal Bianco 2016), where they differ
 * by half or more; every such middle is provisional. {@link KartSize} has what a smaller kart has
 * instead. The published wheel loads are met by another kart, which the tests keep.
 */
public enum Dimension {
  /** Caster, degrees, positive with the top of the kingpin rearward. */
  CASTER(
      "casterDeg",
      " °",
      0,
      35,
      "provisional; published baselines run from about 8 to over 20 °",
      16,
      Source.BASELINES),
  /** Kingpin inclination, degrees, positive with the top inboard. */
  KINGPIN_INCLINATION(
      "kpiDeg", " °", -5, 25, "provisional", 10, "10 to 12° are usual (published); provisional"),
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
      Source.SIMULATED),
  /** From the kingpin axis to the wheel centre at hub height, mm. */
  HUB_OFFSET(
      "hubOffsetMm",
      " mm",
      10,
      250,
      "provisional",
      140,
      "provisional; the published loads are met from 100 to 160 mm, each with its steering ratio"),
  /** Wheelbase, mm. */
  WHEELBASE(
      "wheelbaseMm",
      " mm",
      700,
      1270,
      "at most 1270 mm: " + Source.RULES + " 3.1; at least: provisional, the smallest karts",
      1050,
      Source.BETWEEN),
  /** Front track between the contact centres, mm; at least two thirds of the wheelbase. */
  FRONT_TRACK("frontTrackMm", " mm", 467, 1400, Source.TRACK, 1050, Source.BETWEEN),
  /** Rear track between the contact centres, mm; at least two thirds of the wheelbase. */
  REAR_TRACK("rearTrackMm", " mm", 467, 1400, Source.TRACK, 1180, Source.BETWEEN),
  /** Mass with the driver, kg. */
  MASS("massKg", " kg", 50, 350, "provisional", 160, Source.BETWEEN),
  /** Share of the weight on the front axle. */
  FRONT_SHARE(
      "frontShare",
      "",
      0.3,
      0.6,
      "provisional",
      0.42,
      "provisional; 0.40 in the dry to 0.45 in the wet is common practice"),
  /** Height of the centre of gravity above the ground, mm. */
  CG_HEIGHT("cgHeightMm", " mm", 100, 500, "provisional", 250, Source.LAP),
  /**
   * How far the line of the weight moves out against the contact points for each g of cornering,
   * mm: tyres giving way sideways, roll over the tyres, the driver's shift. It adds to the height
   * of the centre of gravity in the roll moment and in nothing else.
   */
  OVERTURN(
      "overturnMmPerG",
      " mm/g",
      -20,
      80,
      "provisional",
      20,
      "provisional; tyres 7 to 10 and roll 4 (derived), the driver 5 to 15 (from memory)"),
  /** Torsional stiffness of the frame between the axles, N·m per degree. */
  FRAME_STIFFNESS("frameStiffnessNmPerDeg", " N·m/°", 20, 2000, "provisional", 160, Source.BETWEEN),
  /** Vertical stiffness of one front tyre, N/mm. */
  TYRE_STIFFNESS_FRONT(
      "tyreStiffnessFrontNPerMm", " N/mm", 30, 600, "provisional", 100, Source.BETWEEN),
  /** Vertical stiffness of one rear tyre, N/mm. */
  TYRE_STIFFNESS_REAR(
      "tyreStiffnessRearNPerMm", " N/mm", 30, 600, "provisional", 110, Source.BETWEEN),
  /** Share of the lateral mass's roll moment that acts on the front half of the frame. */
  ROLL_SHARE_FRONT("rollShareFront", "", 0, 1, "a share", 0.28, Source.BETWEEN);

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

  /** The value taken for an adult's kart when the user gives none. */
  public double typical() {
    return typical;
  }

  /** Where the typical value comes from. */
  public String typicalSource() {
    return typicalSource;
  }

  /** Where the numbers come from; an enum's own constants cannot be read in its constructor. */
  private static final class Source {
    static final String SIMULATED = "G. Mirone, Int. J. Automotive Technology 11(4), 2010, 461-469";
    static final String LAP =
        "R. Lot and N. Dal Bianco, 2016 (Southampton eprint 385883), as copied out by others";
    static final String BETWEEN =
        "provisional, between G. Mirone 2010 and R. Lot and N. Dal Bianco 2016";
    static final String BASELINES =
        "provisional, the middle of published baselines from about 8 to over 20 °";
    static final String RULES =
        "Motorsport UK National Competition Rules 2026, kart dimensions (as reported in an"
            + " excerpt)";
    static final String TRACK =
        "track at least two thirds of the wheelbase, overall width at most 1400 mm: "
            + RULES
            + " 3.2, 3.4";
  }
}
