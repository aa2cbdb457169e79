package insidelift.console;

import insidelift.console.AdviceText.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Shows an advice page by page where there is a screen, and in one piece where there is none. */
final class Pager {

  /** What the user wants after the advice. */
  enum Wish {
    /** The questions that are still open. */
    MORE,
    /** Change an answer. */
    CHANGE,
    /** A new consultation. */
    AGAIN,
    /** Write the setting down as this kart's own. */
    KEEP,
    /** Something new was told. */
    TOLD,
    /** Nothing more. */
    DONE
  }

  private static final List<String> WORDS =
      List.of("back", "more", "change", "keep", "again", "quit");

  /** What is shown at once. */
  record Page(String title, List<String> lines) {}

  private final Screen screen;
  private final boolean open;
  private final boolean good;
  private final Talk talk;

  /**
   * @param open whether there are questions left that could still change what to do now
   * @param good whether the setting is one to keep
   * @param talk what is done with a line that is no command
   */
  Pager(Screen screen, boolean open, boolean good, Talk talk) {
    this.talk = talk;
    this.screen = screen;
    this.open = open;
    this.good = good;
  }

  Wish show(List<Part> parts) throws Left {
    // Beside the lines stand a blank one, the heading, its rule, and what to answer.
    int beside = screen.width() < 70 ? 5 : 4;
    int room = screen.keys() ? Math.max(5, screen.height() - beside) : Integer.MAX_VALUE;
    List<Page> pages = pages(parts, room);
    if (!screen.keys()) {
      pages.forEach(page -> print(page));
      return ask();
    }
    int at = 0;
    boolean turned = true;
    while (true) {
      if (turned) {
        print(pages.get(at));
      }
      boolean last = at + 1 == pages.size();
      String line =
          screen.ask(
              "[%d/%d] Enter: %s, or type back, %schange, %sagain, quit:"
                  .formatted(
                      at + 1,
                      pages.size(),
                      last ? "end" : "next page",
                      open ? "more, " : "",
                      good ? "keep, " : ""),
              WORDS);
      turned = true;
      if (line.isEmpty() && !last) {
        at++;
      } else if (!line.isEmpty() && "back".startsWith(line)) {
        at = Math.max(0, at - 1);
      } else {
        Optional<Wish> wish = wish(line, "back, " + words());
        if (wish.isPresent()) {
          return wish.get();
        }
        // What was said in return stays on the screen.
        turned = false;
      }
    }
  }

  private Wish ask() throws Left {
    screen.say("");
    while (true) {
      String line = screen.ask("Enter: end, or type " + words() + ": ", WORDS);
      Optional<Wish> wish = wish(line, words());
      if (wish.isPresent()) {
        return wish.get();
      }
    }
  }

  /** What a line wants; nothing where it was answered or not understood. */
  private Optional<Wish> wish(String line, String words) throws Left {
    Wish wish = line.isEmpty() ? Wish.DONE : wish(line);
    if (wish != null) {
      return Optional.of(wish);
    }
    switch (talk.hear(line, Optional.empty())) {
      case NOTED -> {
        return Optional.of(Wish.TOLD);
      }
      case NOT_UNDERSTOOD -> screen.say("Press Enter, or type " + words + ".");
      case ANSWERED -> {
        // It stands on the screen.
      }
    }
    return Optional.empty();
  }

  private String words() {
    return (open ? "more, " : "") + "change, " + (good ? "keep, " : "") + "again or quit";
  }

  private Wish wish(String line) {
    if (open && "more".startsWith(line)) {
      return Wish.MORE;
    }
    if ("change".startsWith(line)) {
      return Wish.CHANGE;
    }
    if ("keep".startsWith(line)) {
      return Wish.KEEP;
    }
    if ("again".startsWith(line)) {
      return Wish.AGAIN;
    }
    return "quit".startsWith(line) ? Wish.DONE : null;
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

  private void print(Page page) {
    Text text = new Text(screen.width());
    text.line("").heading(page.title());
    page.lines().forEach(text::line);
    screen.say(text.lines());
  }
}
