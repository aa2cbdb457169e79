package insidelift.console;

import insidelift.console.AdviceText.Part;
import java.util.List;

/** Shows parts page by page, forward only; where there is no screen, in one piece. */
final class Leaves {

  /** Beside the lines stand a blank one, the heading, its rule, and what to answer. */
  private static final int BESIDE = 5;

  private Leaves() {}

  static void show(Screen screen, List<Part> parts) throws Left {
    int room = screen.keys() ? Math.max(5, screen.height() - BESIDE) : Integer.MAX_VALUE;
    List<Pager.Page> pages = Pager.pages(parts, room);
    for (int i = 0; i < pages.size(); i++) {
      Text text = new Text(screen.width()).line("").heading(pages.get(i).title());
      pages.get(i).lines().forEach(text::line);
      screen.say(text.lines());
      if (screen.keys() && i + 1 < pages.size()) {
        screen.ask("[%d/%d] Enter: next page".formatted(i + 1, pages.size()), List.of());
      }
    }
  }
}
