package insidelift.engine.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/**
 * Makes folders and files that their owner alone may read, where the system knows owners: they hold
 * names, often of minors.
 */
public final class OwnFiles {

  private static final boolean OWNERS =
      FileSystems.getDefault().supportedFileAttributeViews().contains("posix");

  private OwnFiles() {}

  /** Makes a folder and those above it; those that are there already stay as they are. */
  public static void makeFolder(Path folder) throws IOException {
    Files.createDirectories(folder, attributes("rwx------"));
  }

  /** Opens a file, and makes it if the options say so. */
  public static FileChannel open(Path file, OpenOption... options) throws IOException {
    return FileChannel.open(file, Set.of(options), attributes("rw-------"));
  }

  /**
   * Writes a file, and returns when it is on the disk. The old one stays whole until then; a
   * failure leaves nothing beside it.
   */
  public static void replace(Path file, byte[] text) throws IOException {
    Path next = file.resolveSibling(file.getFileName() + ".next");
    // A new file of our own: never through a link that somebody left in its place.
    Files.deleteIfExists(next);
    try {
      create(next, text);
      Files.move(next, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(next);
    }
  }

  /** Writes a file that is not there yet, and returns when it is on the disk. */
  public static void create(Path file, byte[] text) throws IOException {
    try (FileChannel channel =
        open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer bytes = ByteBuffer.wrap(text);
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      channel.force(true);
    }
  }

  private static FileAttribute<?>[] attributes(String rights) {
    return OWNERS
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))
        }
        : new FileAttribute<?>[0];
  }
}
