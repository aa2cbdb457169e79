package insidelift.engine.geometry;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** How numbers and lines appear in plain text: never a negative nought, never past 80 columns. */
public final class Printed {

  private static final int COLUMNS = 80;

  private Printed() {}

  /** The shortest decimal that reads back as the number: {@code 712} rather than {@code 712.0}. */
  public static String exact(double value) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  /** The number rounded half up to so many decimals. */
  public static String fixed(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
  }

  /** The rounded number with its sign always written; nought has none. */
  public static String signed(double value, int decimals) {
    String text = fixed(value, decimals);
    boolean nought = new BigDecimal(text).signum() == 0;
    return nought || text.startsWith("-") ? text : "+" + text;
  }

  /** The rounded number, right-aligned in a column. */
  static String column(double value, int decimals, int width) {
    return right(fixed(value, decimals), width);
  }

  public static String right(String text, int width) {
    return " ".repeat(Math.max(0, width - text.length())) + text;
  }

  public static String left(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }

  /** The text broken at spaces into lines of at most 80 columns, the later ones indented. */
  public static List<String> wrapped(String text, String indent) {
    List<String> lines = new ArrayList<>();
    String margin = text.substring(0, text.length() - text.stripLeading().length());
    StringBuilder line = new StringBuilder(margin);
    String gap = "";
    for (String word : text.strip().split(" ", -1)) {
      if (!gap.isEmpty() && line.length() + gap.length() + word.length() > COLUMNS) {
        lines.add(line.toString());
        line = new StringBuilder(indent).append(word);
      } else {
        line.append(gap).append(word);
      }
      gap = " ";
    }
    lines.add(line.toString());
    return lines;
  }
}
