package insidelift.console.terminal;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.jline.terminal.spi.SystemStream;
import org.jline.terminal.spi.TerminalProvider;
import org.jline.utils.InfoCmp;

/**
 * What the terminal library is told so that it asks the system itself. Left alone it starts two
 * programs before the first question, one to see whether there is a terminal and one to learn what
 * the terminal can do, and each takes as long as the question does.
 */
public final class TerminalLibrary {

  /** Asks the system. */
  private static final String NATIVE = "jni";

  /** Starts a program for every question. */
  private static final String PROGRAMS = "exec";

  /**
   * What is loaded only where there really is a terminal. A rehearsal has none, and what it does
   * not load is not kept ready.
   */
  private static final List<String> ONLY_ON_A_TERMINAL =
      List.of(
          "org.jline.terminal.impl.AbstractUnixSysTerminal",
          "org.jline.terminal.impl.jni.JniUnixSysTerminal",
          "org.jline.terminal.impl.SignalInterceptingInputStream",
          "org.jline.utils.FastBufferedOutputStream",
          "org.jline.utils.ShutdownHooks",
          "org.jline.utils.ShutdownHooks$Task",
          "org.jline.utils.Signals");

  private TerminalLibrary() {}

  /**
   * The terminal of that type that the program runs in; a dumb one where input or output is none.
   *
   * @throws IOException if there is none to be had
   */
  static Terminal open(String type, Charset charset) throws IOException {
    use(type);
    return builder().system(true).dumb(true).encoding(charset).build();
  }

  /** A terminal that nobody sees, on which these keys are pressed. */
  static Terminal rehearsed(String pressed, Size size) throws IOException {
    return builder()
        .system(false)
        .streams(
            new ByteArrayInputStream(pressed.getBytes(StandardCharsets.US_ASCII)),
            OutputStream.nullOutputStream())
        .type("xterm")
        .size(size)
        .encoding(StandardCharsets.UTF_8)
        .build();
  }

  /** A builder of terminals that starts programs only where the system cannot be asked. */
  private static TerminalBuilder builder() {
    boolean asks = ask(SystemStream.Output).isPresent();
    return TerminalBuilder.builder()
        .providers(asks ? NATIVE : PROGRAMS)
        .jni(asks)
        .exec(!asks)
        .graphemeCluster(false);
  }

  /** Whether that stream is a terminal; false if the system cannot be asked. */
  static boolean isTerminal(SystemStream stream) {
    return ask(stream).orElse(false);
  }

  private static Optional<Boolean> ask(SystemStream stream) {
    try {
      return Optional.of(TerminalProvider.load(NATIVE).isSystemStream(stream));
    } catch (IOException | RuntimeException | LinkageError e) {
      return Optional.empty();
    }
  }

  /** Takes what the library itself knows about a type of terminal, if it knows the type. */
  private static void use(String type) {
    if (InfoCmp.getDefaultInfoCmp(type) != null) {
      InfoCmp.setLoadedInfoCmp(type, () -> InfoCmp.getDefaultInfoCmp(type));
    }
  }

  /** Loads what no rehearsal would. */
  public static void rehearse() {
    for (String name : ONLY_ON_A_TERMINAL) {
      try {
        Class.forName(name, false, TerminalLibrary.class.getClassLoader());
      } catch (ClassNotFoundException | LinkageError e) {
        // Another version of the library, or another system, has other classes.
      }
    }
  }
}
