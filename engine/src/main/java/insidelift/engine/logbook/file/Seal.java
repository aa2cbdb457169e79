package insidelift.engine.logbook.file;

import insidelift.engine.disk.OwnFiles;
import insidelift.shared.situation.InputLimits;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The number of the last line, kept beside the logbook: lines cut off at its end leave no other
 * trace. It is written after the line that it names is on the disk, so it may lag behind where the
 * machine stops, and never runs ahead.
 */
final class Seal {

  static final String FILE = "logbook.seal";

  private Seal() {}

  /** The number of the last line; 0 where no seal can be read. To be read before the logbook is. */
  static int read(Path folder) {
    Path file = folder.resolve(FILE);
    try {
      if (!Files.isRegularFile(file) || Files.size(file) > InputLimits.MAX_SEAL_BYTES) {
        return 0;
      }
      byte[] bytes = Files.readAllBytes(file);
      int end = bytes.length - 1;
      return LineFormat.intact(bytes, 0, end) ? LineFormat.number(bytes, 0, end).orElse(0) : 0;
    } catch (IOException e) {
      return 0;
    }
  }

  /** Names the last line. What is on the disk already is not put at risk for the seal's sake. */
  static void write(Path folder, int last, String at) {
    if (read(folder) == last) {
      return;
    }
    try {
      OwnFiles.replace(folder.resolve(FILE), LineFormat.seal(last, at));
    } catch (IOException e) {
      // The seal before it stands, which names a line that is there too.
      return;
    }
  }
}
