package insidelift.console.picture;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as pages and pictures show them: rounded half up, never a negative nought. */
public final class Figures {

  private Figures() {}

  /** The number rounded to so many decimals. */
  public static String fixed(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString();
  }

  /** Before and after as {@code 225 to 219 N}, or the one number where both round to the same. */
  public static String change(double before, double after, int decimals, String unit) {
    String from = fixed(before, decimals);
    String to = fixed(after, decimals);
    return (from.equals(to) ? from : from + " to " + to) + unit;
  }
}
