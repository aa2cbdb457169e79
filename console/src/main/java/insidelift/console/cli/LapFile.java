package insidelift.console.cli;

import insidelift.engine.logbook.use.LapImport;
import insidelift.engine.proof.laps.LapColumns;
import insidelift.engine.proof.laps.LapTimes;
import insidelift.engine.proof.laps.UnreadableLapTimes;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.InputLimits;
import insidelift.shared.situation.Printable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** Lap times from a file that the user named, or from standard input for {@code -}. */
public final class LapFile {

  private static final String INPUT = "standard input";

  private LapFile() {}

  /**
   * Reads them.
   *
   * @throws UnreadableLapTimes if they are no lap times
   * @throws CaseProblem if the file cannot be read at all; the message names it
   */
  public static LapTimes read(String name, LapColumns columns)
      throws UnreadableLapTimes, CaseProblem {
    boolean pasted = name.equals("-") && columns.equals(LapColumns.STANDARD);
    Outcome outcome;
    try {
      outcome = InputFile.read(name, in -> pasted ? pasted(in) : columned(name, in, columns));
    } catch (CaseProblem e) {
      throw new CaseProblem(Printable.shown(name, 200) + ": " + e.getMessage());
    }
    return outcome.laps();
  }

  private static Outcome pasted(InputStream in) throws IOException {
    String text = new String(in.readNBytes(InputLimits.MAX_LAP_BYTES + 1), StandardCharsets.UTF_8);
    return () -> LapImport.pasted(text);
  }

  private static Outcome columned(String name, InputStream in, LapColumns columns)
      throws IOException {
    String shown = name.equals("-") ? INPUT : leaf(name);
    try {
      LapTimes laps = LapTimes.read(shown, in, columns);
      return () -> laps;
    } catch (UnreadableLapTimes e) {
      return () -> {
        throw e;
      };
    }
  }

  /** The laps, or what is wrong with them. */
  private interface Outcome {
    LapTimes laps() throws UnreadableLapTimes;
  }

  private static String leaf(String name) {
    java.nio.file.Path leaf = java.nio.file.Path.of(name).getFileName();
    return leaf == null ? name : leaf.toString();
  }
}
