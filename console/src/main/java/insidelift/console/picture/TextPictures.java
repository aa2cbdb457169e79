package insidelift.console.picture;

import insidelift.engine.geometry.ChangeCurves;
import insidelift.engine.geometry.ChangeCurves.Lean;
import insidelift.engine.geometry.ChangeEffect;
import insidelift.engine.geometry.CornerChange;
import insidelift.engine.geometry.WheelLoads;
import insidelift.engine.proof.Proof;
import insidelift.engine.units.KnownUnit;
import insidelift.shared.situation.EdgeTemperatures;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;

/** The pictures, each drawn from the numbers that the engine computed or the user measured. */
public final class TextPictures {

  private static final int SWEEP = 66;
  private static final int BAR = 52;
  private static final char BEFORE = ':';
  private static final char AFTER = '#';

  /** Every so manieth point of the sweep is drawn: 0, 5, 10 … 30 degrees. */
  private static final int DRAWN = 2;

  private TextPictures() {}

  /** Lean of both front wheels to the ground as the kart steers. */
  public static TextPicture sweep(ChangeEffect effect) {
    ChangeCurves curves = ChangeCurves.of(effect);
    List<Lean> leans = curves.leans();
    double most = Math.ceil(leans.stream().flatMapToDouble(TextPictures::all).max().orElse(1));
    double least = Math.floor(leans.stream().flatMapToDouble(TextPictures::all).min().orElse(-1));
    boolean changed = changed(effect);
    List<String> lines = new ArrayList<>();
    lines.add(
        "steer °  "
            + ends(
                Figures.fixed(least, 0) + "°", "lean to the ground", Figures.fixed(most, 0) + "°"));
    for (int i = 0; i < leans.size(); i += DRAWN) {
      Lean lean = leans.get(i);
      Strip strip = new Strip(SWEEP, least, most).rule(0);
      if (changed) {
        strip.mark(lean.innerBefore(), 'i').mark(lean.outerBefore(), 'o');
      }
      strip.mark(lean.innerAfter(), 'I').mark(lean.outerAfter(), 'O');
      lines.add(String.format(Locale.ROOT, "%7s |%s|", Figures.fixed(lean.steerDeg(), 0), strip));
    }
    lines.add("I inner, O outer wheel; + top outward, into the turn for the inner wheel");
    if (changed) {
      lines.add("small letters: before the change; * two in one place");
    }
    Lean full = leans.get(leans.size() - 1);
    return new TextPicture(
        "Steering sweep, left turn at " + Figures.fixed(curves.lateralG(), 1) + " g",
        lines,
        "Steered from straight ahead to "
            + Figures.fixed(full.steerDeg(), 0)
            + "°, the inner front wheel goes from "
            + signed(leans.get(0).innerAfter())
            + " to "
            + signed(full.innerAfter())
            + " of lean and the outer from "
            + signed(leans.get(0).outerAfter())
            + " to "
            + signed(full.outerAfter())
            + (changed
                ? "; before the change they ended at "
                    + signed(full.innerBefore())
                    + " and "
                    + signed(full.outerBefore())
                    + "."
                : "."));
  }

  /** What stands on the four wheels in the slow corner. */
  public static TextPicture loads(ChangeEffect effect) {
    CornerChange change = effect.corners().get(0);
    boolean changed = changed(effect);
    List<String> lines = new ArrayList<>();
    List<String> words = new ArrayList<>();
    double most = 100 * Math.ceil(most(change) / 100);
    lines.add(" ".repeat(14) + ends(BAR, "0", "load, N", Figures.fixed(most, 0)));
    wheel(lines, words, change, "front inner", WheelLoads::frontInnerN, most, changed);
    wheel(lines, words, change, "front outer", WheelLoads::frontOuterN, most, changed);
    wheel(lines, words, change, "rear inner", WheelLoads::rearInnerN, most, changed);
    wheel(lines, words, change, "rear outer", WheelLoads::rearOuterN, most, changed);
    if (changed) {
      lines.add(BEFORE + " before   " + AFTER + " after the change");
    }
    return new TextPicture(
        "Wheel loads in a %s, %s° of steer at %s g"
            .formatted(
                change.corner().name(),
                Figures.fixed(change.corner().steerDeg(), 0),
                Figures.fixed(change.corner().lateralG(), 1)),
        lines,
        "In a left turn " + String.join(", ", words) + ".");
  }

  private static double most(CornerChange change) {
    return DoubleStream.of(
            change.before().loads().frontOuterN(),
            change.after().loads().frontOuterN(),
            change.before().loads().rearOuterN(),
            change.after().loads().rearOuterN(),
            change.before().loads().frontInnerN(),
            change.after().loads().frontInnerN(),
            change.before().loads().rearInnerN(),
            change.after().loads().rearInnerN())
        .max()
        .orElse(0);
  }

  private static void wheel(
      List<String> lines,
      List<String> words,
      CornerChange change,
      String name,
      ToDoubleFunction<WheelLoads> load,
      double most,
      boolean changed) {
    double before = load.applyAsDouble(change.before().loads());
    double after = load.applyAsDouble(change.after().loads());
    if (changed) {
      lines.add(bar(name, before, BEFORE, most));
    }
    lines.add(bar(changed ? "" : name, after, AFTER, most));
    words.add(
        "the "
            + name
            + " carries "
            + Figures.fixed(after, 0)
            + " N"
            + (changed ? " instead of " + Figures.fixed(before, 0) : ""));
  }

  private static String bar(String name, double load, char filling, double most) {
    return String.format(
        Locale.ROOT,
        "%-12s |%s| %4s",
        name,
        new Strip(BAR, 0, most).bar(load, filling),
        Figures.fixed(load, 0));
  }

  /**
   * The faces of both front tyres from edge to edge, as the driver sees them.
   *
   * @param unit the unit in which the temperatures are drawn
   */
  public static TextPicture faces(EdgeTemperatures left, EdgeTemperatures right, KnownUnit unit) {
    double[] all =
        DoubleStream.of(
                left.outer(),
                left.middle(),
                left.inner(),
                right.inner(),
                right.middle(),
                right.outer())
            .map(celsius -> KnownUnit.CELSIUS.to(unit, celsius))
            .toArray();
    String[] places = {"outer", "middle", "inner", "inner", "middle", "outer"};
    double least = DoubleStream.of(all).min().orElseThrow();
    double most = DoubleStream.of(all).max().orElseThrow();
    double from = 10 * Math.floor(least / 10 - 1);
    double to = 10 * Math.ceil(most / 10 + 0.1);
    List<String> lines = new ArrayList<>();
    lines.add(
        " ".repeat(15) + ends(BAR, Figures.fixed(from, 0), unit.symbol(), Figures.fixed(to, 0)));
    for (int i = 0; i < all.length; i++) {
      lines.add(
          String.format(
              Locale.ROOT,
              "%-6s%-7s |%s| %5s",
              i % 3 == 0 ? (i == 0 ? "left" : "right") : "",
              places[i],
              new Strip(BAR, from, to).bar(all[i], AFTER),
              Figures.fixed(all[i], 1)));
    }
    lines.add("inner is the edge nearest the seat");
    String sign = ' ' + unit.symbol();
    return new TextPicture(
        "Front tyre faces",
        lines,
        face("Left", all[0], all[1], all[2], sign)
            + "; "
            + face("right", all[5], all[4], all[3], sign)
            + ".");
  }

  private static String face(String side, double outer, double middle, double inner, String sign) {
    return "%s front tyre: outer edge %s, middle %s, inner edge %s"
        .formatted(
            side,
            Figures.fixed(outer, 1) + sign,
            Figures.fixed(middle, 1) + sign,
            Figures.fixed(inner, 1) + sign);
  }

  /** The laps before and after a change on one scale of time. */
  public static TextPicture laps(Proof proof) {
    return new TextPicture("Laps before and after", proof.stripPlot(), proof.sentence());
  }

  private static boolean changed(ChangeEffect effect) {
    return effect.camberDeg() != 0 || effect.casterDeg() != 0;
  }

  private static DoubleStream all(Lean lean) {
    return DoubleStream.of(
        lean.innerBefore(), lean.innerAfter(), lean.outerBefore(), lean.outerAfter());
  }

  private static String ends(String left, String middle, String right) {
    return ends(SWEEP, left, middle, right);
  }

  /** Words at both ends and in the middle of a line of that width. */
  private static String ends(int width, String left, String middle, String right) {
    StringBuilder line = new StringBuilder(left);
    line.append(" ".repeat(Math.max(1, (width - middle.length()) / 2 - line.length())));
    line.append(middle);
    line.append(" ".repeat(Math.max(1, width - right.length() - line.length())));
    return line.append(right).toString();
  }

  private static String signed(double degrees) {
    String text = Figures.fixed(degrees, 1);
    return (text.startsWith("-") || text.equals("0.0") ? text : "+" + text) + "°";
  }
}
