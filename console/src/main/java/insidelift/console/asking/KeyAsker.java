package insidelift.console.asking;

import insidelift.console.asking.Choices.Choice;
import insidelift.console.report.Text;
import insidelift.console.terminal.Screen;
import insidelift.console.terminal.UserLeftException;
import insidelift.shared.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jline.keymap.BindingReader;
import org.jline.keymap.KeyMap;
import org.jline.terminal.Attributes;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.utils.AttributedString;
import org.jline.utils.AttributedStringBuilder;
import org.jline.utils.AttributedStyle;
import org.jline.utils.Display;
import org.jline.utils.InfoCmp.Capability;

/**
 * Asks by keys: a number, letters or arrows mark a choice, Enter takes it. Nothing is marked before
 * a key is pressed, and what was pressed before the question stood there is dropped: a habitual
 * Enter answers nothing. The page is redrawn in place and leaves one line behind when it is
 * answered. The mark is a character, not a colour.
 */
final class KeyAsker implements Asker {

  /** Characters of one typed line: a long sentence. */
  private static final int LONGEST = 300;

  /** No choice is marked. */
  private static final int NONE = -1;

  private enum Key {
    UP,
    DOWN,
    BACK,
    ENTER,
    DELETE,
    WORD,
    LINE,
    START,
    FINISH,
    END,
    TEXT
  }

  private final Screen screen;
  private final Terminal terminal;

  KeyAsker(Screen screen) {
    this.screen = screen;
    this.terminal = screen.terminal();
  }

  @Override
  public Reply ask(Choices choices) throws UserLeftException {
    Attributes before = terminal.enterRawMode();
    Page page = new Page(choices);
    Terminal.SignalHandler resized =
        terminal.handle(Terminal.Signal.WINCH, signal -> page.redraw());
    Terminal.SignalHandler continued =
        terminal.handle(
            Terminal.Signal.CONT,
            signal -> {
              terminal.enterRawMode();
              page.redraw();
            });
    try {
      return page.answer();
    } finally {
      terminal.handle(Terminal.Signal.WINCH, resized);
      terminal.handle(Terminal.Signal.CONT, continued);
      terminal.setAttributes(before);
    }
  }

  private KeyMap<Key> keys() {
    KeyMap<Key> keys = new KeyMap<>();
    keys.setUnicode(Key.TEXT);
    keys.setNomatch(Key.TEXT);
    keys.setAmbiguousTimeout(100);
    for (char c = ' '; c < 127; c++) {
      keys.bind(Key.TEXT, Character.toString(c));
    }
    keys.bind(Key.UP, KeyMap.key(terminal, Capability.key_up), "\033[A", "\033OA");
    keys.bind(Key.DOWN, KeyMap.key(terminal, Capability.key_down), "\033[B", "\033OB", "\t");
    keys.bind(
        Key.BACK, KeyMap.key(terminal, Capability.key_left), "\033[D", "\033OD", KeyMap.esc());
    keys.bind(Key.ENTER, "\r", "\n");
    keys.bind(Key.DELETE, KeyMap.del(), KeyMap.ctrl('H'));
    keys.bind(Key.WORD, KeyMap.ctrl('W'));
    keys.bind(Key.LINE, KeyMap.ctrl('U'));
    keys.bind(Key.START, KeyMap.ctrl('A'));
    keys.bind(Key.FINISH, KeyMap.ctrl('E'));
    keys.bind(Key.END, KeyMap.ctrl('D'));
    return keys;
  }

  /** One question while it is being answered. */
  private final class Page {

    private final Choices choices;
    private Display display = new Display(terminal, false);
    private final BindingReader reader = new BindingReader(terminal.reader());
    private final StringBuilder typed = new StringBuilder();
    private String remark = "";
    private int at;
    private int marked = NONE;

    Page(Choices choices) {
      this.choices = choices;
    }

    Reply answer() throws UserLeftException {
      KeyMap<Key> keys = keys();
      screen.dropTyped();
      while (true) {
        // A line that is pasted is drawn once, not once a character.
        if (!screen.typed()) {
          draw();
        }
        Key key = reader.readBinding(keys, null, true);
        if (key == null || (key == Key.END && typed.isEmpty())) {
          leave("");
          throw new UserLeftException(false);
        }
        remark = "";
        Reply reply = press(key);
        if (reply != null && !(reply instanceof Reply.Unclear)) {
          leave(words(reply));
          return reply;
        }
        if (reply instanceof Reply.Unclear unclear) {
          remark = unclear.why();
          edit(0, typed.length());
        }
      }
    }

    /** Null while nothing has been decided. */
    private Reply press(Key key) {
      switch (key) {
        case UP -> marked = marked <= 0 ? shown().size() - 1 : marked - 1;
        case DOWN -> marked = marked + 1 < shown().size() ? marked + 1 : shown().size() - 1;
        case BACK -> {
          return new Reply.Back();
        }
        case DELETE -> edit(Math.max(0, at - 1), at);
        case WORD -> edit(wordStart(), at);
        case LINE -> edit(0, at);
        case START -> at = 0;
        case FINISH -> at = typed.length();
        case ENTER -> {
          return entered();
        }
        case END -> remark = "Ctrl-D leaves when nothing is typed.";
        case TEXT -> {
          return typed(reader.getLastBinding());
        }
      }
      return null;
    }

    private Reply typed(String text) {
      if (text.isEmpty() || text.chars().anyMatch(Character::isISOControl)) {
        return null;
      }
      if (typed.isEmpty() && text.equals("?") && choices.explained()) {
        return new Reply.Explain();
      }
      if (typed.length() + text.length() > LONGEST) {
        remark = "A line holds no more than that.";
        return null;
      }
      typed.insert(at, text);
      at += text.length();
      mark();
      return null;
    }

    /** Takes out what stands between two places. */
    private void edit(int from, int to) {
      typed.delete(from, to);
      at = from;
      mark();
    }

    /** Where the word before the cursor begins. */
    private int wordStart() {
      int start = at;
      while (start > 0 && typed.charAt(start - 1) == ' ') {
        start--;
      }
      while (start > 0 && typed.charAt(start - 1) != ' ') {
        start--;
      }
      return start;
    }

    /** Marks what has been typed, where it can mean one choice only. */
    private void mark() {
      String line = typed.toString().strip().toLowerCase(Locale.ROOT);
      List<Choice> shown = shown();
      marked = NONE;
      if (choices.numbers(line)) {
        int number = Integer.parseInt(line);
        marked = number >= 1 && number <= choices.choices().size() ? number - 1 : NONE;
      } else if (!line.isEmpty() && fits(line)) {
        for (int i = 0; i < shown.size(); i++) {
          if (shown.size() == 1 || shown.get(i).id().equals(line)) {
            marked = i;
          }
        }
      }
    }

    private Reply entered() {
      String line = typed.toString();
      if (choices.range().isPresent()) {
        return choices.read(line);
      }
      // What is marked is what is taken; a word that marks nothing may be a command.
      return marked >= 0 ? new Reply.Chosen(shown().get(marked).id()) : choices.read(line);
    }

    /** The choices that fit what has been typed, with "I do not know" at the end. */
    private List<Choice> shown() {
      if (choices.range().isPresent()) {
        return List.of();
      }
      String line = typed.toString();
      List<Choice> shown = new ArrayList<>();
      boolean filtered = fits(line) && !choices.numbers(line.strip());
      if (!line.equals("u") || choices.nothing().isEmpty()) {
        shown.addAll(filtered ? choices.fitting(line) : choices.choices());
      }
      if (!filtered || line.isEmpty() || unknown(line)) {
        choices.nothing().ifPresent(words -> shown.add(new Choice(Vocabulary.UNKNOWN, words)));
      }
      return shown;
    }

    private boolean fits(String line) {
      return unknown(line) || !choices.fitting(line).isEmpty();
    }

    /** Whether that begins the word for not knowing; a single u always means it. */
    private boolean unknown(String line) {
      return choices.nothing().isPresent()
          && !line.isEmpty()
          && Vocabulary.UNKNOWN.startsWith(line.toLowerCase(Locale.ROOT));
    }

    private String words(Reply reply) {
      if (reply instanceof Reply.Chosen chosen) {
        return choices.choices().stream()
            .filter(choice -> choice.id().equals(chosen.value()))
            .map(Choice::words)
            .findFirst()
            .orElse(choices.nothing().orElse(chosen.value()));
      }
      if (!(reply instanceof Reply.Measured || reply instanceof Reply.Heat)) {
        return "";
      }
      return choices
          .range()
          .filter(range -> !range.unit().equals(choices.label()))
          .map(range -> range.withUnit(typed.toString()))
          .orElse(typed.toString());
    }

    synchronized void redraw() {
      // Where the old page is now, only the terminal knows: some wrap it anew, some cut it off.
      terminal.puts(Capability.clear_screen);
      display = new Display(terminal, false);
      draw();
    }

    private synchronized void draw() {
      int columns = Math.max(20, terminal.getSize().getColumns());
      display.resize(Size.of(columns, Math.max(4, terminal.getSize().getRows())));
      List<AttributedString> lines = new ArrayList<>();
      Text head = new Text(Math.min(screen.width(), columns - 1));
      choices.head().stream().filter(line -> !line.isEmpty()).forEach(head::paragraph);
      head.lines().forEach(line -> lines.add(plain(line)));
      choices.range().ifPresent(range -> lines.add(plain("  " + range.asked())));
      // Below the choices stand the hint, what is wrong, and what is typed.
      lines.addAll(choices(Math.max(3, terminal.getSize().getRows() - lines.size() - 4), columns));
      lines.add(plain(hint()));
      String status = remark.isEmpty() ? choices.check(typed.toString()) : remark;
      if (!status.isEmpty()) {
        lines.add(plain(status));
      }
      String prompt = screen.glyphs().fit(choices.label() + ": " + typed);
      lines.add(new AttributedString(prompt));
      List<AttributedString> fitted = fitted(lines, columns);
      int behind = typed.length() - at;
      int cursor =
          (fitted.size() - 1) * (columns + 1)
              + Math.max(0, fitted.get(fitted.size() - 1).length() - behind);
      display.update(fitted, cursor);
    }

    /** Every line within the width, so that the display's arithmetic holds. */
    private List<AttributedString> fitted(List<AttributedString> lines, int columns) {
      List<AttributedString> fitted = new ArrayList<>();
      lines.forEach(line -> fitted.addAll(line.columnSplitLength(columns - 1)));
      int rows = Math.max(3, terminal.getSize().getRows() - 1);
      return fitted.size() <= rows ? fitted : fitted.subList(fitted.size() - rows, fitted.size());
    }

    /** The choices; of a list that is longer than the screen, those about the marked one. */
    private List<AttributedString> choices(int room, int columns) {
      List<List<AttributedString>> all = new ArrayList<>();
      List<Choice> shown = shown();
      for (int i = 0; i < shown.size(); i++) {
        all.add(choice(shown.get(i), i == marked, columns - 1));
      }
      if (all.stream().mapToInt(List::size).sum() <= room) {
        return all.stream().flatMap(List::stream).toList();
      }
      int from = Math.max(0, Math.min(marked - room / 2, all.size() - 1));
      List<AttributedString> lines = new ArrayList<>();
      int to = from;
      while (to < all.size() && lines.size() + all.get(to).size() < room) {
        lines.addAll(all.get(to++));
      }
      int hidden = all.size() - (to - from);
      lines.add(plain("  ... %d more: arrows, or the first letters".formatted(hidden)));
      return lines;
    }

    private List<AttributedString> choice(Choice choice, boolean mark, int width) {
      boolean unknown = choice.id().equals(Vocabulary.UNKNOWN);
      String number = unknown ? "u" : "" + (choices.choices().indexOf(choice) + 1);
      Text text = new Text(Math.min(screen.width(), width));
      text.item((mark ? " >" : "  ") + "%2s  ".formatted(number), choice.words());
      AttributedStyle style = mark ? AttributedStyle.BOLD : AttributedStyle.DEFAULT;
      return text.lines().stream()
          .map(line -> new AttributedStringBuilder().styled(style, screen.glyphs().fit(line)))
          .map(AttributedStringBuilder::toAttributedString)
          .toList();
    }

    private String hint() {
      boolean number = choices.range().isPresent();
      if (screen.width() < (number ? 70 : 60)) {
        return number ? "  then Enter   u Enter: not known" : "  number or letters, then Enter";
      }
      return (number
              ? "  then Enter   u Enter: not known   Esc: back"
              : "  a number or the first letters, then Enter   Esc: back")
          + (choices.explained() ? "   ?: what is this" : "");
    }

    private AttributedString plain(String line) {
      return new AttributedString(screen.glyphs().fit(line));
    }

    /** Takes the page off the screen and leaves one line. */
    private void leave(String words) {
      display.update(List.of(), 0);
      if (!words.isEmpty()) {
        screen.say(new Text(screen.width()).item(choices.label() + ": ", words).lines());
      }
      terminal.writer().flush();
    }
  }
}
