package insidelift.engine.geometry.effect;

import insidelift.engine.geometry.Printed;
import insidelift.engine.geometry.kart.Dimension;
import insidelift.engine.geometry.kart.KartGeometry;
import insidelift.engine.geometry.plausible.BandWords;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A change drawn in plain ASCII: camber as the left front wheel seen from the front, caster as its
 * kingpin seen from the left. Both are to scale, across and up, and each drawing names its scales:
 * a lean of half a degree would not show if both were the same.
 *
 * @param before the kart as it is
 * @param after the kart as changed
 */
public record ChangeDrawing(KartGeometry before, KartGeometry after) {

  private static final char PLUMB = '|';
  private static final char BEFORE = ':';
  private static final char AFTER = '#';
  private static final char BOTH = '@';

  private static final int ROWS = 12;
  private static final int WIDEST = 64;

  /** Columns that the change must be apart at the top to be seen. */
  private static final double VISIBLE = 2;

  /** Millimetres a column, the coarsest first. */
  private static final double[] COLUMN_MM = {10, 5, 2, 1, 0.5, 0.25};

  /** The wheel's middle plane seen from the front, before and after; empty if camber stays. */
  public List<String> frontView() {
    double camberBefore = Math.tan(before.radians(Dimension.CAMBER));
    double camberAfter = Math.tan(after.radians(Dimension.CAMBER));
    if (camberBefore == camberAfter) {
      return List.of();
    }
    List<String> lines = new ArrayList<>();
    lines.add("Front view, left wheel seen from the front (the right one is its mirror image)");
    draw(lines, h -> h * camberBefore, h -> h * camberAfter, "inboard", "outboard");
    return List.copyOf(lines);
  }

  /** The kingpin seen from the left, before and after; empty if caster stays. */
  public List<String> sideView() {
    double casterBefore = Math.tan(before.radians(Dimension.CASTER));
    double casterAfter = Math.tan(after.radians(Dimension.CASTER));
    if (casterBefore == casterAfter) {
      return List.of();
    }
    double hub = before.value(Dimension.WHEEL_RADIUS);
    List<String> lines = new ArrayList<>();
    lines.add("Side view, kingpin of the left wheel seen from the left, down to the ground");
    draw(lines, h -> (h - hub) * casterBefore, h -> (h - hub) * casterAfter, "forward", "rearward");
    return List.copyOf(lines);
  }

  /** Both views, as far as they show a change, and the sentence. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>(frontView());
    if (!lines.isEmpty() && !sideView().isEmpty()) {
      lines.add("");
    }
    lines.addAll(sideView());
    lines.addAll(Printed.wrapped(sentence(), "  "));
    return List.copyOf(lines);
  }

  /** What the drawing shows, for a reader who cannot see it. */
  public String sentence() {
    double height = 2 * before.value(Dimension.WHEEL_RADIUS);
    List<String> parts = new ArrayList<>();
    if (!frontView().isEmpty()) {
      double moved =
          height
              * (Math.tan(after.radians(Dimension.CAMBER))
                  - Math.tan(before.radians(Dimension.CAMBER)));
      parts.add(
          "camber "
              + moved(Dimension.CAMBER)
              + ", so the top of each front wheel moves about "
              + Printed.fixed(Math.abs(moved), BandWords.decimals(moved))
              + " mm "
              + (moved > 0 ? "outboard" : "inboard"));
    }
    if (!sideView().isEmpty()) {
      double longer = after.trailMm() - before.trailMm();
      parts.add(
          "caster "
              + moved(Dimension.CASTER)
              + ", so the kingpin axis meets the ground about "
              + Printed.fixed(Math.abs(longer), BandWords.decimals(longer))
              + " mm further "
              + (longer > 0 ? "ahead of" : "back to")
              + " the tyre");
    }
    return parts.isEmpty() ? "Nothing moves." : "In words: " + String.join("; ", parts) + ".";
  }

  /** From where to where of an angle that was measured, else by how much. */
  private String moved(Dimension angle) {
    double was = before.value(angle);
    double is = after.value(angle);
    return before.isTypical(angle)
        ? "moves by " + Printed.signed(is - was, 1) + " deg"
        : "goes from " + Printed.signed(was, 1) + " to " + Printed.signed(is, 1) + " deg";
  }

  private void draw(
      List<String> lines,
      DoubleUnaryOperator old,
      DoubleUnaryOperator changed,
      String leftWord,
      String rightWord) {
    double height = 2 * before.value(Dimension.WHEEL_RADIUS);
    double columnMm = columnMm(height, old, changed);
    double least = Math.min(0, extreme(height, old, changed, -1));
    int width = columns(least, height, old, changed, columnMm);
    int margin = (WIDEST - width) / 2;
    for (int row = ROWS; row >= 0; row--) {
      double h = height * row / ROWS;
      char[] line = " ".repeat(margin + width).toCharArray();
      line[margin + column(0, least, columnMm)] = PLUMB;
      int beforeAt = margin + column(old.applyAsDouble(h), least, columnMm);
      int afterAt = margin + column(changed.applyAsDouble(h), least, columnMm);
      line[beforeAt] = BEFORE;
      line[afterAt] = beforeAt == afterAt ? BOTH : AFTER;
      String drawn = new String(line).stripTrailing();
      lines.add("  " + (row == ROWS ? labelled(drawn, leftWord, rightWord) : drawn));
    }
    lines.add("  " + "-".repeat(WIDEST) + " ground");
    lines.add(BEFORE + " before   " + AFTER + " after   " + BOTH + " both   " + PLUMB + " plumb");
    double rowMm = height / ROWS;
    lines.add(
        "1 column = "
            + Printed.exact(columnMm)
            + " mm across, 1 row = "
            + Printed.fixed(rowMm, 1)
            + " mm up");
  }

  /** The top row carries the directions at both ends. */
  private static String labelled(String drawn, String leftWord, String rightWord) {
    String left = "<- " + leftWord;
    String right = rightWord + " ->";
    String line = Printed.left(drawn, WIDEST);
    boolean free = line.substring(0, left.length()).isBlank();
    String withLeft = free ? left + line.substring(left.length()) : line;
    int at = WIDEST - right.length();
    return withLeft.substring(at).isBlank()
        ? withLeft.substring(0, at) + right
        : withLeft + " " + right;
  }

  /** The coarsest column in which the change shows, unless the drawing would get too wide. */
  private static double columnMm(
      double height, DoubleUnaryOperator old, DoubleUnaryOperator changed) {
    double apart = Math.abs(changed.applyAsDouble(height) - old.applyAsDouble(height));
    double least = Math.min(0, extreme(height, old, changed, -1));
    double chosen = COLUMN_MM[0];
    for (double columnMm : COLUMN_MM) {
      if (columns(least, height, old, changed, columnMm) > WIDEST) {
        break;
      }
      chosen = columnMm;
      if (apart / columnMm >= VISIBLE) {
        break;
      }
    }
    return chosen;
  }

  private static int columns(
      double least,
      double height,
      DoubleUnaryOperator old,
      DoubleUnaryOperator changed,
      double columnMm) {
    return column(Math.max(0, extreme(height, old, changed, 1)), least, columnMm) + 1;
  }

  /** The furthest either line reaches to one side; both are straight, so at an end. */
  private static double extreme(
      double height, DoubleUnaryOperator old, DoubleUnaryOperator changed, int sign) {
    double most = Double.NEGATIVE_INFINITY;
    for (double h : new double[] {0, height}) {
      most = Math.max(most, sign * old.applyAsDouble(h));
      most = Math.max(most, sign * changed.applyAsDouble(h));
    }
    return sign * most;
  }

  private static int column(double mm, double least, double columnMm) {
    return (int) Math.round((mm - least) / columnMm);
  }
}
