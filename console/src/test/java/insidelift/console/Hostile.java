package insidelift.console;

import java.util.List;

/** Texts that somebody may put into any field, by mistake or not. */
final class Hostile {

  /** What clears a screen, renames a window, rings, deletes, or does so in one C1 character. */
  static final String CONTROL =
      "a\u001b[2J\u001b]0;x\u0007\u009b31m\u0085\u007f\u000b\u000c\rb\u0001";

  /** What turns the reading direction, hides, or ends a line without being a control character. */
  static final String MARKS =
      "\u202ea\u2066b\u2069\u200f\u200b\ufeff\u2028\u2029\u00ad\udb40\udc41\u206a";

  /** What a page must not take for its own. */
  static final String HTML = "<script>x()</script>\"'><img src=x onerror=x()>&lt;";

  /** What a spreadsheet must not run. */
  static final String FORMULA = "=cmd|' /C calc'!A1";

  /** Letters under a tower of accents. */
  static final String TOWER = "Z" + "\u0301\u0316".repeat(30);

  /** All that may be written down, though it must be shown with care. */
  static final List<String> STORABLE = List.of(MARKS, HTML, FORMULA, TOWER);

  private Hostile() {}

  /** Everything at once, and long. */
  static String all() {
    return CONTROL + MARKS + HTML + FORMULA + TOWER + "x".repeat(5_000);
  }

  /** The index of what a terminal or a page must never be given, or -1. */
  static int unsafe(String text) {
    int marks = 0;
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      int point = text.codePointAt(i);
      int type = Character.getType(point);
      marks = type == Character.NON_SPACING_MARK ? marks + 1 : 0;
      boolean never =
          (type == Character.CONTROL && point != '\n')
              || type == Character.FORMAT
              || type == Character.SURROGATE
              || type == Character.LINE_SEPARATOR
              || type == Character.PARAGRAPH_SEPARATOR;
      if (never || marks > 4) {
        return i;
      }
    }
    return -1;
  }
}
