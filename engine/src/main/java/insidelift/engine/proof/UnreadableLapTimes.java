package insidelift.engine.proof;

/**
 * Lap times that could not be read; the message is one sentence for the user and names the file
 * and, where there is one, the line.
 */
public final class UnreadableLapTimes extends Exception {

  private static final long serialVersionUID = 1L;

  UnreadableLapTimes(String message) {
    super(message);
  }

  static UnreadableLapTimes inFile(String file, String what) {
    return new UnreadableLapTimes(echo(file) + ": " + what + ".");
  }

  static UnreadableLapTimes inLine(String file, int line, String what) {
    return new UnreadableLapTimes(echo(file) + ", line " + line + ": " + what + ".");
  }

  /**
   * A user's text made safe to repeat on a terminal: control, format and unassigned characters
   * become question marks, and a long text is cut.
   */
  static String echo(String text) {
    StringBuilder safe = new StringBuilder();
    text.codePoints()
        .limit(LapLimits.ECHO_CHARACTERS)
        .forEach(c -> safe.appendCodePoint(printable(c) ? c : '?'));
    if (text.codePointCount(0, text.length()) > LapLimits.ECHO_CHARACTERS) {
      safe.append("...");
    }
    return safe.toString();
  }

  private static boolean printable(int c) {
    return switch (Character.getType(c)) {
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
