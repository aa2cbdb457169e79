package insidelift.engine.geometry.gauge;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.geometry.BothSides;
import insidelift.engine.geometry.Printed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How high the inside rear wheel comes when it is raised by hand with the steering at full lock,
 * once each way. Unequal heights are a hint of a twist or of unequal fronts, no proof.
 *
 * @param heightMm height of the left rear steered fully left and of the right rear steered fully
 *     right, mm, 0 to 300
 */
public record LiftTest(BothSides heightMm) implements GaugeReading {

  static final double MOST_MM = 300;

  /** What two readings by hand differ by on a straight kart: provisional. */
  static final double EVEN_WITHIN_MM = 2;

  /** More than this is for a shop with a jig. No limit is published: provisional. */
  static final double JIG_ABOVE_MM = 5;

  /** How far apart the heights are, mm. */
  public double differenceMm() {
    return Math.abs(heightMm.difference());
  }

  /** {@code left}, {@code right} or {@code none}: the rear that comes up higher. */
  public String higher() {
    return differenceMm() <= EVEN_WITHIN_MM ? "none" : heightMm.difference() > 0 ? "left" : "right";
  }

  @Override
  public Optional<String> note() {
    return Optional.of("lift-test");
  }

  @Override
  public ObjectNode json() {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("schema", 1).put("gauge", "lift");
    heightMm.putInto(node.putObject("heightMm"));
    return node.put("differenceMm", differenceMm())
        .put("higher", higher())
        .put("jig", differenceMm() > JIG_ABOVE_MM)
        .put("note", "lift-test");
  }

  @Override
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add("Left rear, steered fully left:   " + Printed.exact(heightMm.left()) + " mm");
    lines.add("Right rear, steered fully right: " + Printed.exact(heightMm.right()) + " mm");
    lines.addAll(Printed.wrapped(verdict(), "  "));
    return List.copyOf(lines);
  }

  private String verdict() {
    if (higher().equals("none")) {
      return "Even within "
          + Printed.exact(EVEN_WITHIN_MM)
          + " mm (provisional): nothing speaks for a twist.";
    }
    String apart =
        "Uneven: the "
            + higher()
            + " rear comes up "
            + Printed.exact(differenceMm())
            + " mm higher. Repeat it; if it stays, look in the order below.";
    return differenceMm() > JIG_ABOVE_MM
        ? apart
            + " That is more than "
            + Printed.exact(JIG_ABOVE_MM)
            + " mm (provisional, nobody publishes a limit): if it still stays, ask for a jig."
        : apart;
  }
}
