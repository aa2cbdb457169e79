package insidelift.engine.geometry.plausible;

import insidelift.engine.geometry.kart.Corner;
import insidelift.engine.geometry.kart.CornerState;
import insidelift.engine.geometry.kart.KartGeometry;
import insidelift.engine.geometry.kart.LoadModel;
import java.util.OptionalDouble;

/**
 * A kart that could be the user's, with what no kart file knows: how it takes a typical corner, and
 * how its stubs give.
 *
 * @param kart its measures
 * @param steerOffDeg how much more than typical it is steered in a corner, degrees
 * @param lateralOffG how much harder it corners, g
 * @param longitudinalOffG how much less it slows, g
 * @param outerGiveDeg how much less into the turn the outer front leans at 1.3 g, as stub and yoke
 *     give, degrees
 * @param innerGiveDeg the same of the inner front
 */
record PlausibleKart(
    KartGeometry kart,
    double steerOffDeg,
    double lateralOffG,
    double longitudinalOffG,
    double outerGiveDeg,
    double innerGiveDeg) {

  /** Where the give of stub and yoke was worked out (derived). */
  private static final double GIVE_AT_G = 1.3;

  /** One kart in one corner, by the quantities that are told. */
  record In(
      double standsN,
      double rearInnerN,
      double rearInnerLiftMm,
      double frontInnerN,
      double liftOffG,
      double innerLeanDeg,
      double outerLeanDeg,
      double effortNm) {

    double share() {
      return rearInnerN / standsN;
    }
  }

  /** The corner as this one takes it; a corner that the user asked for by its numbers is exact. */
  Corner takes(Corner corner) {
    Corner taken =
        corner.name().isEmpty()
            ? corner
            : new Corner(
                corner.name(),
                corner.steerDeg() + steerOffDeg,
                corner.lateralG() + lateralOffG,
                corner.longitudinalG() + longitudinalOffG);
    return taken.takenBy(kart);
  }

  /** The kart, changed or not, in a corner taken as this one takes it. */
  In in(KartGeometry changed, Corner taken) {
    CornerState state = taken.state(changed);
    OptionalDouble lifts = LoadModel.liftOffG(changed, taken.steerDeg(), taken.longitudinalG());
    double given = taken.lateralG() / GIVE_AT_G;
    return new In(
        (changed.weightN() - changed.frontAxleN(0)) / 2,
        state.loads().rearInnerN(),
        state.loads().rearInnerLiftMm(),
        state.loads().frontInnerN(),
        lifts.orElse(Double.POSITIVE_INFINITY),
        state.innerLeanDeg() - innerGiveDeg * given,
        state.outerLeanDeg() + outerGiveDeg * given,
        state.effort().totalNm());
  }
}
