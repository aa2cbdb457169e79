package insidelift.engine.logbook;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.Set;

/**
 * The right to write to a folder's logbook. The system takes it back when the program ends, however
 * it ends.
 */
final class Lock implements Closeable {

  static final String FILE = "logbook.lock";

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

  /** The right to write to the logbook of a folder that is there. */
  static Lock take(Path folder) throws IOException, LogbookProblem {
    Path real = folder.toRealPath();
    synchronized (HELD) {
      if (HELD.contains(real)) {
        throw taken(folder);
      }
      FileChannel channel =
          FileChannel.open(real.resolve(FILE), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      boolean locked = false;
      try {
        locked = channel.tryLock() != null;
      } finally {
        if (!locked) {
          channel.close();
        }
      }
      if (!locked) {
        throw taken(folder);
      }
      HELD.add(real);
      return new Lock(real, channel);
    }
  }

  private static LogbookProblem taken(Path folder) {
    return new LogbookProblem(
        "another Insidelift is writing to the logbook in "
            + Disk.shown(folder)
            + ": close it, or wait until it is done, and try again");
  }

  @Override
  public void close() throws IOException {
    synchronized (HELD) {
      channel.close();
      HELD.remove(folder);
    }
  }
}
