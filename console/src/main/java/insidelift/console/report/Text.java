package insidelift.console.report;

import insidelift.shared.situation.Printable;
import java.util.ArrayList;
import java.util.List;
import java.util.StringTokenizer;

/** Lines of text for a screen of a given width. */
public final class Text {

  /** The width where the terminal tells none. */
  public static final int WIDTH = 80;

  private final List<String> lines = new ArrayList<>();
  private final int width;

  public Text(int width) {
    this.width = Math.max(20, width);
  }

  /** Text from outside on one line, with nothing in it that could move the cursor. */
  public static String safe(String outside) {
    StringBuilder safe = new StringBuilder();
    outside.lines().forEach(line -> safe.append(safe.isEmpty() ? "" : " ").append(line.strip()));
    return Printable.shown(safe.toString(), 500);
  }

  public Text blank() {
    if (!lines.isEmpty() && !lines.get(lines.size() - 1).isEmpty()) {
      lines.add("");
    }
    return this;
  }

  /** A heading with a rule of its own length under it. */
  public Text heading(String heading) {
    blank();
    lines.add(heading);
    lines.add("-".repeat(Math.min(width, heading.length())));
    return this;
  }

  public Text paragraph(String text) {
    return item("", text);
  }

  /** A paragraph whose first line opens with a mark and whose others are indented by its width. */
  public Text item(String mark, String text) {
    String indent = " ".repeat(mark.length());
    String start = mark;
    StringBuilder line = new StringBuilder();
    for (StringTokenizer words = new StringTokenizer(text); words.hasMoreTokens(); ) {
      String word = words.nextToken();
      if (!line.isEmpty() && start.length() + line.length() + 1 + word.length() > width) {
        lines.add(start + line);
        start = indent;
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    lines.add((start + line).stripTrailing());
    return this;
  }

  /**
   * A drawing of fixed columns; a screen that is narrower has the words above it instead of a
   * broken picture.
   */
  Text drawing(List<String> drawing) {
    if (drawing.stream().allMatch(line -> line.length() <= width)) {
      drawing.forEach(lines::add);
    }
    return this;
  }

  public Text line(String line) {
    lines.add(line);
    return this;
  }

  public List<String> lines() {
    return List.copyOf(lines);
  }
}
