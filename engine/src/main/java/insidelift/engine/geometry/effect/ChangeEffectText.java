package insidelift.engine.geometry.effect;

import insidelift.engine.geometry.Printed;
import insidelift.engine.geometry.kart.Corner;
import insidelift.engine.geometry.plausible.Band;
import insidelift.engine.geometry.plausible.BandWords;
import insidelift.engine.geometry.plausible.ChangeBands;
import insidelift.shared.Degrees;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A change's effect in words: one small table of differences and one plain sentence, with one digit
 * and the band of each. What does not change is not printed.
 */
final class ChangeEffectText {

  private static final int LABEL = 32;
  private static final int CELL = 24;

  /** Less than this is not worth a word, mm. */
  private static final double SAME_MM = 0.05;

  private ChangeEffectText() {}

  static List<String> table(ChangeEffect effect) {
    List<String> lines = new ArrayList<>();
    StringBuilder heading =
        new StringBuilder(Printed.left("changes by (nine of ten karts)", LABEL));
    for (CornerChange change : effect.corners()) {
      heading.append(Printed.right(change.corner().name(), CELL));
    }
    lines.add(heading.toString());
    row(lines, effect, "inside rear, % of standing load", ChangeBands::rearInnerPercent);
    row(lines, effect, "inside rear lifts, g", ChangeBands::liftOffG);
    row(lines, effect, "inner front, lean to ground ° *", ChangeBands::innerLeanDeg);
    row(lines, effect, "outer front, lean to ground ° *", ChangeBands::outerLeanDeg);
    row(lines, effect, "moment at the kingpins N·m", ChangeBands::effortNm);
    if (lines.size() == 1) {
      return List.of();
    }
    lines.addAll(Printed.wrapped(still(effect), "  "));
    lines.add("* + top outboard: into the turn for the inner wheel, out of it for the outer.");
    return List.copyOf(lines);
  }

  private static void row(
      List<String> lines, ChangeEffect effect, String label, Function<ChangeBands, Band> quantity) {
    List<String> cells =
        effect.corners().stream()
            .map(change -> BandWords.difference(quantity.apply(change.bands())))
            .toList();
    if (!cells.stream().allMatch(String::isEmpty)) {
      StringBuilder line = new StringBuilder(Printed.left(label, LABEL));
      cells.forEach(cell -> line.append(Printed.right(cell.isEmpty() ? "0" : cell, CELL)));
      lines.add(line.toString());
    }
  }

  private static String still(ChangeEffect effect) {
    List<String> parts = new ArrayList<>();
    if (effect.casterDeg() != 0) {
      parts.add("the trail " + longer(effect.trailChangeMm()));
      parts.add("the wheelbase " + longer(effect.wheelbaseChangeMm()));
    }
    parts.add(toe(effect));
    String all = String.join("; ", parts);
    return Character.toUpperCase(all.charAt(0)) + all.substring(1) + ".";
  }

  private static String toe(ChangeEffect effect) {
    double out = effect.toeOutTotalMm();
    if (Math.abs(out) < SAME_MM) {
      return "toe: measure and reset";
    }
    return "toe moves "
        + (out > 0 ? "out" : "in")
        + " by about "
        + Printed.exact(Math.max(0.5, Math.round(2 * Math.abs(out)) / 2.0))
        + " mm, both wheels together over a "
        + Printed.exact(effect.arm().discMm())
        + " mm disc: reset it";
  }

  static String sentence(ChangeEffect effect) {
    List<String> parts = new ArrayList<>();
    CornerChange change = effect.corners().get(0);
    String where = "at " + change.corner().name() + " ";
    if (effect.casterDeg() != 0) {
      parts.add(where.replace("at wet", "in a wet") + insideRear(change));
      parts.add(
          "the steering gets " + (change.bands().effortNm().mid() >= 0 ? "heavier" : "lighter"));
      parts.add(
          "the trail "
              + longer(effect.trailChangeMm())
              + " and the wheelbase "
              + longer(effect.wheelbaseChangeMm()));
    }
    if (effect.camberDeg() != 0) {
      parts.add(
          (effect.casterDeg() == 0 ? where.replace("at wet", "in a wet") : "")
              + "the outer front leans "
              + intoTurn(-change.bands().outerLeanDeg().mid())
              + " into the turn and the inner "
              + intoTurn(change.bands().innerLeanDeg().mid()));
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

  /** In the wet it goes light, not up: nothing is said of lifting there. */
  private static String insideRear(CornerChange change) {
    Band percent = change.bands().rearInnerPercent();
    Band lift = change.bands().liftOffG();
    String load =
        BandWords.difference(percent).isEmpty()
            ? "the inside rear carries as much as before"
            : "the inside rear gets "
                + (percent.mid() < 0 ? "lighter by " : "heavier by ")
                + size(
                    percent,
                    (one(percent) ? " hundredth" : " hundredths") + " of what it carries standing");
    return change.corner().name().equals(Corner.WET.name()) || BandWords.difference(lift).isEmpty()
        ? load
        : load + " and lifts " + size(lift, lift.mid() < 0 ? " g earlier" : " g later");
  }

  private static boolean one(Band band) {
    return Printed.fixed(Math.abs(band.mid()), BandWords.decimals(band.mid())).equals("1");
  }

  /** One digit of the size, and its band. */
  private static String size(Band band, String unit) {
    int decimals = BandWords.decimals(band.mid());
    int sign = band.mid() < 0 ? -1 : 1;
    double least = sign < 0 ? -band.high() : band.low();
    double most = sign < 0 ? -band.low() : band.high();
    return Printed.fixed(sign * band.mid(), decimals)
        + unit
        + " ("
        + Printed.fixed(least, decimals)
        + " to "
        + Printed.fixed(most, decimals)
        + ")";
  }

  private static String longer(double mm) {
    return "gets about "
        + Printed.fixed(Math.abs(mm), BandWords.decimals(mm))
        + " mm "
        + (mm >= 0 ? "longer" : "shorter");
  }

  private static String intoTurn(double byDeg) {
    return Printed.fixed(Math.abs(byDeg), 1) + "° " + (byDeg >= 0 ? "more" : "less");
  }
}
