package insidelift.engine.logbook;

import insidelift.engine.proof.LapColumns;
import insidelift.engine.proof.LapTimes;
import insidelift.engine.proof.UnreadableLapTimes;
import insidelift.shared.situation.InputLimits;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** Lap times for the logbook from a file, or as typed and pasted. */
public final class LapImport {

  private static final String PASTED = "pasted text";
  private static final Pattern TIME = Pattern.compile("(?:\\d{1,2}:)?\\d{1,4}(?:[.,]\\d{1,6})?");

  /**
   * Nobody writes whole seconds with three digits, so three digits after a comma are thousandths.
   */
  private static final Pattern THOUSANDTHS = Pattern.compile("(?:\\d{1,2}:)?\\d{1,4},\\d{3}");

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
   * Reads typed or pasted text: what a file may hold, or times one after the other with spaces
   * between them. The decimal comma is understood where every time has thousandths, as in {@code
   * 62,345 1:02,118}.
   *
   * @throws UnreadableLapTimes if the text is not lap times
   */
  public static LapTimes pasted(String text) throws UnreadableLapTimes {
    if (text.length() > InputLimits.MAX_PASTED) {
      throw new RefusedEntryException(
          PASTED,
          text.length() + " characters are too many; the most is " + InputLimits.MAX_PASTED);
    }
    byte[] bytes = list(text).getBytes(StandardCharsets.UTF_8);
    try {
      return LapTimes.read(PASTED, new ByteArrayInputStream(bytes), LapColumns.STANDARD);
    } catch (IOException e) {
      throw new UncheckedIOException("an array of bytes never fails", e);
    }
  }

  /** One time a line with a decimal point, if the text is a row of times; else as it is. */
  private static String list(String text) {
    List<String> times =
        Arrays.stream(text.strip().split("[ \\r\\n]+", -1))
            .filter(Predicate.not(String::isEmpty))
            .toList();
    if (times.isEmpty() || !times.stream().allMatch(TIME.asMatchPredicate())) {
      return text;
    }
    String lines = String.join("\n", times);
    return times.stream().allMatch(THOUSANDTHS.asMatchPredicate())
        ? lines.replace(',', '.')
        : lines;
  }
}
