package insidelift.engine.logbook.entry;

import insidelift.shared.situation.Printable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** How numbers, dates and outside text appear in tables: never past their column, never raw. */
public final class Plain {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
  private static final DateTimeFormatter FULL_DAY =
      DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

  private static final int COLUMNS = 80;

  private Plain() {}

  /** The shortest decimal that reads back as the number. */
  public static String number(double value) {
    return Double.isFinite(value)
        ? BigDecimal.valueOf(value).stripTrailingZeros().toPlainString()
        : Double.toString(value);
  }

  /** The number rounded half up to so many decimals; never a negative nought. */
  public static String fixed(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
  }

  /** The date as in {@code 12 April}. */
  public static String day(LocalDate date) {
    return DAY.format(date);
  }

  /** The date as in {@code 12 April 2026}. */
  public static String fullDay(LocalDate date) {
    return FULL_DAY.format(date);
  }

  /** Outside text, safe to show, cut to so many columns and filled up to them. */
  public static String left(String text, int columns) {
    String safe = cut(text, columns);
    return safe + " ".repeat(columns - safe.codePointCount(0, safe.length()));
  }

  /** Outside text, safe to show and cut to so many columns. */
  public static String cut(String text, int columns) {
    String safe = Printable.shown(text, columns + 1);
    if (safe.codePointCount(0, safe.length()) <= columns) {
      return safe;
    }
    return safe.substring(0, safe.offsetByCodePoints(0, columns - 1)) + "~";
  }

  /** Text of our own, filled up from the left. */
  public static String right(String text, int columns) {
    return " ".repeat(Math.max(0, columns - text.length())) + text;
  }

  /** Outside text as one safe line: line ends and tabs become spaces. */
  public static String line(String text) {
    return Printable.shown(text.replace('\n', ' ').replace('\t', ' '), LogLimits.TEXT);
  }

  /** Safe text broken into lines of at most 80 columns, within a word where it must be. */
  public static List<String> wrapped(String text, String indent) {
    List<String> lines = new ArrayList<>();
    String rest = text;
    while (length(rest) > COLUMNS) {
      int most = rest.offsetByCodePoints(0, COLUMNS);
      int space = rest.lastIndexOf(' ', most);
      int end = space > indent.length() ? space : most;
      lines.add(rest.substring(0, end).stripTrailing());
      rest = indent + rest.substring(end).strip();
    }
    lines.add(rest);
    return lines;
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }
}
