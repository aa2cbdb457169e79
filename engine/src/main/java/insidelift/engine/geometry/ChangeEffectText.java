package insidelift.engine.geometry;

import insidelift.shared.Degrees;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** A change's effect in words: one small table and one plain sentence. */
final class ChangeEffectText {

  private static final int LABEL = 32;
  private static final int CELL = 24;

  /** Less than this is not worth a word, mm. */
  private static final double SAME_MM = 0.05;

  private ChangeEffectText() {}

  static List<String> table(ChangeEffect effect) {
    List<String> lines = new ArrayList<>();
    StringBuilder heading = new StringBuilder(Printed.left("before -> after", LABEL));
    for (CornerChange change : effect.corners()) {
      Corner corner = change.corner();
      heading.append(
          Printed.right(
              corner.name().replace(" corner", "")
                  + " "
                  + Printed.fixed(corner.steerDeg(), 0)
                  + "°, "
                  + Printed.fixed(corner.lateralG(), 1)
                  + " g",
              CELL));
    }
    lines.add(heading.toString());
    row(lines, effect, "inner front, lean to ground ° *", signed(CornerState::innerLeanDeg));
    row(lines, effect, "outer front, lean to ground ° *", signed(CornerState::outerLeanDeg));
    row(lines, effect, "inner front, load N", whole(s -> s.loads().frontInnerN()));
    row(lines, effect, "outer front, load N", whole(s -> s.loads().frontOuterN()));
    row(lines, effect, "inside rear, load N", whole(s -> s.loads().rearInnerN()));
    row(lines, effect, "inside rear, lift mm", tenths(s -> s.loads().rearInnerLiftMm()));
    cells(lines, effect, "inside rear lifts at, g", ChangeEffectText::liftOff);
    row(lines, effect, "moment at the kingpins N·m", tenths(s -> s.effort().totalNm()));
    lines.addAll(Printed.wrapped(still(effect), "  "));
    lines.add("* + top outboard: into the turn for the inner wheel, out of it for the outer.");
    return List.copyOf(lines);
  }

  private static Function<CornerState, String> signed(ToDoubleFunction<CornerState> quantity) {
    return state -> Printed.signed(quantity.applyAsDouble(state), 2);
  }

  private static Function<CornerState, String> whole(ToDoubleFunction<CornerState> quantity) {
    return state -> Printed.fixed(quantity.applyAsDouble(state), 0);
  }

  private static Function<CornerState, String> tenths(ToDoubleFunction<CornerState> quantity) {
    return state -> Printed.fixed(quantity.applyAsDouble(state), 1);
  }

  private static void row(
      List<String> lines,
      ChangeEffect effect,
      String label,
      Function<CornerState, String> quantity) {
    cells(
        lines,
        effect,
        label,
        change -> quantity.apply(change.before()) + " -> " + quantity.apply(change.after()));
  }

  private static void cells(
      List<String> lines,
      ChangeEffect effect,
      String label,
      Function<CornerChange, String> content) {
    StringBuilder line = new StringBuilder(Printed.left(label, LABEL));
    effect.corners().forEach(change -> line.append(Printed.right(content.apply(change), CELL)));
    lines.add(line.toString());
  }

  private static String liftOff(CornerChange change) {
    return liftOff(change.liftOffBefore()) + " -> " + liftOff(change.liftOffAfter());
  }

  private static String liftOff(OptionalDouble g) {
    return g.isPresent() ? Printed.fixed(g.getAsDouble(), 2) : "never";
  }

  private static String still(ChangeEffect effect) {
    return "Trail "
        + Printed.fixed(effect.before().trailMm(), 1)
        + " -> "
        + Printed.fixed(effect.after().trailMm(), 1)
        + " mm; wheelbase "
        + Printed.signed(effect.wheelbaseChangeMm(), 1)
        + " mm; "
        + toe(effect)
        + ".";
  }

  private static String toe(ChangeEffect effect) {
    double out = effect.toeOutTotalMm();
    if (Math.abs(out) < SAME_MM) {
      return "toe: measure and reset";
    }
    return "toe moves "
        + (out > 0 ? "out" : "in")
        + " by "
        + Printed.fixed(Math.abs(out), 1)
        + " mm, both wheels together over a "
        + Printed.exact(effect.arm().discMm())
        + " mm disc: reset it";
  }

  static String sentence(ChangeEffect effect) {
    List<String> parts = new ArrayList<>();
    CornerChange change = effect.corners().get(0);
    String where = "in a " + change.corner().name() + " ";
    if (effect.casterDeg() != 0) {
      parts.add(where + insideRear(change));
      parts.add("the steering gets " + effort(change));
      parts.add(
          "the trail "
              + longer(effect.trailChangeMm())
              + " and the wheelbase "
              + longer(effect.wheelbaseChangeMm()));
    }
    if (effect.camberDeg() != 0) {
      parts.add(
          (effect.casterDeg() == 0 ? where : "")
              + "the outer front leans "
              + intoTurn(-change.after().outerLeanDeg(), -change.before().outerLeanDeg())
              + " and the inner "
              + intoTurn(change.after().innerLeanDeg(), change.before().innerLeanDeg()));
      parts.add(toe(effect));
    }
    if (parts.isEmpty()) {
      return "Nothing is changed.";
    }
    return levers(effect) + ": " + String.join("; ", parts) + ".";
  }

  private static String levers(ChangeEffect effect) {
    List<String> levers = new ArrayList<>();
    if (effect.camberDeg() != 0) {
      levers.add("Camber " + Degrees.of(effect.camberDeg()).signed());
    }
    if (effect.casterDeg() != 0) {
      levers.add(
          (levers.isEmpty() ? "Caster " : "caster ") + Degrees.of(effect.casterDeg()).signed());
    }
    return String.join(" and ", levers);
  }

  private static String insideRear(CornerChange change) {
    double before = change.before().loads().rearInnerN();
    double after = change.after().loads().rearInnerN();
    if (before == 0 && after == 0) {
      return "the inside rear is "
          + Printed.fixed(change.after().loads().rearInnerLiftMm(), 1)
          + " mm off the ground instead of "
          + Printed.fixed(change.before().loads().rearInnerLiftMm(), 1);
    }
    String load =
        "the inside rear carries "
            + Printed.fixed(after, 0)
            + " N instead of "
            + Printed.fixed(before, 0);
    return change.liftOffBefore().isPresent() && change.liftOffAfter().isPresent()
        ? load
            + " and lifts at "
            + liftOff(change.liftOffAfter())
            + " g instead of "
            + liftOff(change.liftOffBefore())
        : load;
  }

  private static String effort(CornerChange change) {
    double by = change.effortChangeNm();
    return (by >= 0 ? "heavier" : "lighter")
        + " by "
        + Printed.fixed(Math.abs(by), 1)
        + " N·m at the kingpins";
  }

  private static String longer(double mm) {
    return "gets " + Printed.fixed(Math.abs(mm), 1) + " mm " + (mm >= 0 ? "longer" : "shorter");
  }

  private static String intoTurn(double after, double before) {
    return Printed.fixed(after, 2) + "° into the turn instead of " + Printed.fixed(before, 2) + "°";
  }
}
