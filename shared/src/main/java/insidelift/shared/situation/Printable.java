package insidelift.shared.situation;

/**
 * Text from outside made safe to show: nothing in it can move a cursor, change a colour, reverse
 * the reading direction or break a line.
 */
public final class Printable {

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
    for (int point : points) {
      if (printable(point)) {
        safe.appendCodePoint(point);
      } else {
        safe.append("\\u{").append(Integer.toHexString(point)).append('}');
      }
    }
    return points.length < text.codePointCount(0, text.length()) ? safe + "..." : safe.toString();
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
