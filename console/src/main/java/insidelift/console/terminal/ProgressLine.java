package insidelift.console.terminal;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.util.Map;
import java.util.function.BooleanSupplier;
import org.jline.terminal.spi.SystemStream;

/**
 * One line on standard error while something takes longer than a second: what is being done, and
 * for how long. It is erased before anything else is said. Nobody but a terminal gets it; one that
 * cannot go back in its line, or that is read aloud, gets it once and it stays.
 */
public final class ProgressLine {

  /** Where a line can be shown. */
  enum Place {
    /** Nobody watches. */
    NOWHERE,
    /** A terminal that only goes forward, or a screen reader. */
    FORWARD,
    /** A terminal that can write a line anew. */
    TERMINAL
  }

  /** What takes less needs no word. */
  private static final long PATIENCE_MILLIS = 1000;

  // There is one standard error, so there is one line.
  private static ProgressLine shown;

  private final String doing;
  private final PrintStream err;
  private final Map<String, String> environment;
  private final BooleanSupplier terminal;
  private Place place;
  private int width;
  private boolean done;

  ProgressLine(
      String doing, PrintStream err, Map<String, String> environment, BooleanSupplier terminal) {
    this.doing = doing;
    this.err = err;
    this.environment = environment;
    this.terminal = terminal;
  }

  /**
   * Begins something that may take long; it is over with {@link #end()}, and with the first word on
   * an output.
   *
   * @param doing what, as in {@code Working}
   */
  public static synchronized ProgressLine begin(String doing) {
    end();
    ProgressLine begun =
        new ProgressLine(doing, System.err, System.getenv(), ProgressLine::shownOnATerminal);
    shown = begun;
    Thread clock = new Thread(begun::count, "progress");
    clock.setDaemon(true);
    clock.start();
    return begun;
  }

  /**
   * Whether somebody reads the messages. Where the launcher has said so, the terminal library need
   * not unpack a native library for it, which would stay in the system's temporary folder.
   */
  private static boolean shownOnATerminal() {
    String said = System.getProperty("insidelift.errors", "");
    return said.isEmpty()
        ? TerminalLibrary.isTerminal(SystemStream.Error)
        : said.equals("terminal");
  }

  /** Erases the line, if one is shown. */
  public static synchronized void end() {
    if (shown != null) {
      shown.close();
      shown = null;
    }
  }

  /** An output whose first byte erases the line. */
  static OutputStream before(OutputStream output) {
    return new FilterOutputStream(output) {
      @Override
      public void write(int b) throws IOException {
        end();
        out.write(b);
      }

      @Override
      public void write(byte[] bytes, int from, int length) throws IOException {
        end();
        out.write(bytes, from, length);
      }
    };
  }

  private void count() {
    try {
      for (int seconds = 1; ; seconds++) {
        Thread.sleep(PATIENCE_MILLIS);
        if (!tick(seconds)) {
          return;
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Draws the line; false if there is nothing more to draw. */
  synchronized boolean tick(int seconds) {
    if (done) {
      return false;
    }
    if (place == null) {
      place = place();
    }
    if (place == Place.TERMINAL) {
      String line = "%s ... %d s".formatted(doing, seconds);
      width = line.length();
      err.print('\r' + line);
      err.flush();
    } else if (place == Place.FORWARD) {
      err.println(doing + " ...");
      err.flush();
    }
    return place == Place.TERMINAL;
  }

  private Place place() {
    if (!terminal.getAsBoolean()) {
      return Place.NOWHERE;
    }
    boolean forward =
        "dumb".equals(environment.get("TERM"))
            || !environment.getOrDefault("ACCESSIBLE", "").isEmpty();
    return forward ? Place.FORWARD : Place.TERMINAL;
  }

  /** Takes the line away; there is none after it. */
  synchronized void close() {
    if (!done && width > 0) {
      err.print('\r' + " ".repeat(width) + '\r');
      err.flush();
    }
    done = true;
  }
}
