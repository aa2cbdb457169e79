package insidelift.console.fuzz;

import java.util.List;

/** What may reach a screen: nothing that moves a cursor, turns the reading direction or floods. */
final class Shown {

  /** Characters of a message: a place, a reason and a list of all keys that are known. */
  private static final int MESSAGE = 4_000;

  /** Lines of one answer: the longest is the table of a day of 200 runs with all its notes. */
  private static final int LINES = 5_000;

  private Shown() {}

  /** A message of one line. */
  static void message(Throwable refusal) {
    String message = String.valueOf(refusal.getMessage());
    if (refusal.getMessage() == null || message.isBlank()) {
      throw new AssertionError("no message", refusal);
    }
    if (message.length() > MESSAGE) {
      throw new AssertionError("a message of " + message.length() + " characters", refusal);
    }
    line(message);
  }

  /** Lines that are printed as they stand. */
  static void lines(List<String> lines) {
    if (lines.size() > LINES) {
      throw new AssertionError(lines.size() + " lines");
    }
    lines.forEach(Shown::line);
  }

  /** One line that is printed as it stands. */
  static void line(String line) {
    int wrong = firstUnprintable(line, false);
    if (wrong >= 0) {
      throw new AssertionError(
          "U+%04X at %d of: %s".formatted(line.codePointAt(wrong), wrong, escaped(line)));
    }
  }

  /** The index of the first character that may not be printed, or -1. */
  static int firstUnprintable(String text, boolean lineEnds) {
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      int point = text.codePointAt(i);
      boolean allowed = lineEnds && (point == '\n' || point == '\r');
      switch (Character.getType(point)) {
        case Character.CONTROL,
            Character.FORMAT,
            Character.SURROGATE,
            Character.LINE_SEPARATOR,
            Character.PARAGRAPH_SEPARATOR -> {
          if (!allowed) {
            return i;
          }
        }
        default -> {}
      }
    }
    return -1;
  }

  private static String escaped(String line) {
    StringBuilder escaped = new StringBuilder();
    line.codePoints()
        .limit(400)
        .forEach(
            point -> {
              if (point >= ' ' && point <= '~') {
                escaped.appendCodePoint(point);
              } else {
                escaped.append("\\u{").append(Integer.toHexString(point)).append('}');
              }
            });
    return escaped.toString();
  }
}
