package insidelift.shared.situation;

/**
 * Text from outside made safe to show: nothing in it can move a cursor, change a colour, reverse
 * the reading direction, break a line or grow over its neighbours.
 */
public final class Printable {

  /** Accents on one letter: pointed Hebrew and Vietnamese need three; a tower hides other lines. */
  private static final int MOST_ACCENTS = 4;

  private Printable() {}

  /** The text in quotation marks, its unprintable characters spelt out, shortened if long. */
  public static String quoted(String text) {
    return '"' + shown(text) + '"';
  }

  /** The text without quotation marks, its unprintable characters spelt out, shortened if long. */
  public static String shown(String text) {
    return shown(text, InputLimits.MAX_ECHO);
  }

  /** The same, shortened to so many characters. */
  public static String shown(String text, int most) {
    StringBuilder safe = new StringBuilder();
    int[] points = text.codePoints().limit(most).toArray();
    int accents = 0;
    for (int point : points) {
      accents = accent(point) ? accents + 1 : 0;
      if (printable(point) && accents <= MOST_ACCENTS) {
        safe.appendCodePoint(point);
      } else {
        safe.append("\\u{").append(Integer.toHexString(point)).append('}');
      }
    }
    return points.length < text.codePointCount(0, text.length()) ? safe + "..." : safe.toString();
  }

  private static boolean accent(int point) {
    int type = Character.getType(point);
    return type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK;
  }

  private static boolean printable(int point) {
    return switch (Character.getType(point)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> true;
    };
  }
}
