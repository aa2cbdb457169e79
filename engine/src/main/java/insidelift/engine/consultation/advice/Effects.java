package insidelift.engine.consultation.advice;

import insidelift.engine.consultation.decision.Decided;
import insidelift.engine.consultation.decision.LeverOutcome;
import insidelift.engine.geometry.effect.ChangeEffect;
import insidelift.engine.geometry.kart.Corner;
import insidelift.engine.geometry.kart.Dimension;
import insidelift.engine.geometry.kart.KartGeometry;
import insidelift.engine.geometry.positions.Positions;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.advice.Advice.Effect;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.util.List;

/**
 * What the changes made now do to this kart: its wheels and loads before and after, and where to
 * turn its washers. It informs; it never decides, and above all not the camber dispute.
 */
final class Effects {

  private Effects() {}

  /**
   * Refuses a description of the kart that cannot be true, whether or not anything is moved.
   *
   * @throws insidelift.engine.geometry.RefusedInputException if it cannot
   */
  static void check(Kart kart) {
    kart.geometry().ifPresent(KartGeometry::from);
    if (kart.eccentrics().washers() != null) {
      Positions.of(kart.eccentrics().washers(), kart.eccentrics().now(), 0, 0);
    }
  }

  /**
   * The change of one lever by itself, in the corners that the situation is about.
   *
   * @throws insidelift.engine.geometry.RefusedInputException if the kart's geometry is impossible
   */
  static Effect of(Situation situation, LeverOutcome verdict) {
    double degrees = signed(verdict);
    boolean camber = verdict.lever() == Lever.CAMBER;
    ChangeEffect effect =
        ChangeEffect.of(
            geometry(situation.kart()),
            camber ? degrees : 0,
            camber ? 0 : degrees,
            corners(situation));
    return new Effect(effect.json(), effect.sentence(), effect.table(), effect.drawing().lines());
  }

  /** The corners that a situation is about: never a dry one for a wet track. */
  static List<Corner> corners(Situation situation) {
    return Corner.about(
        situation.answer("water").orElse(null), situation.answer("worst-phase").orElse(null));
  }

  /**
   * The washers for everything that is moved together with a lever: one washer moves camber and
   * caster, so two targets are solved for at once. Null where the washers are not described.
   *
   * @throws insidelift.engine.geometry.RefusedInputException if the washers are impossible
   */
  static Effect washers(Kart kart, Decided decided, LeverOutcome verdict) {
    if (kart.eccentrics().washers() == null) {
      return null;
    }
    Positions positions =
        Positions.of(
            kart.eccentrics().washers(),
            kart.eccentrics().now(),
            wanted(Lever.CAMBER, decided, verdict),
            wanted(Lever.CASTER, decided, verdict));
    return new Effect(positions.json(), "", positions.lines(), List.of());
  }

  private static double wanted(Lever lever, Decided decided, LeverOutcome verdict) {
    return decided.verdicts().stream()
        .filter(other -> other.lever() == lever)
        .filter(other -> other.equals(verdict) || (verdict.first() && other.first()))
        .mapToDouble(Effects::signed)
        .sum();
  }

  private static double signed(LeverOutcome verdict) {
    double size = verdict.sized().degrees().value();
    return verdict.sized().direction() == Direction.LESS ? -size : size;
  }

  /**
   * The kart's own geometry, with the settings it was measured at where the geometry names none.
   */
  static KartGeometry geometry(Kart kart) {
    KartGeometry known = kart.geometry().map(KartGeometry::from).orElseGet(KartGeometry::typical);
    if (kart.camber().isPresent() && known.isTypical(Dimension.CAMBER)) {
      known = known.with(Dimension.CAMBER, kart.camber().map(Sides::middle).orElseThrow().value());
    }
    if (kart.absolute() && kart.caster().isPresent() && known.isTypical(Dimension.CASTER)) {
      known = known.with(Dimension.CASTER, kart.caster().map(Sides::middle).orElseThrow().value());
    }
    return known;
  }
}
