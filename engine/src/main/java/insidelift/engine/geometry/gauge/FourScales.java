package insidelift.engine.geometry.gauge;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.geometry.BothSides;
import insidelift.engine.geometry.Printed;
import insidelift.engine.geometry.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What four scales show with the driver seated, beside what CRG / SSC Racing's guide of 2005 asks
 * for: 43 % in front, 50 % on the left, both fronts within 2.3 kg and both rears within 2.3 kg.
 *
 * @param frontKg left and right front, kg, 5 to 150
 * @param rearKg left and right rear, kg, 5 to 150
 */
public record FourScales(BothSides frontKg, BothSides rearKg) implements GaugeReading {

  static final double LEAST_KG = 5;
  static final double MOST_KG = 150;

  /** Share of the front axle, % (crg-2005). */
  static final double FRONT_PERCENT = 43;

  /** Share of the left wheels, % (crg-2005). */
  static final double LEFT_PERCENT = 50;

  /** Left and right of one axle further apart than this are uneven, kg (crg-2005). */
  static final double EVEN_WITHIN_KG = 2.3;

  /** A share within this is as published, %: provisional, the source names none. */
  static final double SHARE_WITHIN_PERCENT = 1;

  /** The arithmetic of decimal readings is not quite exact: 41.2 less 38.9 is a little over 2.3. */
  private static final double SAME = 1e-9;

  /** Kart and driver, kg. */
  public double totalKg() {
    return frontTotal() + rearKg.left() + rearKg.right();
  }

  private double frontTotal() {
    return frontKg.left() + frontKg.right();
  }

  /** Share of both fronts, %. */
  public double frontPercent() {
    return 100 * frontTotal() / totalKg();
  }

  /** Share of both left wheels, %. */
  public double leftPercent() {
    return 100 * (frontKg.left() + rearKg.left()) / totalKg();
  }

  /** Share of the right front and the left rear, %: 50 if sides and floor are even, untwisted. */
  public double crossPercent() {
    return 100 * (frontKg.right() + rearKg.left()) / totalKg();
  }

  @Override
  public Optional<String> note() {
    return Optional.of("four-scales");
  }

  @Override
  public ObjectNode json() {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("schema", 1).put("gauge", "scales");
    frontKg.putInto(node.putObject("frontKg"));
    rearKg.putInto(node.putObject("rearKg"));
    return node.put("totalKg", totalKg())
        .put("frontPercent", frontPercent())
        .put("leftPercent", leftPercent())
        .put("crossPercent", crossPercent())
        .put("frontDifferenceKg", frontKg.difference())
        .put("rearDifferenceKg", rearKg.difference())
        .put("frontEven", even(frontKg))
        .put("rearEven", even(rearKg))
        .put("note", "four-scales");
  }

  private static boolean even(BothSides axle) {
    return Math.abs(axle.difference()) <= EVEN_WITHIN_KG + SAME;
  }

  @Override
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.addAll(Printed.wrapped(firstLook(), "  "));
    lines.add("");
    lines.add("                         read     published (crg-2005)");
    lines.add(row("all four", Printed.fixed(totalKg(), 1) + " kg", ""));
    lines.add(row("front share", percent(frontPercent()), percent(FRONT_PERCENT)));
    lines.add(row("left share", percent(leftPercent()), percent(LEFT_PERCENT)));
    lines.add(axle("fronts", frontKg));
    lines.add(axle("rears", rearKg));
    lines.add(row("right front + left rear", percent(crossPercent()), "none: even is 50 %"));
    return List.copyOf(lines);
  }

  /** What to look at first: the fronts, then the rears, then the two shares. */
  private String firstLook() {
    List<String> looks = new ArrayList<>();
    if (!even(frontKg)) {
      looks.add(heavy("front", frontKg));
    }
    if (!even(rearKg)) {
      looks.add(heavy("rear", rearKg));
    }
    if (Math.abs(leftPercent() - LEFT_PERCENT) > SHARE_WITHIN_PERCENT + SAME) {
      looks.add("more stands on the " + (leftPercent() > LEFT_PERCENT ? "left" : "right"));
    }
    if (Math.abs(frontPercent() - FRONT_PERCENT) > SHARE_WITHIN_PERCENT + SAME) {
      looks.add(
          (frontPercent() > FRONT_PERCENT ? "more" : "less")
              + " stands on the front than is usual");
    }
    if (looks.isEmpty()) {
      return "As published within "
          + Printed.exact(EVEN_WITHIN_KG)
          + " kg an axle, and the shares within "
          + Printed.exact(SHARE_WITHIN_PERCENT)
          + " % (ours, provisional). Four scales hint, they prove nothing.";
    }
    return "Look first: " + String.join("; ", looks) + ". Four scales hint, they prove nothing.";
  }

  private static String heavy(String axle, BothSides kg) {
    Side heavier = kg.difference() > 0 ? Side.LEFT : Side.RIGHT;
    return "the "
        + heavier.word()
        + " "
        + axle
        + " carries "
        + Printed.fixed(Math.abs(kg.difference()), 1)
        + " kg more than the other";
  }

  private static String axle(String name, BothSides kg) {
    return row(
        name + " apart",
        Printed.fixed(Math.abs(kg.difference()), 1) + " kg",
        "within " + Printed.exact(EVEN_WITHIN_KG) + " kg");
  }

  private static String row(String name, String read, String published) {
    return ("  " + Printed.left(name, 24) + Printed.right(read, 9) + "  " + published)
        .stripTrailing();
  }

  private static String percent(double value) {
    return Printed.fixed(value, 1) + " %";
  }
}
