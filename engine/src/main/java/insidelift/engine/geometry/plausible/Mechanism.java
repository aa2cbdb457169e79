package insidelift.engine.geometry.plausible;

import insidelift.engine.geometry.kart.Corner;
import insidelift.engine.geometry.kart.CornerState;
import insidelift.engine.geometry.kart.Dimension;
import insidelift.engine.geometry.kart.KartGeometry;
import insidelift.engine.geometry.kart.SteeringArm;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A mechanical reason that a rule may give, with a sign that can be computed: what more of a lever
 * does to a quantity, and in which corners it may be said. It may be said of a corner only where it
 * holds on at least {@link #LEAST_SHARE} of the karts that are plausible. Positive camber is
 * outboard at the top; "lean" is the camber to the ground.
 */
public enum Mechanism {
  /** More caster unloads the inside rear wheel, or lifts it further. */
  CASTER_LIFT(Lever.CASTER, -1),
  /**
   * More caster loads the inner front wheel: only while the inside rear stands, so it may be said
   * of the wet alone.
   */
  CASTER_DIAGONAL(Lever.CASTER, 1, List.of(Corner.WET)),
  /** More caster leans the outer front further into the turn, top inboard. */
  CASTER_LEAN_OUTER(Lever.CASTER, -1),
  /** More caster leans the inner front further into the turn, top outboard. */
  CASTER_LEAN_INNER(Lever.CASTER, 1),
  /** More caster makes the steering heavier, trail and jacking together. */
  CASTER_EFFORT(Lever.CASTER, 1),
  /** More caster lengthens the mechanical trail. */
  CASTER_TRAIL(Lever.CASTER, 1),
  /** More caster at the top pivot shortens the wheelbase. */
  CASTER_WHEELBASE(Lever.CASTER, -1),
  /** More camber takes lean off the outer front, which leans top inboard. */
  CAMBER_LEAN_OUTER(Lever.CAMBER, 1),
  /** More camber leans the inner front further. */
  CAMBER_LEAN_INNER(Lever.CAMBER, 1),
  /** More camber at the top pivot gives toe-out with the steering arm behind the kingpin. */
  CAMBER_TOE_OUT(Lever.CAMBER, 1),
  /** More camber gives toe-in with the steering arm ahead of the kingpin. */
  CAMBER_TOE_IN(Lever.CAMBER, -1),
  /** A wider front, hubs further out, unloads the inside rear wheel, or lifts it further. */
  WIDER_FRONT_LIFT(Lever.FRONT_WIDTH, -1);

  /** A reason that fails on more karts than one in twenty is not given. */
  public static final double LEAST_SHARE = 0.95;

  /** Smaller effects are arithmetic. */
  private static final double NOISE = 1e-6;

  private final Lever lever;
  private final int sign;

  @SuppressWarnings("ImmutableEnumChecker") // List.of cannot be changed.
  private final List<Corner> corners;

  Mechanism(Lever lever, int sign) {
    this(lever, sign, List.of(Corner.TURN_IN, Corner.APEX, Corner.WET));
  }

  Mechanism(Lever lever, int sign, List<Corner> corners) {
    this.lever = lever;
    this.sign = sign;
    this.corners = corners;
  }

  /** Its word in a note, as in {@code caster-lift}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The mechanism of that word, if there is one. */
  public static Optional<Mechanism> named(String word) {
    return Arrays.stream(values()).filter(m -> m.word().equals(word)).findFirst();
  }

  /** The corners that it may be said of. */
  public List<Corner> corners() {
    return corners;
  }

  /** The share of plausible karts on which it holds in a corner; no effect is a failure. */
  public double share(Corner corner) {
    List<PlausibleKart> karts = Plausible.KARTS;
    long holds =
        karts.stream()
            .filter(kart -> effect(kart.kart(), kart.takes(corner)) * sign > NOISE)
            .count();
    return holds / (double) karts.size();
  }

  /** What the lever's step does to the quantity of one kart in one corner, in its unit. */
  double effect(KartGeometry kart, Corner corner) {
    return quantity(Situation.of(lever.more(kart), corner)) - quantity(Situation.of(kart, corner));
  }

  private double quantity(Situation now) {
    return switch (this) {
      case CASTER_LIFT, WIDER_FRONT_LIFT -> now.insideRearStands();
      case CASTER_DIAGONAL -> now.state.loads().frontInnerN();
      case CASTER_LEAN_OUTER, CAMBER_LEAN_OUTER -> now.state.outerLeanDeg();
      case CASTER_LEAN_INNER, CAMBER_LEAN_INNER -> now.state.innerLeanDeg();
      case CASTER_EFFORT -> now.state.effort().totalNm();
      case CASTER_TRAIL -> now.kart.trailMm();
      case CASTER_WHEELBASE -> SteeringArm.TYPICAL.wheelbaseMm(now.kart.value(Dimension.CASTER));
      case CAMBER_TOE_OUT -> SteeringArm.TYPICAL.toeOutDeg(now.kart.value(Dimension.CAMBER));
      case CAMBER_TOE_IN -> Situation.AHEAD.toeOutDeg(now.kart.value(Dimension.CAMBER));
    };
  }

  private static final class Plausible {
    /** More than the usual table, since a share near its limit is to be told apart. */
    static final List<PlausibleKart> KARTS =
        PlausibleKarts.of(KartGeometry.typical(), 2048).karts();
  }

  /** What is moved, by a step that a garage would take. */
  private enum Lever {
    CAMBER,
    CASTER,
    FRONT_WIDTH;

    KartGeometry more(KartGeometry kart) {
      return switch (this) {
        case CAMBER -> kart.changed(0.5, 0);
        case CASTER -> kart.changed(0, 1);
        case FRONT_WIDTH ->
            kart.with(Dimension.HUB_OFFSET, kart.value(Dimension.HUB_OFFSET) + 5)
                .with(Dimension.FRONT_TRACK, kart.value(Dimension.FRONT_TRACK) + 10);
      };
    }
  }

  /** A kart in a corner. */
  private record Situation(KartGeometry kart, CornerState state) {

    static final SteeringArm AHEAD =
        new SteeringArm(
            SteeringArm.TYPICAL.tieRodHeightMm(),
            SteeringArm.TYPICAL.armLengthMm(),
            false,
            SteeringArm.TYPICAL.hubHeightMm(),
            SteeringArm.TYPICAL.pivotSpacingMm(),
            SteeringArm.TYPICAL.moved(),
            SteeringArm.TYPICAL.discMm());

    static Situation of(KartGeometry kart, Corner corner) {
      return new Situation(kart, corner.state(kart));
    }

    /** The load of the inside rear, N, counting on below nought as it goes up in the air. */
    double insideRearStands() {
      return state.loads().rearInnerN() - state.loads().rearInnerLiftMm();
    }
  }
}
