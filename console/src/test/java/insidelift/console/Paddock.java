package insidelift.console;

import com.pty4j.PtyProcess;
import com.pty4j.PtyProcessBuilder;
import com.pty4j.WinSize;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.jline.terminal.Size;
import org.jline.utils.ScreenTerminal;

/**
 * The consultation as somebody in the paddock has it: the packaged launcher on a pseudo-terminal,
 * or on a pipe, with a screen that shows what a terminal would show.
 */
public final class Paddock implements AutoCloseable {

  static final String CTRL_C = "\003";
  static final String CTRL_D = "\004";
  static final String CTRL_Z = "\032";
  public static final String ENTER = "\r";

  /** How long a slow machine may take for one step. */
  private static final long PATIENCE_MS = 40_000;

  /** A screen is looked at when nothing has been written for so long. */
  private static final long QUIET_MS = 60;

  static {
    // The first start of a build makes an archive and says so; every dialogue here is a later one.
    try {
      new ProcessBuilder(Launcher.CONSOLE.resolve("insidelift").toString(), "--version")
          .redirectErrorStream(true)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .start()
          .waitFor();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private final Process process;
  private final OutputStream keyboard;
  private final boolean pipe;
  private final ScreenTerminal screen;
  private final StringBuilder raw = new StringBuilder();
  private final Thread pump;
  private long lastWritten = System.nanoTime();

  /** How to start a consultation. */
  public static final class Start {

    private final Map<String, String> environment;
    private int columns = 80;
    private int rows = 24;
    private boolean pipe;
    private boolean shell;
    private final List<String> words = new ArrayList<>();

    private Start(Path data) {
      environment = new java.util.HashMap<>(System.getenv());
      List.of("LC_ALL", "LANG", "NO_COLOR", "ACCESSIBLE", "JAVA_TOOL_OPTIONS")
          .forEach(environment::remove);
      environment.put("LC_ALL", "C.UTF-8");
      environment.put("TERM", "xterm-256color");
      environment.put("INSIDELIFT_DATA", data.toString());
    }

    public Start set(String name, String value) {
      environment.put(name, value);
      return this;
    }

    Start unset(String name) {
      environment.remove(name);
      return this;
    }

    /** Starts with these words behind the launcher's name. */
    public Start words(String... typed) {
      words.addAll(List.of(typed));
      return this;
    }

    Start columns(int wanted) {
      columns = wanted;
      return this;
    }

    public Start rows(int wanted) {
      rows = wanted;
      return this;
    }

    Start pipe() {
      pipe = true;
      return this;
    }

    /** From an interactive shell, which can stop a program and continue it. */
    Start shell() {
      shell = true;
      return set("PS1", "ready> ");
    }

    public Paddock start() {
      try {
        return new Paddock(this);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /** A consultation that keeps its answers in that folder. */
  public static Start in(Path data) {
    return new Start(data);
  }

  private Paddock(Start how) throws IOException {
    pipe = how.pipe;
    List<String> command =
        new ArrayList<>(List.of(Launcher.CONSOLE.resolve("insidelift").toString()));
    command.addAll(how.words);
    if (pipe) {
      ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
      builder.environment().clear();
      builder.environment().putAll(how.environment);
      process = builder.start();
    } else {
      process =
          new PtyProcessBuilder(
                  how.shell
                      ? new String[] {"bash", "--norc", "--noprofile", "-i"}
                      : command.toArray(String[]::new))
              .setEnvironment(how.environment)
              .setDirectory(Launcher.CONSOLE.toString())
              .setInitialColumns(how.columns)
              .setInitialRows(how.rows)
              .start();
    }
    keyboard = process.getOutputStream();
    screen = new ScreenTerminal(how.columns, how.rows);
    boolean ascii = "C".equals(how.environment.get("LC_ALL"));
    pump = new Thread(() -> pump(ascii ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8));
    pump.setDaemon(true);
    pump.start();
    if (how.shell) {
      waitFor("ready>").type("'" + command.get(0) + "'" + ENTER);
    }
  }

  private void pump(Charset charset) {
    char[] chunk = new char[4096];
    try (Reader out = new InputStreamReader(process.getInputStream(), charset)) {
      for (int n = out.read(chunk); n > 0; n = out.read(chunk)) {
        String text = new String(chunk, 0, n);
        synchronized (screen) {
          raw.append(text);
          screen.write(pipe ? text.replace("\n", "\r\n") : text);
          lastWritten = System.nanoTime();
        }
      }
    } catch (IOException e) {
      // A pseudo-terminal whose program has ended reports an error in place of the end.
      synchronized (screen) {
        lastWritten = System.nanoTime();
      }
    }
  }

  public Paddock type(String keys) {
    try {
      keyboard.write((pipe ? keys.replace(ENTER, "\n") : keys).getBytes(StandardCharsets.UTF_8));
      keyboard.flush();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return this;
  }

  /** Waits until the screen, with what has scrolled off it, holds a text. */
  public Paddock waitFor(String text) {
    return waitUntil("\"" + text + "\"", paddock -> String.join("\n", all()).contains(text));
  }

  /** Waits until a text has been written, whatever is still being written behind it. */
  Paddock waitForTheFirst(String text) {
    return waitUntil("\"" + text + "\"", paddock -> raw().contains(text), false);
  }

  /** Waits until the screen is quiet and looks as wanted. */
  Paddock waitUntil(String what, Predicate<Paddock> wanted) {
    return waitUntil(what, wanted, true);
  }

  private Paddock waitUntil(String what, Predicate<Paddock> wanted, boolean quiet) {
    long end = System.nanoTime() + PATIENCE_MS * 1_000_000;
    while (!((!quiet || quiet()) && wanted.test(this))) {
      if (System.nanoTime() > end) {
        throw new AssertionError(
            "waited in vain for " + what + "; the screen was:\n" + String.join("\n", all()));
      }
      pause(quiet ? 10 : 1);
    }
    return this;
  }

  /** Waits until nothing has been written for a moment. */
  public Paddock settle() {
    return waitUntil("quiet", paddock -> true);
  }

  private boolean quiet() {
    synchronized (screen) {
      return System.nanoTime() - lastWritten > QUIET_MS * 1_000_000;
    }
  }

  private static void pause(long ms) {
    try {
      Thread.sleep(ms);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError("interrupted", e);
    }
  }

  /** What stands left of the cursor, in its row. */
  String beforeCursor() {
    synchronized (screen) {
      int[] cursor = new int[2];
      long[] cells = new long[screen.getColumns() * screen.getRows()];
      screen.dump(cells, 0, 0, screen.getRows(), screen.getColumns(), cursor);
      String row = row(cells, cursor[1] * screen.getColumns(), screen.getColumns());
      return row.substring(0, Math.min(cursor[0], row.length()));
    }
  }

  /** The rows of the screen, without blanks at their ends. */
  public List<String> screen() {
    synchronized (screen) {
      int width = screen.getColumns();
      long[] cells = new long[width * screen.getRows()];
      screen.dump(cells, 0, 0, screen.getRows(), width, new int[2]);
      List<String> rows = new ArrayList<>();
      for (int y = 0; y < screen.getRows(); y++) {
        rows.add(row(cells, y * width, width).stripTrailing());
      }
      return rows;
    }
  }

  /** The screen as one text. */
  public String screenText() {
    return String.join("\n", screen());
  }

  /** What has scrolled off the screen and the screen, without blank rows at its end. */
  public List<String> all() {
    synchronized (screen) {
      List<String> rows = new ArrayList<>();
      screen.getHistory().forEach(line -> rows.add(row(line, 0, line.length).stripTrailing()));
      rows.addAll(screen());
      while (!rows.isEmpty() && rows.get(rows.size() - 1).isEmpty()) {
        rows.remove(rows.size() - 1);
      }
      return rows;
    }
  }

  private static String row(long[] cells, int from, int width) {
    StringBuilder row = new StringBuilder();
    for (int x = from; x < from + width; x++) {
      int point = ScreenTerminal.cellCodePoint(cells[x]);
      row.appendCodePoint(point == 0 ? ' ' : point);
    }
    return row.toString();
  }

  /** All that was written, with its control characters. */
  public String raw() {
    synchronized (screen) {
      return raw.toString();
    }
  }

  Paddock resize(int columns, int rows) {
    synchronized (screen) {
      screen.setSize(Size.of(columns, rows));
      lastWritten = System.nanoTime();
    }
    ((PtyProcess) process).setWinSize(new WinSize(columns, rows));
    pause(2 * QUIET_MS);
    return settle();
  }

  /** Ends the input of a pipe. */
  Paddock endOfInput() {
    try {
      keyboard.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return this;
  }

  /** Whether the program has ended. */
  boolean ended() {
    return !process.isAlive();
  }

  /** Waits for the end of the program and returns its exit code. */
  int exit() {
    try {
      if (!process.waitFor(PATIENCE_MS, TimeUnit.MILLISECONDS)) {
        throw new AssertionError("still running; the screen was:\n" + String.join("\n", all()));
      }
      pump.join(2000);
      return process.exitValue();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError("interrupted", e);
    }
  }

  /** Sends the program a signal, as the terminal that it runs in does when it is closed. */
  void signal(String name) {
    try {
      new ProcessBuilder("kill", "-" + name, Long.toString(process.pid())).start().waitFor();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Ends the program as a flat battery would. */
  void kill() {
    ProcessHandle.of(process.pid()).ifPresent(ProcessHandle::destroyForcibly);
    exit();
  }

  @Override
  public void close() {
    ProcessHandle.of(process.pid()).ifPresent(ProcessHandle::destroyForcibly);
  }
}
