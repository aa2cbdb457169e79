package insidelift.engine.geometry.effect;

import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.geometry.RefusedInputException;
import insidelift.engine.geometry.kart.Corner;
import insidelift.engine.geometry.kart.KartGeometry;
import insidelift.engine.geometry.kart.SteeringArm;
import insidelift.engine.geometry.plausible.ChangeBands;
import insidelift.engine.geometry.plausible.PlausibleKarts;
import java.util.List;

/**
 * What a change of camber and caster, the same on both sides, does to one kart in the corners that
 * the situation is about: before and after, and in bands over the karts that fit what is known. It
 * informs the dispute about camber and does not decide it: camber thrust is not modelled.
 *
 * @param camberDeg change of camber, degrees, positive outboard at the top
 * @param casterDeg change of caster, degrees, positive rearward at the top
 * @param before the kart as it is
 * @param after the kart as changed
 * @param arm what decides toe and wheelbase
 * @param corners where it is judged
 */
public record ChangeEffect(
    double camberDeg,
    double casterDeg,
    KartGeometry before,
    KartGeometry after,
    SteeringArm arm,
    List<CornerChange> corners) {

  /** The corners in their order cannot be changed from outside. */
  public ChangeEffect {
    corners = List.copyOf(corners);
  }

  /**
   * Judges a change in corners, with a typical steering arm.
   *
   * @throws RefusedInputException if the kart would leave the range accepted
   */
  public static ChangeEffect of(
      KartGeometry kart, double camberDeg, double casterDeg, List<Corner> corners) {
    return of(kart, camberDeg, casterDeg, SteeringArm.TYPICAL, corners);
  }

  /**
   * Judges a change in given corners, each taken no faster than nine tenths of where the kart tips.
   *
   * @throws RefusedInputException if the kart would leave the range accepted, or a corner is
   *     outside its range
   */
  public static ChangeEffect of(
      KartGeometry kart,
      double camberDeg,
      double casterDeg,
      SteeringArm arm,
      List<Corner> corners) {
    KartGeometry after = kart.changed(camberDeg, casterDeg);
    PlausibleKarts plausible = PlausibleKarts.of(kart);
    return new ChangeEffect(
        camberDeg,
        casterDeg,
        kart,
        after,
        arm,
        corners.stream()
            .map(
                corner ->
                    CornerChange.of(
                        corner.takenBy(kart),
                        kart,
                        after,
                        ChangeBands.of(corner, plausible, camberDeg, casterDeg)))
            .toList());
  }

  /** Change of the mechanical trail, mm. */
  public double trailChangeMm() {
    return after.trailMm() - before.trailMm();
  }

  /**
   * Toe-out gained by both wheels together, mm over the disc, to be taken back; negative: toe-in.
   */
  public double toeOutTotalMm() {
    return arm.toeOutTotalMm(camberDeg);
  }

  /** Change of the wheelbase on each side, mm; about nought with opposed eccentrics. */
  public double wheelbaseChangeMm() {
    return arm.wheelbaseMm(casterDeg);
  }

  /** The effect as JSON, numbers unrounded. */
  public ObjectNode json() {
    return ChangeEffectJson.of(this);
  }

  /** The effect as one small table of at most 80 columns. */
  public List<String> table() {
    return ChangeEffectText.table(this);
  }

  /** The effect as one plain sentence. */
  public String sentence() {
    return ChangeEffectText.sentence(this);
  }

  /** The change drawn to scale. */
  public ChangeDrawing drawing() {
    return new ChangeDrawing(before, after);
  }
}
