package insidelift.engine.logbook.use;

import insidelift.engine.logbook.entry.RefusedEntryException;
import insidelift.engine.proof.laps.LapColumns;
import insidelift.engine.proof.laps.LapTimes;
import insidelift.engine.proof.laps.UnreadableLapTimes;
import insidelift.shared.situation.InputLimits;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Pattern;

/** Lap times for the logbook from a file, or as typed and pasted. */
public final class LapImport {

  private static final String PASTED = "pasted text";

  /** Times with spaces between them: a file has one time a line. */
  private static final Pattern IN_A_ROW = Pattern.compile("(?s).*\\d[;,]? +\\d.*");

  private LapImport() {}

  /**
   * Reads a file whose columns the user named.
   *
   * @throws UnreadableLapTimes if the text is not lap times
   * @throws IOException if the file cannot be read at all
   */
  public static LapTimes file(Path file, LapColumns columns)
      throws UnreadableLapTimes, IOException {
    return LapTimes.read(file, columns);
  }

  /**
   * Reads times typed one after the other, with spaces between them. They are never lap numbers.
   *
   * @throws UnreadableLapTimes if one is no lap time, or may be two
   */
  public static LapTimes typed(String text) throws UnreadableLapTimes {
    return LapTimes.typed(limited(text, "typed times"));
  }

  /**
   * Reads pasted text: what a file may hold, or times one after the other with spaces between them.
   *
   * @throws UnreadableLapTimes if the text is not lap times
   */
  public static LapTimes pasted(String text) throws UnreadableLapTimes {
    limited(text, PASTED);
    if (IN_A_ROW.matcher(text).matches() && text.chars().noneMatch(Character::isLetter)) {
      return LapTimes.typed(text);
    }
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    try {
      return LapTimes.read(PASTED, new ByteArrayInputStream(bytes), LapColumns.STANDARD);
    } catch (IOException e) {
      throw new UncheckedIOException("an array of bytes never fails", e);
    }
  }

  private static String limited(String text, String name) {
    if (text.length() > InputLimits.MAX_PASTED) {
      throw new RefusedEntryException(
          name, text.length() + " characters are too many; the most is " + InputLimits.MAX_PASTED);
    }
    return text;
  }
}
