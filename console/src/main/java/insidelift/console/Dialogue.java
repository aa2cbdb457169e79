package insidelift.console;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;

/** A conversation by lines, on any terminal and from a pipe. */
final class Dialogue implements AutoCloseable {

  /** The user left: by Ctrl-C, or by the end of the input. */
  static final class Left extends Exception {
    private static final long serialVersionUID = 1L;

    private final boolean interrupted;

    Left(boolean interrupted) {
      super(interrupted ? "left by Ctrl-C" : "left at the end of the input");
      this.interrupted = interrupted;
    }

    boolean interrupted() {
      return interrupted;
    }
  }

  private final Terminal terminal;
  private final LineReader reader;

  private Dialogue(Terminal terminal) {
    this.terminal = terminal;
    this.reader =
        LineReaderBuilder.builder()
            .terminal(terminal)
            .appName("insidelift")
            .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
            .option(LineReader.Option.BRACKETED_PASTE, false)
            .variable(LineReader.DISABLE_COMPLETION, true)
            .build();
  }

  /** Opens the terminal that the program runs in, or the pipe where there is none. */
  static Dialogue open() throws IOException {
    return new Dialogue(
        TerminalBuilder.builder().system(true).dumb(true).graphemeCluster(false).build());
  }

  /** The width to write for: what the terminal says, within reason. */
  int width() {
    int width = terminal.getSize().getColumns();
    return width <= 0 ? Text.WIDTH : Math.min(width, 100);
  }

  void say(List<String> lines) {
    PrintWriter out = terminal.writer();
    lines.forEach(out::println);
    out.flush();
  }

  /** Asks for one line. */
  String ask(String prompt) throws Left {
    try {
      return reader.readLine(prompt).strip();
    } catch (UserInterruptException e) {
      throw new Left(true);
    } catch (EndOfFileException e) {
      throw new Left(false);
    }
  }

  @Override
  public void close() throws IOException {
    terminal.close();
  }
}
