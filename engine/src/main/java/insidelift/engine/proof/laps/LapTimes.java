package insidelift.engine.proof.laps;

import insidelift.shared.situation.InputLimits;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The lap times of one run in driving order, the out-lap first.
 *
 * <p>A file holds one time a line, or columns {@code lap,time} divided by a comma, a semicolon or a
 * tab; a header is optional, and the columns may be named by the user. Times are {@code 62.345} or
 * {@code 1:02.345}; the decimal comma {@code 62,345} is read too, unless a comma stands between the
 * columns. Where a list may be either, it is refused. Blank lines and lines that start with {@code
 * #} are skipped.
 *
 * @param name what the run is called in messages: a file name, or a run of the logbook
 * @param laps the laps, numbered upward; a gap in the numbers is a lap that was not recorded
 */
public record LapTimes(String name, List<Lap> laps) {

  /**
   * One lap.
   *
   * @param number its number, from 0 to 9999
   * @param seconds its time in seconds, from 10 to 3600
   */
  public record Lap(int number, double seconds) {

    /**
     * @throws IllegalArgumentException if the number or the time is out of range
     */
    public Lap {
      if (number < 0 || number > LapLimits.LAP_NUMBER) {
        throw new IllegalArgumentException("a lap number must be from 0 to 9999: " + number);
      }
      if (!(seconds >= LapLimits.SHORTEST_SECONDS && seconds <= LapLimits.LONGEST_SECONDS)) {
        throw new IllegalArgumentException("a lap time must be from 10 to 3600 s: " + seconds);
      }
    }
  }

  /**
   * @throws IllegalArgumentException if there are more than 500 laps, or their numbers do not count
   *     upward
   */
  public LapTimes {
    Objects.requireNonNull(name, "name");
    laps = List.copyOf(laps);
    if (laps.size() > LapLimits.LAPS) {
      throw new IllegalArgumentException("a run has at most 500 laps: " + laps.size());
    }
    for (int i = 1; i < laps.size(); i++) {
      if (laps.get(i).number() <= laps.get(i - 1).number()) {
        throw new IllegalArgumentException(
            "lap numbers must count upward: " + laps.get(i).number());
      }
    }
  }

  /**
   * The run of these times, numbered from 1.
   *
   * @param name what the run is called
   * @param seconds the lap times in seconds, in driving order, the out-lap first
   * @throws IllegalArgumentException if a time is not from 10 to 3600 s, or there are too many
   */
  public static LapTimes of(String name, double... seconds) {
    List<Lap> laps = new ArrayList<>();
    for (double time : seconds) {
      laps.add(new Lap(laps.size() + 1, time));
    }
    return new LapTimes(name, laps);
  }

  /**
   * Reads times that were typed one after the other, with a decimal point or a decimal comma; the
   * laps are numbered from 1.
   *
   * @throws UnreadableLapTimes if one is no time from 10 to 3600 s, or may be two
   */
  public static LapTimes typed(String text) throws UnreadableLapTimes {
    return TypedTimes.read(text);
  }

  /**
   * Reads a file with the {@linkplain LapColumns#STANDARD standard columns}.
   *
   * @throws UnreadableLapTimes if the text is not lap times
   * @throws IOException if the file cannot be read at all
   */
  public static LapTimes read(Path file) throws UnreadableLapTimes, IOException {
    return read(file, LapColumns.STANDARD);
  }

  /**
   * Reads a file whose header names its columns.
   *
   * @throws UnreadableLapTimes if the text is not lap times
   * @throws IOException if the file cannot be read at all
   */
  public static LapTimes read(Path file, LapColumns columns)
      throws UnreadableLapTimes, IOException {
    Path leaf = file.getFileName();
    String name = leaf == null ? file.toString() : leaf.toString();
    try (InputStream in = Files.newInputStream(file)) {
      return read(name, in, columns);
    }
  }

  /**
   * Reads a stream to its end, or to the limit of one megabyte; the caller closes it.
   *
   * @param name what messages call the stream
   * @throws UnreadableLapTimes if the text is not lap times
   * @throws IOException if the stream fails
   */
  public static LapTimes read(String name, InputStream in, LapColumns columns)
      throws UnreadableLapTimes, IOException {
    byte[] bytes = in.readNBytes(InputLimits.MAX_LAP_BYTES + 1);
    return new LapTimesReader(name, columns).read(bytes);
  }
}
