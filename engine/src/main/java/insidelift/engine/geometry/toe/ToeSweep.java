package insidelift.engine.geometry.toe;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.geometry.BothSides;
import insidelift.engine.geometry.Printed;
import insidelift.engine.geometry.Range;
import insidelift.engine.geometry.RefusedInputException;
import insidelift.engine.geometry.Side;
import java.util.ArrayList;
import java.util.List;

/**
 * The steering turned fully each way: how far the beam of each wheel reaches along a tape when the
 * kart is steered to that wheel's side. Unequal rods make one wheel turn farther. Both rods are
 * changed by equal and opposite amounts, so that total toe stays.
 *
 * <p>Assumed: the column turns as far to the left as to the right, both arms are alike, and both
 * tapes stand square to a beam straight ahead, at the same distance, counted from where that beam
 * falls. Then each wheel's angle is atan(reading / distance), and half the difference of both is
 * what each wheel gives or takes (derived). On a typical kart one such correction leaves less than
 * a twentieth of the difference.
 *
 * @param beamMm from a wheel's kingpin to its tape, mm, 100 to 5000
 * @param farthestMm the farthest point on each side's tape, mm, 0 to 5000
 */
record ToeSweep(double beamMm, BothSides farthestMm, ToeRods rods) implements ToeTask {

  /** What a tape can be read to, both sides: provisional. */
  static final double EQUAL_WITHIN_MM = 1;

  ToeSweep {
    Range.check(ToeJob.PLACE + ".sweep.beamMm", beamMm, 100, 5000, "mm (provisional)");
    double apart =
        Math.abs(angleDeg(farthestMm.left(), beamMm) - angleDeg(farthestMm.right(), beamMm));
    if (apart > SideToe.MOST_DEG) {
      throw new RefusedInputException(
          ToeJob.PLACE + ".sweep",
          "left and right are "
              + Printed.fixed(apart, 1)
              + "° apart: no rod makes more than "
              + Printed.exact(SideToe.MOST_DEG)
              + "° (provisional), so read again");
    }
  }

  private static double angleDeg(double farthestMm, double beamMm) {
    return Math.toDegrees(Math.atan(farthestMm / beamMm));
  }

  /** Whether the readings are as equal as a tape can tell. */
  boolean even() {
    return Math.abs(farthestMm.difference()) <= EQUAL_WITHIN_MM;
  }

  /** What one wheel has to gain: the one that turns farther closes, the other one opens. */
  SideToe gained(Side side) {
    double half = (angleDeg(farthestMm.right(), beamMm) - angleDeg(farthestMm.left(), beamMm)) / 2;
    return new SideToe(even() ? 0 : side == Side.LEFT ? half : -half);
  }

  /** How much longer the rod of one wheel has to be, mm, negative for shorter. */
  double longerMm(Side side) {
    return rods.rod().longerMm(gained(side));
  }

  @Override
  public ObjectNode json() {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    ObjectNode sweep = node.putObject("sweep").put("beamMm", beamMm);
    farthestMm.putInto(sweep.putObject("farthestMm"));
    sweep.put("even", even());
    for (Side side : Side.values()) {
      rods.put(node.putObject(side.word()), longerMm(side));
    }
    rods.put(node.putObject("rod"));
    return node;
  }

  @Override
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.addAll(
        Printed.wrapped(
            "Sweep: steered fully left the left beam reaches "
                + Printed.exact(farthestMm.left())
                + " mm, steered fully right the right one "
                + Printed.exact(farthestMm.right())
                + " mm, with the tapes "
                + Printed.exact(beamMm)
                + " mm away.",
            "  "));
    if (even()) {
      lines.addAll(
          Printed.wrapped(
              "Even within "
                  + Printed.exact(EQUAL_WITHIN_MM)
                  + " mm (provisional): leave the rods as they are, and go on to toe.",
              "  "));
      return List.copyOf(lines);
    }
    Side farther = farthestMm.difference() > 0 ? Side.LEFT : Side.RIGHT;
    lines.addAll(
        Printed.wrapped(
            "The "
                + farther.word()
                + " wheel turns "
                + Printed.fixed(2 * Math.abs(gained(farther).outDeg()), 2)
                + "° farther. Toe in all stays: both rods take half, one each way.",
            "  "));
    lines.add("");
    lines.addAll(
        rods.lines(
            longerMm(Side.LEFT),
            longerMm(Side.RIGHT),
            "Centre the steering again, sweep again, and only then measure toe."));
    lines.addAll(
        Printed.wrapped(
            "Assumed: both locks are reached alike, the arms are alike, and both tapes are at the"
                + " same distance and count from where a beam straight ahead falls. If not, put"
                + " that right first: the rods are not to blame.",
            "  "));
    return List.copyOf(lines);
  }
}
