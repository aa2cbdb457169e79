package insidelift.engine.geometry.gauge;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.geometry.Printed;
import insidelift.engine.geometry.Range;
import insidelift.engine.geometry.RefusedInputException;
import insidelift.engine.geometry.toe.TotalToe;
import java.util.List;

/**
 * Toe of both front wheels together, as the difference of two widths over a disc or wheel and as an
 * angle: mm = 2 · diameter · sin(angle per wheel) (derived). Sign conventions differ in the trade,
 * so the direction is always named.
 *
 * @param discMm diameter over which it is read, mm, 100 to 600
 * @param totalOutMm width at the front less width at the rear, mm: positive is toe-out
 */
public record ToeOverDisc(double discMm, double totalOutMm) implements GaugeReading {

  static final List<String> DIRECTIONS = List.of("out", "in");
  static final double MOST_DEG = TotalToe.MOST_DEG;

  /** A toe that a kart can have. */
  public ToeOverDisc {
    Range.check("toe.discMm", discMm, 100, 600, "mm (provisional)");
    double most = new TotalToe(MOST_DEG).mmOver(discMm);
    Range.check("toe.totalMm", totalOutMm, -most, most, "mm (10° in all, provisional)");
  }

  /**
   * Toe from an angle of both wheels together.
   *
   * @param totalOutDeg degrees, positive is toe-out, −10 to 10
   * @throws RefusedInputException if a value is outside its range
   */
  public static ToeOverDisc ofDegrees(double discMm, double totalOutDeg) {
    Range.check("toe.totalDeg", totalOutDeg, -MOST_DEG, MOST_DEG, "° (provisional)");
    return new ToeOverDisc(discMm, new TotalToe(totalOutDeg).mmOver(discMm));
  }

  /** Both wheels together, degrees, positive is toe-out. */
  public double totalOutDeg() {
    return TotalToe.ofMm(totalOutMm, discMm).outDeg();
  }

  /** {@code out}, {@code in} or {@code none}. */
  public String direction() {
    return totalOutMm > 0 ? "out" : totalOutMm < 0 ? "in" : "none";
  }

  @Override
  public ObjectNode json() {
    double degrees = Math.abs(totalOutDeg());
    return JsonNodeFactory.instance
        .objectNode()
        .put("schema", 1)
        .put("gauge", "toe")
        .put("discMm", discMm)
        .put("direction", direction())
        .put("totalMm", Math.abs(totalOutMm))
        .put("totalDeg", degrees)
        .put("perWheelDeg", degrees / 2);
  }

  @Override
  public List<String> lines() {
    if (totalOutMm == 0) {
      return List.of("No toe: the discs stand parallel.");
    }
    return Printed.wrapped(
        "Toe-"
            + direction()
            + " "
            + Printed.fixed(Math.abs(totalOutMm), 2)
            + " mm in all over a "
            + Printed.exact(discMm)
            + " mm disc = "
            + Printed.fixed(Math.abs(totalOutDeg()), 3)
            + "° in all, "
            + Printed.fixed(Math.abs(totalOutDeg()) / 2, 3)
            + "° a wheel: the discs stand "
            + (totalOutMm > 0 ? "wider" : "narrower")
            + " at the front than at the rear.",
        "  ");
  }
}
