package insidelift.console.picture;

import insidelift.engine.geometry.effect.ChangeCurves;
import insidelift.engine.geometry.effect.ChangeCurves.Lean;
import insidelift.engine.geometry.effect.ChangeCurves.Lift;
import insidelift.engine.geometry.effect.ChangeEffect;
import insidelift.engine.geometry.plausible.Band;
import insidelift.engine.proof.Proof;
import insidelift.engine.units.KnownUnit;
import insidelift.shared.situation.EdgeTemperatures;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;

/** The pictures, each drawn from the numbers that the engine computed or the user measured. */
public final class TextPictures {

  private static final int SWEEP = 66;
  private static final int BAR = 52;
  private static final char BEFORE = ':';
  private static final char AFTER = '#';

  /** Every so manieth point of the sweep is drawn: 0, 5, 10 … 30 degrees. */
  private static final int DRAWN = 2;

  /** The lift-off pictures end beyond where karts tip over, g. */
  private static final double MOST_G = 2.5;

  private TextPictures() {}

  /** Lean of both front wheels to the ground as the kart steers. */
  public static TextPicture sweep(ChangeEffect effect, ChangeCurves curves) {
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
        "Steering sweep, left turn at " + Figures.fixed(curves.corner().lateralG(), 1) + " g",
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

  /** Where the inside rear lifts, the harder the kart brakes. */
  public static TextPicture liftOverBraking(ChangeEffect effect, ChangeCurves curves) {
    return lifts(
        "Braking and the inside rear, at "
            + Figures.fixed(curves.corner().steerDeg(), 0)
            + "° of steer",
        "brake g",
        " g of braking",
        1,
        1,
        curves.overBraking(),
        changed(effect));
  }

  /** Where the inside rear lifts, the further the kart is steered. */
  public static TextPicture liftOverSteer(ChangeEffect effect, ChangeCurves curves) {
    return lifts(
        "Steer and the inside rear, slowing by "
            + Figures.fixed(-curves.corner().longitudinalG(), 1)
            + " g",
        "steer °",
        "° of steer",
        0,
        DRAWN,
        curves.overSteer(),
        changed(effect));
  }

  private static TextPicture lifts(
      String title,
      String across,
      String unit,
      int decimals,
      int every,
      List<Lift> lifts,
      boolean changed) {
    List<String> lines = new ArrayList<>();
    lines.add(across + "  " + ends("0 g", "inside rear lifts", MOST_G + " g"));
    for (int i = 0; i < lifts.size(); i += every) {
      Lift lift = lifts.get(i);
      Strip strip = new Strip(SWEEP, 0, MOST_G);
      strip
          .mark(Math.min(MOST_G, lift.before().low()), '[')
          .mark(Math.min(MOST_G, lift.before().high()), ']');
      if (changed) {
        strip.mark(Math.min(MOST_G, lift.before().mid()), BEFORE);
      }
      strip.mark(Math.min(MOST_G, lift.after().mid()), AFTER);
      lines.add(String.format(Locale.ROOT, "%7s |%s|", Figures.fixed(lift.at(), decimals), strip));
    }
    lines.add("[ ] nine of ten karts that fit what is known lie between, # the middle");
    if (changed) {
      lines.add(BEFORE + " before the change, " + AFTER + " after; * two in one place");
    }
    Lift first = lifts.get(0);
    Lift last = lifts.get(lifts.size() - 1);
    return new TextPicture(
        title,
        lines,
        "With "
            + Figures.fixed(first.at(), decimals)
            + unit
            + " the inside rear lifts "
            + g(first.after())
            + ", with "
            + Figures.fixed(last.at(), decimals)
            + unit
            + " "
            + g(last.after())
            + ".");
  }

  private static String g(Band band) {
    return Double.isFinite(band.mid())
        ? "at "
            + Figures.fixed(band.mid(), 1)
            + " g (from "
            + Figures.fixed(band.low(), 1)
            + " to "
            + (Double.isFinite(band.high()) ? Figures.fixed(band.high(), 1) : "never")
            + ")"
        : "not before it tips over";
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
    String text = Figures.fixed(degrees, 0);
    return (text.startsWith("-") || text.equals("0") ? text : "+" + text) + "°";
  }
}
