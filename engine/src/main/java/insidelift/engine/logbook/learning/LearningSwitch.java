package insidelift.engine.logbook.learning;

import insidelift.engine.disk.Disk;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.disk.OwnFiles;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Whether the advisor may learn from the log: it may, until the user switches it off. */
public final class LearningSwitch {

  private static final String FILE = "learning.off";

  private static final String WORDS =
      "While this file is here, advice does not learn from the log.\n";

  private LearningSwitch() {}

  /** Whether learning is on for the log of a folder. */
  public static boolean isOn(Path folder) {
    return Files.notExists(folder.resolve(FILE));
  }

  /**
   * Switches learning on or off, for good. The log itself stays as it is.
   *
   * @throws LogbookProblem if the disk refuses
   */
  public static void set(Path folder, boolean on) throws LogbookProblem {
    Path file = folder.resolve(FILE);
    try {
      if (on) {
        Files.deleteIfExists(file);
      } else {
        Disk.make(folder);
        OwnFiles.replace(file, WORDS.getBytes(StandardCharsets.UTF_8));
      }
      if (Files.isDirectory(folder)) {
        Disk.forceNames(folder);
      }
    } catch (IOException e) {
      throw new LogbookProblem(Disk.shown(file) + " cannot be changed (" + Disk.reason(e) + ")", e);
    }
  }
}
