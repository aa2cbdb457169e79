package insidelift.console.terminal;

import insidelift.console.report.AdviceText.Part;
import insidelift.console.report.Text;
import java.util.ArrayList;
import java.util.List;

/** Shows parts page by page, forward only; where there is no screen, in one piece. */
public final class Leaves {

  /** Beside the lines stand a blank one, the heading, its rule, and what to answer. */
  private static final int BESIDE = 5;

  /** What is shown at once. */
  record Page(String title, List<String> lines) {}

  private Leaves() {}

  public static void show(Screen screen, List<Part> parts) throws UserLeftException {
    int room = screen.keys() ? Math.max(5, screen.height() - BESIDE) : Integer.MAX_VALUE;
    List<Page> pages = pages(parts, room);
    for (int i = 0; i < pages.size(); i++) {
      Text text = new Text(screen.width()).line("").heading(pages.get(i).title());
      pages.get(i).lines().forEach(text::line);
      screen.say(text.lines());
      if (screen.keys() && i + 1 < pages.size()) {
        screen.ask("[%d/%d] Enter: next page".formatted(i + 1, pages.size()), List.of());
      }
    }
  }

  /** Pages of so many lines at most, without their heading and the line to answer on. */
  static List<Page> pages(List<Part> parts, int room) {
    List<Page> pages = new ArrayList<>();
    for (Part part : parts) {
      List<String> lines = part.lines();
      for (int from = 0; from < lines.size(); ) {
        int to = end(lines, from, room);
        String title = from == 0 ? part.title() : part.title() + " (continued)";
        pages.add(new Page(title, lines.subList(from, to)));
        from = to;
        while (from < lines.size() && lines.get(from).isEmpty()) {
          from++;
        }
      }
    }
    return pages;
  }

  /** Where a page ends: at a line that begins something new, so that no sentence is cut. */
  private static int end(List<String> lines, int from, int room) {
    if (lines.size() - from <= room) {
      return lines.size();
    }
    int end = from + room;
    for (int at = end; at > from + room / 2; at--) {
      if (begins(lines.get(at)) && !heads(lines.get(at - 1))) {
        return at;
      }
    }
    return end;
  }

  /** Whether a line belongs to what stands below it. */
  private static boolean heads(String line) {
    return line.matches("[a-z].*");
  }

  private static boolean begins(String line) {
    return line.isEmpty() || line.matches("^( {0,2}[-!?=>] | {0,2}\\d+\\. |[a-z]|  [A-Z]).*");
  }
}
