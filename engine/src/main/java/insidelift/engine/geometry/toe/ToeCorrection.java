package insidelift.engine.geometry.toe;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.geometry.Printed;
import insidelift.engine.geometry.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * From the toe that was read to the toe that is wanted, rod by rod. The steering is held straight,
 * so each rod moves its own wheel only.
 *
 * @param left toe of the left wheel, or half of what was read of both
 * @param right toe of the right wheel, or half of what was read of both
 * @param apart whether each wheel was read by itself
 * @param wanted toe wanted of each wheel
 * @param ours whether it is our own starting point, since nobody said what is wanted
 * @param overMm the length that mm are over; none if all toe was given in degrees
 * @param rods the two tie-rods
 */
record ToeCorrection(
    SideToe left,
    SideToe right,
    boolean apart,
    SideToe wanted,
    boolean ours,
    OptionalDouble overMm,
    ToeRods rods)
    implements ToeTask {

  private SideToe now(Side side) {
    return side == Side.LEFT ? left : right;
  }

  /** How much longer the rod of one wheel has to be, mm, negative for shorter. */
  double longerMm(Side side) {
    return rods.rod().longerMm(now(side).upTo(wanted));
  }

  @Override
  public ObjectNode json() {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("readApart", apart);
    for (Side side : Side.values()) {
      ObjectNode wheel = node.putObject(side.word());
      put(wheel, now(side).outDeg(), mm(now(side)));
      rods.put(wheel, longerMm(side));
    }
    TotalToe total = TotalToe.of(left, right);
    put(node.putObject("total"), total.outDeg(), mm(total));
    put(node.putObject("wantedPerSide").put("provisional", ours), wanted.outDeg(), mm(wanted));
    put(node.putObject("wantedTotal"), wanted.doubled().outDeg(), mm(wanted.doubled()));
    rods.put(node.putObject("rod"));
    return node;
  }

  private static void put(ObjectNode node, double outDeg, OptionalDouble outMm) {
    node.put("direction", direction(outDeg)).put("deg", Math.abs(outDeg));
    outMm.ifPresent(mm -> node.put("mm", Math.abs(mm)));
  }

  private OptionalDouble mm(SideToe toe) {
    return overMm.isPresent()
        ? OptionalDouble.of(toe.mmOver(overMm.getAsDouble()))
        : OptionalDouble.empty();
  }

  private OptionalDouble mm(TotalToe toe) {
    return overMm.isPresent()
        ? OptionalDouble.of(toe.mmOver(overMm.getAsDouble()))
        : OptionalDouble.empty();
  }

  @Override
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        overMm.isPresent()
            ? "Toe over " + Printed.exact(overMm.getAsDouble()) + " mm"
            : "Toe in degrees");
    if (apart) {
      for (Side side : Side.values()) {
        lines.add(row(side.word() + " wheel now", told(now(side))));
      }
    }
    lines.add(row("both together now", told(TotalToe.of(left, right))));
    lines.add(row("wanted, a side", told(wanted) + (ours ? ", on the stand (provisional)" : "")));
    lines.add(row("wanted, together", told(wanted.doubled())));
    lines.add("");
    lines.addAll(
        rods.lines(
            longerMm(Side.LEFT),
            longerMm(Side.RIGHT),
            apart
                ? ""
                : "Only the total was read, so both rods share it: sweep the steering first."));
    lines.addAll(flat());
    return List.copyOf(lines);
  }

  /** What one flat does: it shows how finely a rod can be set at all. */
  private List<String> flat() {
    OptionalDouble flat = rods.rod().degPerFlat();
    if (flat.isEmpty()) {
      return List.of();
    }
    SideToe toe = new SideToe(flat.getAsDouble());
    String mm = mm(toe).isPresent() ? Printed.fixed(mm(toe).getAsDouble(), 2) + " mm a side, " : "";
    return Printed.wrapped(
        "One flat moves its wheel by " + mm + Printed.fixed(toe.outDeg(), 2) + "°.", "  ");
  }

  private String told(SideToe toe) {
    return told(toe.outDeg(), mm(toe));
  }

  private String told(TotalToe toe) {
    return told(toe.outDeg(), mm(toe));
  }

  private static String told(double outDeg, OptionalDouble outMm) {
    String way = direction(outDeg);
    if (way.equals("none")) {
      return "none";
    }
    String degrees = Printed.fixed(Math.abs(outDeg), 2) + "°";
    return outMm.isPresent()
        ? Printed.fixed(Math.abs(outMm.getAsDouble()), 2) + " mm " + way + " (" + degrees + ")"
        : degrees + " " + way;
  }

  private static String row(String name, String value) {
    return "  " + Printed.left(name + ":", 20) + value;
  }

  /** {@code out}, {@code in} or {@code none}: less than the noise of arithmetic is none. */
  private static String direction(double outDeg) {
    return Math.abs(outDeg) < 1e-9 ? "none" : outDeg > 0 ? "out" : "in";
  }
}
