package insidelift.engine.logbook.use;

import com.fasterxml.jackson.databind.JsonNode;
import insidelift.engine.logbook.entry.DayEntry;
import insidelift.engine.logbook.entry.LogLimits;
import insidelift.engine.logbook.entry.Plain;
import insidelift.engine.logbook.entry.Pressures;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.shared.Vocabulary;
import insidelift.shared.situation.Baseline;
import insidelift.shared.situation.Baseline.Measured;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What a run tells of a setting that is worth keeping. */
public final class GoodRun {

  private GoodRun() {}

  /** The condition that a run was driven in; empty if the water was not told. */
  public static Optional<String> condition(RunEntry run) {
    return run.situation().answer("water").map(water -> water.equals("dry") ? "dry" : "wet");
  }

  /**
   * The setting of a run: its readings, those of its other settings that are named as a lever of
   * the vocabulary is, its pressures, its place and its day.
   */
  public static Baseline baseline(Logbook book, RunEntry run, Vocabulary vocabulary) {
    Map<String, String> levers = new LinkedHashMap<>();
    run.settings()
        .forEach(
            (name, value) ->
                vocabulary
                    .lever(name.strip().toLowerCase(Locale.ROOT).replace(' ', '-'))
                    .filter(lever -> lever.most() != null && !lever.id().equals("toe"))
                    .ifPresent(lever -> levers.put(lever.id(), value)));
    DayEntry day = book.day(run.day());
    Map<String, String> noted = new LinkedHashMap<>();
    run.tyres().cold().ifPresent(cold -> noted.put("cold", bar(cold)));
    run.tyres().hot().ifPresent(hot -> noted.put("hot", bar(hot)));
    washers(run.situation().kart().eccentrics().now())
        .ifPresent(marks -> noted.put("washers", marks));
    noted.put("date", day.date().toString());
    // A name may be longer than a line of the sheet.
    noted.put("track", Plain.cut(book.name(day.track()), LogLimits.WORD));
    run.situation().answer("air").ifPresent(air -> noted.put("weather", air));
    return new Baseline(
        new Measured(run.situation().kart().front(), Optional.empty()),
        Measured.UNKNOWN,
        levers,
        noted);
  }

  private static String bar(Pressures of) {
    String front = pair(of.frontLeft(), of.frontRight());
    String rear = pair(of.rearLeft(), of.rearRight());
    return front.equals(rear) ? front + " bar" : "front %s, rear %s bar".formatted(front, rear);
  }

  private static String pair(double left, double right) {
    return left == right ? Plain.number(left) : Plain.number(left) + "/" + Plain.number(right);
  }

  /** The marks of the washers, side by side; empty where they are not told or do not fit. */
  private static Optional<String> washers(JsonNode now) {
    List<String> marks = new ArrayList<>();
    if (now != null) {
      for (Map.Entry<String, JsonNode> side : now.properties()) {
        for (Map.Entry<String, JsonNode> pivot : side.getValue().properties()) {
          marks.add("%s %s %s".formatted(side.getKey(), pivot.getKey(), pivot.getValue().asText()));
        }
      }
    }
    String text = String.join(", ", marks);
    return text.isEmpty() || text.length() > LogLimits.WORD ? Optional.empty() : Optional.of(text);
  }
}
