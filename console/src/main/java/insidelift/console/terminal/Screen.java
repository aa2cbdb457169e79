package insidelift.console.terminal;

import insidelift.console.report.Glyphs;
import insidelift.console.report.HowToAnswer;
import insidelift.console.report.Text;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jline.reader.EndOfFileException;
import org.jline.reader.History;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.reader.impl.completer.StringsCompleter;
import org.jline.reader.impl.history.DefaultHistory;
import org.jline.terminal.Attributes;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;

/**
 * The terminal that the program runs in, or the pipe where there is none. Opening a terminal takes
 * as long as all that comes before it. So where it is known what the terminal is like, it is opened
 * when somebody is first waited for, and what is said until then is on the screen already.
 */
public final class Screen implements AutoCloseable {

  /**
   * The rows and columns of the terminal, as in {@code 24 80}, told by whoever starts the program;
   * nothing where input or output is no terminal.
   */
  private static final String TOLD = "insidelift.screen";

  private static final Pattern ROWS_AND_COLUMNS =
      Pattern.compile("([1-9][0-9]{0,3}) ([1-9][0-9]{0,3})");

  private static final String QUIT = "quit";
  private static final String HELP = "help";

  /** Opens a terminal. */
  private interface Way {
    Terminal open() throws IOException;
  }

  /** There is no terminal to be had after all. */
  public static final class NoTerminal extends UncheckedIOException {
    private static final long serialVersionUID = 1;

    NoTerminal(IOException cause) {
      super(cause);
    }
  }

  private final Way way;
  private final boolean accessible;
  private final Size told;
  private final Glyphs glyphs;
  private final History history = new DefaultHistory();
  private PrintWriter out;
  private volatile Terminal terminal;
  private Attributes attributes;
  private boolean keys;
  private boolean live = true;
  private boolean ended;
  private Runnable farewell = () -> {};
  private Runnable waiting = () -> {};
  // A dumb terminal hears no Ctrl-C itself, nor does one that is not open yet; then Java ends the
  // program, and this says the last line.
  private final Thread ending = new Thread(this::end);

  private Screen(Way way, Size told, boolean accessible, Charset charset, PrintWriter out) {
    this.way = way;
    this.told = told;
    this.accessible = accessible;
    this.keys = !accessible;
    this.glyphs = Glyphs.forOutput(charset);
    this.out = out;
  }

  /** Says the last line: whoever was still about to say something is silent after it. */
  private synchronized void end() {
    try {
      out.println();
      farewell.run();
      out.flush();
      ended = true;
    } catch (IllegalStateException e) {
      // The library heard of the end first and has closed the terminal: nobody reads a last line.
    }
  }

  /**
   * The screen of this program, with single keys where it has them and the user can see a redraw.
   *
   * @throws IOException if there is no terminal to be had
   */
  public static Screen open(Map<String, String> environment) throws IOException {
    ProgressLine.end();
    String type = environment.getOrDefault("TERM", "");
    Charset charset = Outputs.charset(System.out);
    Screen screen =
        new Screen(
            () -> TerminalLibrary.open(type, charset),
            told(type),
            !environment.getOrDefault("ACCESSIBLE", "").isEmpty() || type.equals("dumb"),
            charset,
            Outputs.writer(System.out));
    if (screen.told == null) {
      screen.opened();
    }
    Runtime.getRuntime().addShutdownHook(screen.ending);
    return screen;
  }

  /** The size that was told, of a terminal that can do what all can; else null. */
  private static Size told(String type) {
    Matcher size = ROWS_AND_COLUMNS.matcher(System.getProperty(TOLD, ""));
    return type.isEmpty() || type.startsWith(Terminal.TYPE_DUMB) || !size.matches()
        ? null
        : Size.of(Integer.parseInt(size.group(2)), Integer.parseInt(size.group(1)));
  }

  /** A screen that nobody sees, on which these keys are pressed. */
  public static Screen rehearsed(String pressed, boolean keys) {
    Screen screen =
        new Screen(
            () -> TerminalLibrary.rehearsed(pressed, Size.of(Text.WIDTH, 24)),
            Size.of(Text.WIDTH, 24),
            !keys,
            StandardCharsets.UTF_8,
            new PrintWriter(Writer.nullWriter()));
    // All its keys are pressed before it begins.
    screen.live = false;
    return screen;
  }

  private Terminal opened() throws IOException {
    if (terminal == null) {
      out.flush();
      Terminal opened = way.open();
      attributes = opened.getAttributes();
      keys = !accessible && !opened.getType().startsWith(Terminal.TYPE_DUMB);
      out = opened.writer();
      terminal = opened;
      terminal.handle(Terminal.Signal.TSTP, signal -> suspend());
      terminal.handle(Terminal.Signal.INT, signal -> interrupted());
    }
    return terminal;
  }

  /** What to do as soon as somebody is waited for, once: it takes time that nobody misses then. */
  public void whenWaiting(Runnable work) {
    waiting = work;
  }

  /** Somebody is waited for from here on. */
  void waits() {
    Runnable work = waiting;
    waiting = () -> {};
    work.run();
  }

  /** Whether something was typed that nobody has read yet. */
  public boolean typed() {
    try {
      return terminal().reader().peek(1) >= 0;
    } catch (IOException e) {
      return false;
    }
  }

  /** Drops what was typed before a question stood there: it was meant for another. */
  public void dropTyped() {
    try {
      while (live && typed()) {
        terminal().reader().read();
      }
    } catch (IOException e) {
      // Whoever reads next hears of it.
    }
  }

  /** Whether single keys are read: arrows, filtering, a page that is redrawn. */
  public boolean keys() {
    return keys;
  }

  /**
   * The terminal, opened if it was not.
   *
   * @throws NoTerminal if there is none to be had
   */
  public Terminal terminal() {
    try {
      return opened();
    } catch (IOException e) {
      throw new NoTerminal(e);
    }
  }

  private Size size() {
    return terminal == null ? told : terminal.getSize();
  }

  public Glyphs glyphs() {
    return glyphs;
  }

  /** The width to write for: what the terminal says, within what reads well. */
  public int width() {
    int width = size().getColumns();
    return width <= 0 ? Text.WIDTH : Math.min(width, 100);
  }

  /** The height of one page. */
  public int height() {
    int height = size().getRows();
    return height <= 0 ? 24 : height;
  }

  public synchronized void say(List<String> lines) {
    if (!ended) {
      glyphs.fit(lines).forEach(out::println);
      out.flush();
    }
  }

  /** To be seen at once: whoever reads the line writes it again in its place. */
  private synchronized void announce(String prompt) {
    if (!ended) {
      out.print(prompt + '\r');
      out.flush();
    }
  }

  public void say(String... lines) {
    say(List.of(lines));
  }

  /**
   * Lines that may be longer than the screen is high: where keys are read, a screenful at a time.
   */
  public void read(List<String> lines) throws UserLeftException {
    int room = keys ? Math.max(5, height() - 2) : Integer.MAX_VALUE;
    for (int from = 0; from < lines.size(); from += room) {
      boolean last = lines.size() - from <= room;
      say(lines.subList(from, last ? lines.size() : from + room));
      if (!last && !ask("Press Enter to read on, or type q: ", List.of("q")).isEmpty()) {
        return;
      }
    }
  }

  /**
   * Ctrl-Z: hands the terminal back as it was and stops. The shell's fg continues; whoever reads
   * keys or a line then hears of it by the signal CONT and draws itself anew.
   */
  private void suspend() {
    terminal.setAttributes(attributes);
    terminal.writer().println();
    terminal.writer().flush();
    // Or this would hear its own signal instead of stopping.
    terminal.handle(Terminal.Signal.TSTP, Terminal.SignalHandler.SIG_DFL);
    try {
      // Java can send itself no signal by a public way; the shell's own command can.
      new ProcessBuilder("kill", "-TSTP", Long.toString(ProcessHandle.current().pid()))
          .inheritIO()
          .start()
          .waitFor();
    } catch (IOException e) {
      // No such command, as on Windows, which knows no suspending either: go on.
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    terminal.handle(Terminal.Signal.TSTP, signal -> suspend());
    // Where nobody could continue it, as without job control, it was never stopped: draw anew.
    terminal.raise(Terminal.Signal.CONT);
  }

  /** What to do before the program ends by Ctrl-C, at whatever point. */
  public void onLeaving(Runnable last) {
    farewell = last;
  }

  private void interrupted() {
    terminal.setAttributes(attributes);
    end();
    // Leaving at once is the promise; everything worth keeping is on disk already.
    Runtime.getRuntime().halt(ExitCode.INTERRUPTED);
  }

  /**
   * Asks where Enter says yes: what was pressed before the question stood there says nothing to it.
   */
  public String confirm(String prompt, List<String> words) throws UserLeftException {
    if (keys && terminal != null) {
      dropTyped();
    }
    return ask(prompt, words);
  }

  /**
   * Asks for one line; Tab completes the words. Two words mean the same wherever a line is asked
   * for, unless they are among those: {@code quit} leaves, {@code help} says how to answer.
   */
  public String ask(String prompt, List<String> words) throws UserLeftException {
    while (true) {
      String line = line(prompt, words);
      if (line.equals(QUIT) && !words.contains(QUIT)) {
        throw new UserLeftException(false);
      }
      if (!(line.equals("?") || line.equals(HELP)) || words.contains(HELP)) {
        return line;
      }
      say(HowToAnswer.lines(width()));
    }
  }

  private String line(String prompt, List<String> words) throws UserLeftException {
    List<String> lines = new Text(width()).paragraph(glyphs.fit(prompt)).lines();
    String last = lines.get(lines.size() - 1) + " ";
    say(lines.subList(0, lines.size() - 1));
    if (terminal == null && keys) {
      announce(last);
    }
    LineReader reader = reader(words);
    try {
      waits();
      return reader.readLine(last).strip();
    } catch (UserInterruptException e) {
      throw new UserLeftException(true);
    } catch (EndOfFileException e) {
      throw new UserLeftException(false);
    }
  }

  private LineReader reader(List<String> words) {
    return LineReaderBuilder.builder()
        .terminal(terminal())
        .appName("insidelift")
        .completer(new StringsCompleter(words))
        .history(history)
        .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
        .option(LineReader.Option.BRACKETED_PASTE, false)
        .build();
  }

  @Override
  public void close() throws IOException {
    try {
      Runtime.getRuntime().removeShutdownHook(ending);
    } catch (IllegalStateException e) {
      // The program is ending already: the last line is being said.
    }
    if (terminal != null) {
      terminal.close();
    }
  }
}
