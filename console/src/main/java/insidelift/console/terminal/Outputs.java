package insidelift.console.terminal;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;

/** Standard output and standard error: in which encoding, and whether what was said arrived. */
public final class Outputs {

  private Outputs() {}

  /** The encoding of an output: what the terminal said when Java started, else the platform's. */
  public static Charset charset(PrintStream stream) {
    return encoding(stream == System.err ? "stderr.encoding" : "stdout.encoding");
  }

  private static Charset encoding(String property) {
    // Java 17 knows the property by its older name.
    String name = System.getProperty(property, System.getProperty("sun." + property, ""));
    return name.isEmpty() || !Charset.isSupported(name)
        ? Charset.defaultCharset()
        : Charset.forName(name);
  }

  /** A writer in that encoding, whose first word takes the line of {@link ProgressLine} away. */
  public static PrintWriter writer(PrintStream stream) {
    return new PrintWriter(
        new OutputStreamWriter(ProgressLine.before(stream), charset(stream)), true);
  }

  /** Whether all output reached its end; if not, that is said. */
  public static boolean arrived() {
    if (System.out.checkError() && !readerLeft()) {
      writer(System.err).println("insidelift: the output cannot be written; is the disk full?");
      return false;
    }
    return true;
  }

  /** Whether whoever read the output has gone, as {@code head} does: that is no fault of a disk. */
  private static boolean readerLeft() {
    try (FileOutputStream out = new FileOutputStream(FileDescriptor.out)) {
      out.write('\n');
      return false;
    } catch (IOException e) {
      return String.valueOf(e.getMessage()).contains("pipe");
    }
  }
}
