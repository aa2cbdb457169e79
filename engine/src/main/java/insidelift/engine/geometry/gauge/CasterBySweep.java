package insidelift.engine.geometry.gauge;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.geometry.BothSides;
import insidelift.engine.geometry.Printed;
import insidelift.engine.geometry.Range;
import java.util.ArrayList;
import java.util.List;

/**
 * Caster from camber readings with the wheels turned by the same angle left and right: caster =
 * atan(tan(Δ/2) / sin(steer)), Δ the wheel's camber as inner wheel less its camber as outer wheel
 * and the steer that of the wheel itself seen from above (derived; within 0.05° for caster 5 to 18°
 * and kingpin inclination 0 to 12°).
 *
 * @param steerDeg each wheel's angle either way, seen from above, degrees, 5 to 35
 * @param turnedLeftDeg camber of both wheels with each turned left, degrees
 * @param turnedRightDeg camber of both wheels with each turned right, degrees
 */
public record CasterBySweep(double steerDeg, BothSides turnedLeftDeg, BothSides turnedRightDeg)
    implements GaugeReading {

  static final double MOST_CAMBER_DEG = 30;

  /** A sweep far enough to tell and near enough for a kart's lock. */
  public CasterBySweep {
    Range.check("sweep.steerDeg", steerDeg, 5, 35, "° (provisional)");
  }

  /** Caster of each side, degrees. */
  public BothSides casterDeg() {
    // Turned left, the left wheel is the inner one; turned right, the right wheel.
    return new BothSides(
        casterDeg(turnedLeftDeg.left() - turnedRightDeg.left()),
        casterDeg(turnedRightDeg.right() - turnedLeftDeg.right()));
  }

  private double casterDeg(double camberSweepDeg) {
    return Math.toDegrees(
            Math.atan(
                Math.tan(Math.toRadians(camberSweepDeg / 2)) / Math.sin(Math.toRadians(steerDeg))))
        + 0.0;
  }

  @Override
  public ObjectNode json() {
    BothSides caster = casterDeg();
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("schema", 1).put("gauge", "sweep").put("steerDeg", steerDeg);
    turnedLeftDeg.putInto(node.putObject("turnedLeftDeg"));
    turnedRightDeg.putInto(node.putObject("turnedRightDeg"));
    caster.putInto(node.putObject("casterDeg"));
    node.put("differenceDeg", caster.difference()).put("differs", caster.anglesDiffer());
    return node;
  }

  @Override
  public List<String> lines() {
    BothSides caster = casterDeg();
    List<String> lines = new ArrayList<>();
    lines.addAll(
        Printed.wrapped(
            "Each wheel turned "
                + Printed.exact(steerDeg)
                + "° left and right, seen from above: caster left "
                + Printed.fixed(caster.left(), 2)
                + "°, right "
                + Printed.fixed(caster.right(), 2)
                + "°.",
            "  "));
    String complaint = caster.complaint("caster");
    if (!complaint.isEmpty()) {
      lines.addAll(Printed.wrapped(complaint, "  "));
    }
    return List.copyOf(lines);
  }
}
