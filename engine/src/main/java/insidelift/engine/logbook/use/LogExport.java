package insidelift.engine.logbook.use;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.logbook.entry.AdviceTaken;
import insidelift.engine.logbook.entry.BaselineEntry;
import insidelift.engine.logbook.entry.Correction;
import insidelift.engine.logbook.entry.DayEntry;
import insidelift.engine.logbook.entry.Entry;
import insidelift.engine.logbook.entry.Pressures;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.file.Line;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.Numbered;
import insidelift.engine.logbook.json.EntryJson;
import insidelift.engine.proof.laps.LapTimes.Lap;
import insidelift.shared.Degrees;
import insidelift.shared.casefile.JsonOutput;
import insidelift.shared.situation.Eccentrics;
import insidelift.shared.situation.EdgeTemperatures;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** All of a logbook for other programs, with corrections applied, and the corrections beside it. */
public final class LogExport {

  /** The version of the JSON export's shape. */
  public static final int SCHEMA = 1;

  private LogExport() {}

  /**
   * The whole as one JSON object: {@code karts}, {@code drivers}, {@code tracks}, {@code days},
   * {@code runs} and {@code baselines} as they stand, {@code asWritten} every line as it was first
   * written, corrections among them, and {@code notices} where the file has damage.
   */
  public static String json(Logbook book) {
    ObjectNode all = EntryJson.object().put("schema", SCHEMA);
    put(all, "karts", book.karts());
    put(all, "drivers", book.drivers());
    put(all, "tracks", book.tracks());
    put(all, "days", book.days());
    put(all, "runs", book.runs());
    put(all, "baselines", book.baselines());
    ArrayNode lines = all.putArray("asWritten");
    for (Line line : book.lines()) {
      lines
          .addObject()
          .put("record", line.number())
          .put("at", line.at())
          .put("kind", EntryJson.kind(line.held().kind()))
          .set("entry", EntryJson.write(line.entry()));
    }
    ArrayNode notices = all.putArray("notices");
    book.notices().forEach(notice -> notices.add(notice.sentence()));
    return JsonOutput.pretty(all);
  }

  private static void put(
      ObjectNode all, String key, List<? extends Numbered<? extends Entry>> entries) {
    ArrayNode list = all.putArray(key);
    for (Numbered<? extends Entry> numbered : entries) {
      ObjectNode json = list.addObject().put("record", numbered.number());
      json.put("corrected", numbered.corrected());
      json.setAll(EntryJson.write(numbered.entry()));
    }
  }

  /**
   * The whole as CSV tables by file name: {@code karts.csv}, {@code drivers.csv}, {@code
   * tracks.csv}, {@code days.csv}, {@code runs.csv}, {@code laps.csv}, {@code advice.csv} and
   * {@code corrections.csv}, all joined by record numbers. A text that a spreadsheet would take for
   * a formula has an apostrophe before it.
   */
  public static Map<String, String> csv(Logbook book) {
    Map<String, String> files = new LinkedHashMap<>();
    Csv karts = new Csv("kart", "name", "answers", "note", "corrected");
    book.karts()
        .forEach(k -> karts.row(named(k, k.entry().name(), k.entry().answers(), k.entry().note())));
    files.put("karts.csv", karts.toString());
    Csv drivers = new Csv("driver", "name", "answers", "note", "corrected");
    book.drivers()
        .forEach(
            d -> drivers.row(named(d, d.entry().name(), d.entry().answers(), d.entry().note())));
    files.put("drivers.csv", drivers.toString());
    Csv tracks = new Csv("track", "name", "answers", "note", "corrected");
    book.tracks()
        .forEach(
            t -> tracks.row(named(t, t.entry().name(), t.entry().answers(), t.entry().note())));
    files.put("tracks.csv", tracks.toString());
    Csv days = new Csv("day", "date", "track", "note", "corrected");
    for (Numbered<DayEntry> day : book.days()) {
      DayEntry entry = day.entry();
      days.row(List.of(day.number(), entry.date(), entry.track(), entry.note(), day.corrected()));
    }
    files.put("days.csv", days.toString());
    files.put("runs.csv", runs(book).toString());
    files.put("baselines.csv", baselines(book).toString());
    files.put("laps.csv", laps(book).toString());
    files.put("advice.csv", advice(book).toString());
    files.put("corrections.csv", corrections(book).toString());
    return files;
  }

  private static List<?> named(
      Numbered<?> numbered, String name, Map<String, String> answers, String note) {
    return List.of(numbered.number(), name, words(answers), note, numbered.corrected());
  }

  private static Csv baselines(Logbook book) {
    Csv csv = new Csv("baseline", "kart", "for", "run", "kept", "corrected");
    for (Numbered<BaselineEntry> one : book.baselines()) {
      csv.row(
          List.of(
              one.number(),
              one.entry().kart(),
              one.entry().condition(),
              one.entry().run().map(String::valueOf).orElse(""),
              EntryJson.write(one.entry()).get("kept").toString(),
              one.corrected()));
    }
    return csv;
  }

  private static Csv runs(Logbook book) {
    Csv csv =
        new Csv(
            "run",
            "day",
            "date",
            "kart",
            "driver",
            "runOfDay",
            "camberLeft",
            "camberRight",
            "casterLeft",
            "casterRight",
            "casterIs",
            "neutralCaster",
            "camberPerPosition",
            "casterPerPosition",
            "washers",
            "positionsNow",
            "geometry",
            "answers",
            "numbers",
            "unknown",
            "settings",
            "coldFrontLeft",
            "coldFrontRight",
            "coldRearLeft",
            "coldRearRight",
            "hotFrontLeft",
            "hotFrontRight",
            "hotRearLeft",
            "hotRearRight",
            "leftInner",
            "leftMiddle",
            "leftOuter",
            "rightInner",
            "rightMiddle",
            "rightOuter",
            "feel",
            "said",
            "corrected");
    for (Numbered<RunEntry> numbered : book.runs()) {
      RunEntry run = numbered.entry();
      Kart kart = run.situation().kart();
      List<Object> cells = new ArrayList<>();
      cells.addAll(List.of(numbered.number(), run.day(), book.day(run.day()).date()));
      cells.addAll(List.of(run.kart(), run.driver(), run.runOfDay()));
      cells.addAll(sides(kart.camber()));
      cells.addAll(sides(kart.caster()));
      cells.add(kart.absolute() ? "absolute" : "neutral");
      cells.add(kart.neutral().<Object>map(Degrees::value).orElse(""));
      Eccentrics eccentrics = kart.eccentrics();
      cells.add(degrees(eccentrics.camberPerPosition()));
      cells.add(degrees(eccentrics.casterPerPosition()));
      cells.add(Objects.toString(eccentrics.washers(), ""));
      cells.add(Objects.toString(eccentrics.now(), ""));
      cells.add(kart.geometry().map(Object::toString).orElse(""));
      cells.add(words(run.situation().answers()));
      cells.add(words(run.situation().numbers()));
      cells.add(String.join("; ", run.situation().declined()));
      cells.add(words(run.settings()));
      cells.addAll(bar(run.tyres().cold()));
      cells.addAll(bar(run.tyres().hot()));
      cells.addAll(celsius(run.tyres().left()));
      cells.addAll(celsius(run.tyres().right()));
      cells.addAll(List.of(run.feel().id(), run.said(), numbered.corrected()));
      csv.row(cells);
    }
    return csv;
  }

  private static Csv laps(Logbook book) {
    Csv csv = new Csv("run", "lap", "seconds");
    for (Numbered<RunEntry> run : book.runs()) {
      for (Lap lap : run.entry().laps()) {
        csv.row(List.of(run.number(), lap.number(), lap.seconds()));
      }
    }
    return csv;
  }

  private static Csv advice(Logbook book) {
    Csv csv = new Csv("run", "lever", "direction", "degrees", "claim", "taken", "reason");
    for (Numbered<RunEntry> run : book.runs()) {
      for (AdviceTaken decision : run.entry().advice()) {
        csv.row(
            List.of(
                run.number(),
                decision.lever().id(),
                decision.direction().id(),
                decision.degrees(),
                decision.claim(),
                decision.taken(),
                decision.reason()));
      }
    }
    return csv;
  }

  private static Csv corrections(Logbook book) {
    Csv csv = new Csv("correction", "at", "of", "kind", "reason");
    for (Line line : book.lines()) {
      if (line.entry() instanceof Correction correction) {
        String kind =
            correction.now().map(now -> EntryJson.kind(now.getClass())).orElse("withdrawn");
        csv.row(List.of(line.number(), line.at(), correction.of(), kind, correction.reason()));
      }
    }
    return csv;
  }

  private static String words(Map<String, ?> words) {
    return words.entrySet().stream()
        .map(word -> word.getKey() + "=" + word.getValue())
        .sorted()
        .collect(Collectors.joining("; "));
  }

  private static Object degrees(Degrees known) {
    return known == null ? "" : known.value();
  }

  private static List<?> sides(Optional<Sides> sides) {
    return sides.isPresent()
        ? List.of(sides.get().left().value(), sides.get().right().value())
        : List.of("", "");
  }

  private static List<?> bar(Optional<Pressures> bar) {
    return bar.isPresent()
        ? List.of(
            bar.get().frontLeft(),
            bar.get().frontRight(),
            bar.get().rearLeft(),
            bar.get().rearRight())
        : List.of("", "", "", "");
  }

  private static List<?> celsius(Optional<EdgeTemperatures> tread) {
    return tread.isPresent()
        ? List.of(tread.get().inner(), tread.get().middle(), tread.get().outer())
        : List.of("", "", "");
  }
}
