package insidelift.console.terminal;

import insidelift.console.Launcher.Outcome;
import insidelift.console.start.Main;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The whole command line, run in this process: quicker than a launcher, and with the standard
 * streams as the program has them. The build names the data folder in the environment.
 */
public final class InProcess {

  /** The user's own folder in these runs. */
  public static final Path DATA =
      Path.of(System.getenv().getOrDefault("INSIDELIFT_DATA", "nowhere"));

  private InProcess() {}

  public static Outcome run(String... words) {
    PrintStream out = System.out;
    PrintStream err = System.err;
    InputStream in = System.in;
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    ByteArrayOutputStream complained = new ByteArrayOutputStream();
    try {
      System.setOut(new PrintStream(said, true, StandardCharsets.UTF_8));
      System.setErr(new PrintStream(complained, true, StandardCharsets.UTF_8));
      System.setIn(new ByteArrayInputStream(new byte[0]));
      int exit = Main.run(words);
      return new Outcome(
          exit, said.toString(Outputs.charset(out)), complained.toString(Outputs.charset(err)));
    } finally {
      System.setOut(out);
      System.setErr(err);
      System.setIn(in);
    }
  }

  /** Forgets everything that was kept. */
  public static void forget() {
    if (Files.notExists(DATA)) {
      return;
    }
    try (Stream<Path> all = Files.walk(DATA)) {
      List<Path> deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
      for (Path path : deepestFirst) {
        Files.delete(path);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
