package insidelift.engine.disk;

import insidelift.shared.situation.InputLimits;
import insidelift.shared.situation.Printable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayDeque;
import java.util.Deque;

/** Folders and files as a writer needs them: made for good, and refused in plain words. */
public final class Disk {

  private static final int PATH_SHOWN = 200;

  private Disk() {}

  public static String shown(Path path) {
    return Printable.shown(path.toString(), PATH_SHOWN);
  }

  /** Why the system refused, in a few words. */
  public static String reason(IOException e) {
    if (e instanceof AccessDeniedException) {
      return "no permission";
    } else if (e instanceof NoSuchFileException) {
      return "there is no such file or folder";
    } else if (e instanceof FileAlreadyExistsException) {
      return "there is a file in its place";
    }
    String reason = e instanceof FileSystemException refused ? refused.getReason() : e.getMessage();
    return reason == null ? e.getClass().getSimpleName() : Printable.shown(reason, PATH_SHOWN);
  }

  /** Makes a folder and those above it, and returns when their names are on the disk. */
  public static void make(Path folder) throws IOException {
    Deque<Path> missing = new ArrayDeque<>();
    Path above = folder.toAbsolutePath();
    while (above != null && Files.notExists(above)) {
      missing.push(above);
      above = above.getParent();
    }
    OwnFiles.makeFolder(folder);
    for (Path made : missing) {
      forceNames(made.getParent());
    }
  }

  /** Returns when the names in a folder are on the disk, where the system can tell. */
  public static void forceNames(Path folder) throws IOException {
    if (folder == null) {
      return;
    }
    FileChannel names;
    try {
      names = FileChannel.open(folder, StandardOpenOption.READ);
    } catch (IOException e) {
      // Windows opens no folder; there the journal of the file system keeps names.
      return;
    }
    try (names) {
      names.force(true);
    }
  }

  /**
   * All bytes of a file, or none if there is no such file; a pipe or a device is not waited for.
   */
  public static byte[] read(Path file) throws IOException, LogbookProblem {
    if (Files.notExists(file)) {
      return new byte[0];
    }
    if (!Files.isRegularFile(file)) {
      throw new LogbookProblem(shown(file) + " is no ordinary file; move it away");
    }
    if (Files.size(file) > InputLimits.MAX_LOG_BYTES) {
      throw new LogbookProblem(
          shown(file)
              + " is larger than "
              + InputLimits.MAX_LOG_BYTES / (1024 * 1024)
              + " MB, which no logbook is");
    }
    return Files.readAllBytes(file);
  }
}
