package insidelift.engine.disk;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.locks.LockSupport;

/**
 * The right to write to a folder's logbook. The system takes it back when the program ends, however
 * it ends.
 */
public final class Lock implements Closeable {

  static final String FILE = "logbook.lock";

  /**
   * A writer holds it for some hundredths of a second, but a busy machine may let it wait for long.
   */
  public static final Duration PATIENCE = Duration.ofSeconds(60);

  private static final Duration WORD_AFTER = Duration.ofSeconds(1);
  private static final long PAUSE_NANOS = 5_000_000;

  /**
   * The folders locked by this program. Asking the system is not enough: on Unix, closing any
   * channel of a file gives up every lock that the program holds on it.
   */
  private static final Set<Path> HELD = new HashSet<>();

  private final Path folder;
  private final FileChannel channel;

  private Lock(Path folder, FileChannel channel) {
    this.folder = folder;
    this.channel = channel;
  }

  /**
   * The right to write to the logbook of a folder that is there.
   *
   * @param patience how long to wait while another writer has it
   * @param waiting told once, when that has taken a second
   */
  public static Lock take(Path folder, Duration patience, Runnable waiting)
      throws IOException, LogbookProblem {
    Path real = folder.toRealPath();
    Path file = real.resolve(FILE);
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)
        && !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      // Whoever opens a pipe waits for ever.
      throw new LogbookProblem(Disk.shown(file) + " is no ordinary file; move it away");
    }
    long begun = System.nanoTime();
    boolean said = false;
    while (true) {
      Lock lock = tried(real, file);
      if (lock != null) {
        return lock;
      }
      long waited = System.nanoTime() - begun;
      if (waited >= patience.toNanos()) {
        throw new LogbookProblem(
            "another Insidelift is writing to the logbook in "
                + Disk.shown(folder)
                + ": close it, or wait until it is done, and try again");
      }
      if (!said && waited >= WORD_AFTER.toNanos()) {
        said = true;
        waiting.run();
      }
      LockSupport.parkNanos(PAUSE_NANOS);
    }
  }

  /** The right, or null while another writer has it. */
  private static Lock tried(Path folder, Path file) throws IOException {
    synchronized (HELD) {
      if (HELD.contains(folder)) {
        return null;
      }
      FileChannel channel =
          OwnFiles.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      boolean locked = false;
      try {
        locked = channel.tryLock() != null;
      } finally {
        if (!locked) {
          channel.close();
        }
      }
      if (!locked) {
        return null;
      }
      HELD.add(folder);
      return new Lock(folder, channel);
    }
  }

  @Override
  public void close() throws IOException {
    synchronized (HELD) {
      channel.close();
      HELD.remove(folder);
    }
  }
}
