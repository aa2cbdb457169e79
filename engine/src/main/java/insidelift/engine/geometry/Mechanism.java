package insidelift.engine.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A mechanical reason that a rule may give, with a sign that can be computed: what more of a lever
 * does to a quantity. Positive camber is outboard at the top; "lean" is the camber to the ground.
 */
public enum Mechanism {
  /** More caster unloads the inside rear wheel, or lifts it further. */
  CASTER_LIFT(Lever.CASTER, -1),
  /** More caster loads the inner front wheel; not once the inside rear is in the air. */
  CASTER_DIAGONAL(Lever.CASTER, 1),
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

  /** Smaller effects are arithmetic. */
  private static final double NOISE = 1e-6;

  private final Lever lever;
  private final int sign;

  Mechanism(Lever lever, int sign) {
    this.lever = lever;
    this.sign = sign;
  }

  /** Its word in a note, as in {@code caster-lift}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The mechanism of that word, if there is one. */
  public static Optional<Mechanism> named(String word) {
    return Arrays.stream(values()).filter(m -> m.word().equals(word)).findFirst();
  }

  /** +1 if more of the lever raises the quantity, −1 if it lowers it. */
  public int sign() {
    return sign;
  }

  /** What the lever's step does to the quantity of one kart in one corner, in its unit. */
  double effect(KartGeometry kart, double steerDeg, double lateralG) {
    return quantity(Situation.of(lever.more(kart), steerDeg, lateralG))
        - quantity(Situation.of(kart, steerDeg, lateralG));
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

  /** Computes the claim over the whole documented range of geometries, steers and accelerations. */
  public Agreement overDocumentedRange() {
    List<Agreement.Trial> trials = new ArrayList<>();
    for (KartGeometry kart : DocumentedRange.karts()) {
      for (double steer : DocumentedRange.STEERS_DEG) {
        for (double lateralG : DocumentedRange.LATERAL_G) {
          trials.add(new Agreement.Trial(kart, steer, lateralG, effect(kart, steer, lateralG)));
        }
      }
    }
    return Agreement.of(trials, sign, NOISE);
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

    static Situation of(KartGeometry kart, double steerDeg, double lateralG) {
      return new Situation(kart, CornerState.of(kart, steerDeg, lateralG));
    }

    /** The load of the inside rear, N, counting on below nought as it goes up in the air. */
    double insideRearStands() {
      return state.loads().rearInnerN() - state.loads().rearInnerLiftMm();
    }
  }
}
