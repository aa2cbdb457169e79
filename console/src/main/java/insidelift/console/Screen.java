package insidelift.console;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
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

/** The terminal that the program runs in, or the pipe where there is none. */
final class Screen implements AutoCloseable {

  private final Terminal terminal;
  private final Attributes attributes;
  private final Glyphs glyphs;
  private final boolean keys;
  private final History history = new DefaultHistory();
  private Runnable farewell = () -> {};
  private Runnable waiting = () -> {};
  // A dumb terminal hears no Ctrl-C itself; then Java ends the program, and this says the last
  // line.
  private final Thread ending = new Thread(this::end);

  private Screen(Terminal terminal, boolean keys) {
    this.terminal = terminal;
    this.attributes = terminal.getAttributes();
    this.glyphs = Glyphs.forOutput(terminal.encoding());
    this.keys = keys;
  }

  private void end() {
    try {
      terminal.writer().println();
      farewell.run();
      terminal.writer().flush();
    } catch (IllegalStateException e) {
      // The library heard of the end first and has closed the terminal: nobody reads a last line.
    }
  }

  /** Opens the terminal, with single keys where it has them and the user can see a redraw. */
  static Screen open(Map<String, String> environment) throws IOException {
    Progress.end();
    TerminalLibrary.use(environment.getOrDefault("TERM", ""));
    Terminal terminal =
        TerminalLibrary.builder()
            .system(true)
            .dumb(true)
            .encoding(Outputs.charset(System.out))
            .build();
    boolean dumb =
        terminal.getType().startsWith(Terminal.TYPE_DUMB) || "dumb".equals(environment.get("TERM"));
    boolean accessible = !environment.getOrDefault("ACCESSIBLE", "").isEmpty();
    Screen screen = new Screen(terminal, !dumb && !accessible);
    terminal.handle(Terminal.Signal.TSTP, signal -> screen.suspend());
    Runtime.getRuntime().addShutdownHook(screen.ending);
    return screen;
  }

  /** A screen that nobody sees, on which these keys are pressed. */
  static Screen rehearsed(String pressed, boolean keys) throws IOException {
    return new Screen(
        TerminalLibrary.builder()
            .system(false)
            .streams(
                new ByteArrayInputStream(pressed.getBytes(StandardCharsets.US_ASCII)),
                OutputStream.nullOutputStream())
            .type("xterm")
            .size(Size.of(Text.WIDTH, 24))
            .encoding(StandardCharsets.UTF_8)
            .build(),
        keys);
  }

  /** What to do as soon as somebody is waited for, once: it takes time that nobody misses then. */
  void whenWaiting(Runnable work) {
    waiting = work;
  }

  /** Somebody is waited for from here on. */
  void waits() {
    Runnable work = waiting;
    waiting = () -> {};
    work.run();
  }

  /** Whether single keys are read: arrows, filtering, a page that is redrawn. */
  boolean keys() {
    return keys;
  }

  Terminal terminal() {
    return terminal;
  }

  Glyphs glyphs() {
    return glyphs;
  }

  /** The width to write for: what the terminal says, within what reads well. */
  int width() {
    int width = terminal.getSize().getColumns();
    return width <= 0 ? Text.WIDTH : Math.min(width, 100);
  }

  /** The height of one page. */
  int height() {
    int height = terminal.getSize().getRows();
    return height <= 0 ? 24 : height;
  }

  void say(List<String> lines) {
    PrintWriter out = terminal.writer();
    glyphs.fit(lines).forEach(out::println);
    out.flush();
  }

  void say(String... lines) {
    say(List.of(lines));
  }

  /**
   * Lines that may be longer than the screen is high: where keys are read, a screenful at a time.
   */
  void read(List<String> lines) throws Left {
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
  void onLeaving(Runnable last) {
    farewell = last;
    terminal.handle(
        Terminal.Signal.INT,
        signal -> {
          terminal.setAttributes(attributes);
          end();
          // Leaving at once is the promise; everything worth keeping is on disk already.
          Runtime.getRuntime().halt(Insidelift.INTERRUPTED);
        });
  }

  /** Asks for one line; Tab completes the words. */
  String ask(String prompt, List<String> words) throws Left {
    LineReader reader =
        LineReaderBuilder.builder()
            .terminal(terminal)
            .appName("insidelift")
            .completer(new StringsCompleter(words))
            .history(history)
            .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
            .option(LineReader.Option.BRACKETED_PASTE, false)
            .build();
    try {
      List<String> lines = new Text(width()).paragraph(glyphs.fit(prompt)).lines();
      say(lines.subList(0, lines.size() - 1));
      waits();
      return reader.readLine(lines.get(lines.size() - 1) + " ").strip();
    } catch (UserInterruptException e) {
      throw new Left(true);
    } catch (EndOfFileException e) {
      throw new Left(false);
    }
  }

  @Override
  public void close() throws IOException {
    try {
      Runtime.getRuntime().removeShutdownHook(ending);
    } catch (IllegalStateException e) {
      // The program is ending already: the last line is being said.
    }
    terminal.close();
  }
}
