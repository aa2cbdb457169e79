package insidelift.engine.geometry.gauge;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.geometry.BothSides;
import insidelift.engine.geometry.Printed;
import insidelift.engine.geometry.Range;
import insidelift.engine.geometry.RefusedInputException;
import insidelift.engine.geometry.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Camber read with a laser along each stub axle and a board across the kart. The line on the board
 * is at the height of the stub axle; each reading is that of the wheel that emits the beam. Offset
 * and angle: offset = distance · tan(camber) (derived).
 *
 * @param beam where the beams point
 * @param distanceMm from the laser to the board, mm, 100 to 5000
 * @param dotMm dots above the line, mm, negative below
 * @param camberDeg camber, degrees, positive with the top outboard
 * @param target the readings after an advised change
 */
public record CamberByLaser(
    Beam beam,
    double distanceMm,
    BothSides dotMm,
    BothSides camberDeg,
    Optional<CamberByLaser> target)
    implements GaugeReading {

  static final double MOST_CAMBER_DEG = 10;
  private static final String UNIT = "° (provisional)";
  private static final double SAME_MM = 0.05;

  /** A laser on a board far or near enough to be read. */
  public CamberByLaser {
    Range.check("laser.distanceMm", distanceMm, 100, 5000, "mm (provisional)");
    check("left", camberDeg.left());
    check("right", camberDeg.right());
  }

  private static void check(String side, double camber) {
    Range.check("laser." + side, camber, -MOST_CAMBER_DEG, MOST_CAMBER_DEG, UNIT);
  }

  /**
   * Camber from dots.
   *
   * @throws RefusedInputException if the distance is outside 100 to 5000 mm or a camber outside
   *     ±10°
   */
  public static CamberByLaser ofDots(Beam beam, double distanceMm, BothSides dotMm) {
    return new CamberByLaser(
        beam,
        distanceMm,
        dotMm,
        new BothSides(
            beam.camberDeg(dotMm.left(), distanceMm), beam.camberDeg(dotMm.right(), distanceMm)),
        Optional.empty());
  }

  /**
   * Dots from camber.
   *
   * @throws RefusedInputException as from dots
   */
  public static CamberByLaser ofCamber(Beam beam, double distanceMm, BothSides camberDeg) {
    return new CamberByLaser(
        beam,
        distanceMm,
        new BothSides(
            beam.dotMm(camberDeg.left(), distanceMm), beam.dotMm(camberDeg.right(), distanceMm)),
        camberDeg,
        Optional.empty());
  }

  /**
   * The same readings with those to aim at: the middle of both sides and the change, so that they
   * end up equal.
   *
   * @param changeDeg advised change of camber on both sides, degrees
   * @throws RefusedInputException if a camber would leave ±10°
   */
  public CamberByLaser withTarget(double changeDeg) {
    return new CamberByLaser(
        beam,
        distanceMm,
        dotMm,
        camberDeg,
        Optional.of(ofCamber(beam, distanceMm, camberDeg.middlePlus(changeDeg))));
  }

  @Override
  public ObjectNode json() {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("schema", 1).put("gauge", "laser");
    node.put("beam", beam.word()).put("distanceMm", distanceMm);
    dotMm.putInto(node.putObject("dotMm"));
    camberDeg.putInto(node.putObject("camberDeg"));
    node.put("differenceDeg", camberDeg.difference()).put("differs", camberDeg.anglesDiffer());
    target.ifPresent(
        aim -> {
          ObjectNode targetNode = node.putObject("target");
          aim.dotMm.putInto(targetNode.putObject("dotMm"));
          aim.camberDeg.putInto(targetNode.putObject("camberDeg"));
          targetNode.put("sentence", aim.sentence());
        });
    return node;
  }

  @Override
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    String rule =
        beam == Beam.INBOARD
            ? "Beam inboard, across the kart: above the line is positive camber of the emitting"
                + " wheel."
            : "Beam outboard, away from the kart: below the line is positive camber of the"
                + " emitting wheel.";
    lines.addAll(Printed.wrapped(rule, "  "));
    for (Side side : Side.values()) {
      lines.add(
          Printed.left(side.word() + ":", 7)
              + dot(dotMm.of(side))
              + ", camber "
              + Printed.signed(camberDeg.of(side), 2)
              + "°");
    }
    String complaint = camberDeg.complaint("camber");
    if (!complaint.isEmpty()) {
      lines.addAll(Printed.wrapped(complaint, "  "));
    }
    target.ifPresent(aim -> lines.addAll(Printed.wrapped("Aim at: " + aim.sentence() + ".", "  ")));
    return List.copyOf(lines);
  }

  /** Where the dots are, as in "dot 8.7 mm above the line on a board 1.0 m away, both sides". */
  public String sentence() {
    String board = " on a board " + Printed.fixed(distanceMm / 1000, 1) + " m away";
    return Math.abs(dotMm.difference()) < SAME_MM
        ? dot(dotMm.left()) + board + ", both sides"
        : "left " + dot(dotMm.left()) + ", right " + dot(dotMm.right()) + board;
  }

  private static String dot(double mm) {
    if (Math.abs(mm) < SAME_MM) {
      return "dot on the line";
    }
    return "dot "
        + Printed.fixed(Math.abs(mm), 1)
        + " mm "
        + (mm > 0 ? "above" : "below")
        + " the line";
  }
}
