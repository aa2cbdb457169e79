package insidelift.engine.geometry.positions;

import insidelift.engine.geometry.Printed;
import insidelift.engine.geometry.Side;
import java.util.ArrayList;
import java.util.List;

/** The plain text of the answer about positions. */
final class PositionsText {

  private static final double SAME_DEG = 0.005;

  private PositionsText() {}

  static List<String> of(Positions positions) {
    List<String> lines = new ArrayList<>();
    for (PositionAdvice advice : positions.sides()) {
      if (!lines.isEmpty()) {
        lines.add("");
      }
      side(lines, advice);
    }
    lines.add("");
    if (positions.nowAssumed()) {
      lines.addAll(
          Printed.wrapped(
              "Present positions were not given: each washer is taken to be in its first.", "  "));
    }
    lines.addAll(
        Printed.wrapped(
            "Marks are not to be trusted blindly: measure both sides before and after.", "  "));
    return List.copyOf(lines);
  }

  private static void side(List<String> lines, PositionAdvice advice) {
    PositionChoice best = advice.best();
    lines.addAll(
        Printed.wrapped(
            heading(advice.side())
                + ": wanted camber "
                + degrees(advice.wanted().camberDeg())
                + ", caster "
                + degrees(advice.wanted().casterDeg())
                + "; reached camber "
                + degrees(best.camberDeg())
                + ", caster "
                + degrees(best.casterDeg())
                + ".",
            "  "));
    if (!advice.limit().isEmpty()) {
      lines.addAll(Printed.wrapped("  " + advice.limit(), "    "));
    }
    String cost = cost(advice);
    if (!cost.isEmpty()) {
      lines.addAll(Printed.wrapped("  " + cost, "    "));
    }
    for (String step : steps(advice, best)) {
      lines.addAll(Printed.wrapped("  - " + step, "    "));
    }
    if (advice.choices().size() > 1) {
      lines.add("  next best:           top           bottom    camber    caster   missed by");
      for (PositionChoice choice : advice.choices().subList(1, advice.choices().size())) {
        lines.add(
            Printed.right(choice.to().top(), 24)
                + Printed.right(choice.to().bottom(), 17)
                + Printed.right(degrees(choice.camberDeg()), 10)
                + Printed.right(degrees(choice.casterDeg()), 10)
                + Printed.right(Printed.fixed(choice.missDeg(), 2) + "°", 12));
      }
    }
  }

  /** What the lever that was to stay loses or gains. */
  private static String cost(PositionAdvice advice) {
    PositionChoice best = advice.best();
    if (advice.wanted().casterDeg() == 0 && Math.abs(best.casterDeg()) > SAME_DEG) {
      return "It costs caster: " + degrees(best.casterDeg()) + " where none was wanted.";
    }
    if (advice.wanted().camberDeg() == 0 && Math.abs(best.camberDeg()) > SAME_DEG) {
      return "It costs camber: " + degrees(best.camberDeg()) + " where none was wanted.";
    }
    return "";
  }

  /** What to do with each washer of one kingpin, as sentences. */
  static List<String> steps(PositionAdvice advice, PositionChoice choice) {
    List<String> steps = new ArrayList<>();
    step(steps, advice.side(), "Top", advice.now().top(), choice.to().top(), choice.topTurnDeg());
    step(
        steps,
        advice.side(),
        "Bottom",
        advice.now().bottom(),
        choice.to().bottom(),
        choice.bottomTurnDeg());
    if (steps.isEmpty()) {
      steps.add("Leave both washers where they are.");
    }
    return steps;
  }

  private static void step(
      List<String> steps, Side side, String washer, String from, String to, double turnDeg) {
    if (from.equals(to)) {
      return;
    }
    String turn =
        turnDeg == 0
            ? ""
            : ": "
                + Printed.fixed(Math.abs(turnDeg), 0)
                + "° "
                + side.turning(turnDeg)
                + " seen from above";
    steps.add(washer + " washer from position " + from + " to " + to + turn + ".");
  }

  private static String heading(Side side) {
    return side == Side.LEFT ? "Left" : "Right";
  }

  private static String degrees(double value) {
    return Printed.signed(value, 2) + "°";
  }
}
