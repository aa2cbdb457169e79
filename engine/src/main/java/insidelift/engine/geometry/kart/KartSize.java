package insidelift.engine.geometry.kart;

import java.util.EnumMap;
import java.util.Map;

/**
 * How large a kart is: what a child's kart typically has instead of the measures of {@link
 * Dimension}. Told by the measures given, since nothing else says it. All of it is provisional.
 */
public enum KartSize {
  /** The short chassis of the youngest classes. */
  CADET(
      Map.of(
          Dimension.WHEEL_RADIUS, 122.0,
          Dimension.HUB_OFFSET, 115.0,
          Dimension.WHEELBASE, 950.0,
          Dimension.FRONT_TRACK, 870.0,
          Dimension.REAR_TRACK, 980.0,
          Dimension.MASS, 105.0,
          Dimension.CG_HEIGHT, 240.0,
          Dimension.FRAME_STIFFNESS, 130.0,
          Dimension.TYRE_STIFFNESS_FRONT, 90.0,
          Dimension.TYRE_STIFFNESS_REAR, 100.0)),
  /** An adult's chassis, or nearly, with a lighter driver. */
  JUNIOR(Map.of(Dimension.WHEELBASE, 1045.0, Dimension.MASS, 140.0, Dimension.CG_HEIGHT, 245.0)),
  /** The chassis and weight that the published karts have. */
  ADULT(Map.of());

  static final String SOURCE = "provisional, for a smaller kart";

  private static final double SHORTEST_ADULT_WHEELBASE_MM = 1000;
  private static final double LIGHTEST_JUNIOR_KG = 120;
  private static final double LIGHTEST_ADULT_KG = 147;

  @SuppressWarnings("ImmutableEnumChecker") // Map.of cannot be changed.
  private final Map<Dimension, Double> own;

  KartSize(Map<Dimension, Double> own) {
    this.own = own;
  }

  /** The size that the wheelbase says, or without one the mass; an adult's without either. */
  public static KartSize of(Map<Dimension, Double> given) {
    Double wheelbase = given.get(Dimension.WHEELBASE);
    double mass = given.getOrDefault(Dimension.MASS, Dimension.MASS.typical());
    if (wheelbase == null ? mass < LIGHTEST_JUNIOR_KG : wheelbase < SHORTEST_ADULT_WHEELBASE_MM) {
      return CADET;
    }
    return mass < LIGHTEST_ADULT_KG ? JUNIOR : ADULT;
  }

  /** Where the typical value of a measure comes from for a kart of this size. */
  public String source(Dimension dimension) {
    return own.containsKey(dimension) ? SOURCE : dimension.typicalSource();
  }

  double typical(Dimension dimension) {
    return own.getOrDefault(dimension, dimension.typical());
  }

  /**
   * What a kart of this size has where nothing was given. A height of the centre of gravity that
   * was given without an overturn is taken as it always was: as the whole height that the weight
   * acts on in roll, which is what a fit to measured loads finds.
   */
  Map<Dimension, Double> typical(Map<Dimension, Double> given) {
    EnumMap<Dimension, Double> typical = new EnumMap<>(Dimension.class);
    for (Dimension dimension : Dimension.values()) {
      typical.put(dimension, typical(dimension));
    }
    if (given.containsKey(Dimension.CG_HEIGHT)) {
      typical.put(Dimension.OVERTURN, 0.0);
    }
    return typical;
  }
}
