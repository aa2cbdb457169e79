package insidelift.engine.geometry.toe;

import insidelift.engine.geometry.Fields;
import insidelift.engine.geometry.Printed;
import insidelift.engine.geometry.Range;
import insidelift.engine.geometry.RefusedInputException;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A toe as a person writes it: a number, mm unless it says deg, and out or in. Signs are refused
 * because they differ in the trade.
 *
 * @param place where it was written
 * @param out the number, positive is toe-out
 * @param degrees whether it is an angle; otherwise mm
 */
record TypedToe(String place, double out, boolean degrees) {

  private static final Pattern FORM =
      Pattern.compile("(\\d{1,4}(?:[.,]\\d{1,4})?) ?(mm|deg|°)? ?(out|in)?");

  private static final Pattern SIGNED = Pattern.compile("[+-].*");

  /**
   * Reads a text such as {@code 1.5 out}, {@code 0.2 deg in} or {@code 0}.
   *
   * @throws RefusedInputException if it is anything else
   */
  static TypedToe read(Fields fields, String key) {
    String text = fields.text(key);
    String place = fields.placeOf(key);
    String quoted = "\"" + text + "\"";
    String plain = text.strip().toLowerCase(Locale.ROOT);
    if (SIGNED.matcher(plain).matches()) {
      throw new RefusedInputException(
          place, quoted + " has a sign, and signs differ in the trade: say it as in 1.5 out");
    }
    Matcher form = FORM.matcher(plain);
    if (!form.matches()) {
      throw new RefusedInputException(
          place, quoted + " is not a toe such as 1.5 out, 0.2 deg in or 0");
    }
    double number = Double.parseDouble(form.group(1).replace(',', '.'));
    if (form.group(3) == null && number != 0) {
      throw new RefusedInputException(place, quoted + " does not say which way: add out or in");
    }
    boolean degrees = form.group(2) != null && !form.group(2).equals("mm");
    return new TypedToe(place, ("in".equals(form.group(3)) ? -number : number) + 0.0, degrees);
  }

  /** The toe of one wheel. */
  SideToe side(OptionalDouble overMm) {
    check(SideToe.MOST_DEG, overMm);
    return degrees || out == 0 ? new SideToe(out) : SideToe.ofMm(out, overMm.getAsDouble());
  }

  /** The toe of both wheels together. */
  TotalToe total(OptionalDouble overMm) {
    check(TotalToe.MOST_DEG, overMm);
    return degrees || out == 0 ? new TotalToe(out) : TotalToe.ofMm(out, overMm.getAsDouble());
  }

  /** Refuses what no kart has, in the words and without the sign of whoever wrote it. */
  private void check(double mostDeg, OptionalDouble overMm) {
    if (degrees || out == 0) {
      Range.check(place, Math.abs(out), 0, mostDeg, "° (provisional)");
      return;
    }
    if (overMm.isEmpty()) {
      throw new RefusedInputException(
          ToeJob.PLACE + ".discMm",
          "is missing: mm of toe need the length that they are over, as the disc's diameter");
    }
    // Both wheels stand alike, so that each has half the angle and half the mm of a total.
    double wheels = mostDeg / SideToe.MOST_DEG;
    double most = wheels * overMm.getAsDouble() * Math.sin(Math.toRadians(SideToe.MOST_DEG));
    Range.check(
        place,
        Math.abs(out),
        0,
        most,
        "mm (" + Printed.exact(mostDeg) + "° over that length, provisional)");
  }
}
