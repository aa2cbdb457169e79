package insidelift.engine.proof.laps;

import insidelift.engine.proof.laps.LapTimes.Lap;
import insidelift.shared.situation.Printable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Times typed one after the other. They are never lap numbers, so a comma between digits is a
 * decimal comma; only several commas in one word could be either.
 */
final class TypedTimes {

  static final String NAME = "typed times";

  private TypedTimes() {}

  static LapTimes read(String text) throws UnreadableLapTimes {
    List<Lap> laps = new ArrayList<>();
    for (String word : text.strip().split("[\\s;]+", -1)) {
      for (String time : times(word.endsWith(",") ? word.substring(0, word.length() - 1) : word)) {
        if (laps.size() == LapLimits.LAPS) {
          throw UnreadableLapTimes.inFile(NAME, "a run has at most 500 laps");
        }
        laps.add(new Lap(laps.size() + 1, seconds(time, laps.size() + 1)));
      }
    }
    if (laps.isEmpty()) {
      throw UnreadableLapTimes.inFile(NAME, "there are no lap times in them");
    }
    return new LapTimes(NAME, laps);
  }

  /** The times of one word: commas divide it where its times have points. */
  private static List<String> times(String word) throws UnreadableLapTimes {
    List<String> parts = Arrays.asList(word.split(",", -1));
    if (word.isEmpty()) {
      return List.of();
    }
    if (parts.size() == 1 || LapTimesReader.parse(word).isPresent()) {
      return List.of(word);
    }
    boolean times = parts.stream().allMatch(part -> LapTimesReader.parse(part).isPresent());
    if (times && word.indexOf('.') < 0 && parts.size() % 2 == 0) {
      List<String> decimals = new ArrayList<>();
      for (int i = 0; i < parts.size(); i += 2) {
        decimals.add(parts.get(i) + "." + parts.get(i + 1));
      }
      throw UnreadableLapTimes.inFile(
          NAME,
          "%s may be the times %s or the times %s; put spaces between them"
              .formatted(
                  Printable.quoted(word),
                  shown(String.join(", ", decimals)),
                  shown(String.join(", ", parts))));
    }
    return times ? parts : List.of(word);
  }

  private static String shown(String times) {
    return Printable.shown(times, 60);
  }

  private static double seconds(String time, int number) throws UnreadableLapTimes {
    OptionalDouble seconds = LapTimesReader.parse(time);
    if (seconds.isEmpty()) {
      throw UnreadableLapTimes.inFile(
          NAME,
          "time %d, %s, is not a lap time such as 62.345 or 62,345 or 1:02.345"
              .formatted(number, Printable.quoted(time)));
    }
    double value = seconds.getAsDouble();
    if (value < LapLimits.SHORTEST_SECONDS || value > LapLimits.LONGEST_SECONDS) {
      throw UnreadableLapTimes.inFile(
          NAME,
          "time %d, %s, is out of range: a lap takes from 10 s to 3600 s"
              .formatted(number, Printable.quoted(time)));
    }
    return value;
  }
}
