package insidelift.console;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/** The packaged launcher, run as a user runs it: as a process of its own. */
public final class Launcher {

  /** The folder of this module; the build runs the tests in it. */
  public static final Path CONSOLE = Path.of("").toAbsolutePath();

  /** What a run came to. */
  public record Outcome(int exit, String out, String err) {}

  private final List<String> command;
  private final Map<String, String> environment = new LinkedHashMap<>(System.getenv());
  private Path folder = CONSOLE;
  private byte[] input = new byte[0];

  private Launcher(List<String> command) {
    this.command = command;
    // Messages do not depend on where and for whom the tests run.
    List.of("LC_ALL", "LANG", "NO_COLOR", "ACCESSIBLE", "INSIDELIFT_DATA", "JAVA_TOOL_OPTIONS")
        .forEach(environment::remove);
    environment.put("LC_ALL", "C.UTF-8");
  }

  /** The launcher with these words behind it. */
  public static Launcher with(String... words) {
    return at(CONSOLE.resolve("insidelift"), words);
  }

  /** A launcher at another place. */
  static Launcher at(Path launcher, String... words) {
    List<String> command = new ArrayList<>(List.of(launcher.toString()));
    command.addAll(List.of(words));
    return new Launcher(command);
  }

  /** A line for the shell. */
  public static Launcher shell(String line) {
    return new Launcher(List.of("sh", "-c", line));
  }

  public Launcher from(Path where) {
    folder = where;
    return this;
  }

  public Launcher set(String name, String value) {
    environment.put(name, value);
    return this;
  }

  Launcher unset(String name) {
    environment.remove(name);
    return this;
  }

  public Launcher typing(String text) {
    input = text.getBytes(StandardCharsets.UTF_8);
    return this;
  }

  /** Runs it to its end. */
  public Outcome run() {
    ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
    builder.environment().clear();
    builder.environment().putAll(environment);
    try {
      Process process = builder.start();
      CompletableFuture<String> out = all(process.getInputStream());
      CompletableFuture<String> err = all(process.getErrorStream());
      try (var stdin = process.getOutputStream()) {
        stdin.write(input);
      } catch (IOException e) {
        // A program that refuses its arguments ends without reading: that is its right.
        if (input.length == 0) {
          throw e;
        }
      }
      if (!process.waitFor(60, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        throw new AssertionError("still running after a minute: " + command);
      }
      return new Outcome(process.exitValue(), out.join(), err.join());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError("interrupted: " + command, e);
    }
  }

  private static CompletableFuture<String> all(InputStream in) {
    return CompletableFuture.supplyAsync(
        () -> {
          try {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        });
  }

  /** A file of that content in a folder. */
  public static Path file(Path folder, String name, String content) {
    try {
      return Files.writeString(folder.resolve(name), content);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
