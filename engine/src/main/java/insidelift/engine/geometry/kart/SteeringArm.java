package insidelift.engine.geometry.kart;

import com.fasterxml.jackson.databind.JsonNode;
import insidelift.engine.geometry.Fields;
import insidelift.engine.geometry.Range;
import insidelift.engine.geometry.RefusedInputException;

/**
 * What decides how far a camber or caster change moves the toe and the wheelbase: where the tie-rod
 * and the hub sit. The defaults are typical, provisional: measure your own.
 *
 * @param tieRodHeightMm height of the tie-rod's outer joint above the lower pivot, mm, −20 to 60
 * @param armLengthMm steering arm, from the kingpin axis to the joint, mm, 50 to 200
 * @param behindKingpin whether the arm points rearward; otherwise forward
 * @param hubHeightMm height of the hub above the lower pivot, mm, 0 to 80
 * @param pivotSpacingMm from the lower to the upper pivot, mm, 30 to 120
 * @param moved which pivots the eccentrics move: the kingpin turns about the other one, or about
 *     the middle when both are turned against each other
 * @param discMm diameter of the disc or wheel that toe is read over, mm, 100 to 600
 */
public record SteeringArm(
    double tieRodHeightMm,
    double armLengthMm,
    boolean behindKingpin,
    double hubHeightMm,
    double pivotSpacingMm,
    MovedPivots moved,
    double discMm) {

  /**
   * Tie-rod and hub 30 mm above the lower pivot, a 100 mm arm behind the kingpin, 60 mm between the
   * pivots, the top one moved, a 280 mm disc: typical, provisional.
   */
  public static final SteeringArm TYPICAL =
      new SteeringArm(30, 100, true, 30, 60, MovedPivots.TOP, 280);

  private static final String PLACE = "steeringArm";

  /**
   * @throws RefusedInputException if a measure is outside its range
   */
  public SteeringArm {
    Range.check(PLACE + ".tieRodHeightMm", tieRodHeightMm, -20, 60, "mm (provisional)");
    Range.check(PLACE + ".armLengthMm", armLengthMm, 50, 200, "mm (provisional)");
    Range.check(PLACE + ".hubHeightMm", hubHeightMm, 0, 80, "mm (provisional)");
    Range.check(PLACE + ".pivotSpacingMm", pivotSpacingMm, 30, 120, "mm (provisional)");
    Range.check(PLACE + ".discMm", discMm, 100, 600, "mm (provisional)");
  }

  /**
   * Reads {@code {tieRodHeightMm, armLengthMm, behindKingpin, hubHeightMm, pivotSpacingMm, moved,
   * discMm}}, {@code moved} one of {@code top}, {@code bottom}, {@code both}; what is left out is
   * typical.
   *
   * @throws RefusedInputException if it is not such an object or a measure is outside its range
   */
  public static SteeringArm from(JsonNode node) {
    Fields fields = Fields.of(PLACE, node);
    SteeringArm arm =
        new SteeringArm(
            number(fields, "tieRodHeightMm", TYPICAL.tieRodHeightMm),
            number(fields, "armLengthMm", TYPICAL.armLengthMm),
            fields.has("behindKingpin") ? fields.flag("behindKingpin") : TYPICAL.behindKingpin,
            number(fields, "hubHeightMm", TYPICAL.hubHeightMm),
            number(fields, "pivotSpacingMm", TYPICAL.pivotSpacingMm),
            fields.has("moved")
                ? MovedPivots.named(fields.word("moved", MovedPivots.words()))
                : TYPICAL.moved,
            number(fields, "discMm", TYPICAL.discMm));
    fields.refuseOthers();
    return arm;
  }

  private static double number(Fields fields, String key, double typical) {
    return fields.has(key) ? fields.number(key) : typical;
  }

  /** The same arm with the eccentrics at other pivots. */
  public SteeringArm moving(MovedPivots pivots) {
    return new SteeringArm(
        tieRodHeightMm, armLengthMm, behindKingpin, hubHeightMm, pivotSpacingMm, pivots, discMm);
  }

  /**
   * Toe-out gained per wheel, degrees, by a camber change with the tie-rod left alone: height above
   * the point that stays × change / arm length, out with the arm behind the kingpin and in with it
   * ahead (derived, small angles).
   */
  public double toeOutDeg(double camberDeg) {
    double out = aboveStillPoint(tieRodHeightMm) * camberDeg / armLengthMm;
    return (behindKingpin ? out : -out) + 0.0;
  }

  /** Toe-out of both wheels together over the disc, mm: 2 · diameter · sin(angle per wheel). */
  public double toeOutTotalMm(double camberDeg) {
    return 2 * discMm * Math.sin(Math.toRadians(toeOutDeg(camberDeg))) + 0.0;
  }

  /**
   * Change of the wheelbase, mm, by a caster change: − height of the hub above the point that stays
   * × tan(change) (derived); about nought when top and bottom are turned against each other.
   */
  public double wheelbaseMm(double casterDeg) {
    return -aboveStillPoint(hubHeightMm) * Math.tan(Math.toRadians(casterDeg)) + 0.0;
  }

  private double aboveStillPoint(double heightMm) {
    return heightMm - moved.stillShare() * pivotSpacingMm;
  }
}
