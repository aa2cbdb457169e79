package insidelift.engine.logbook.json;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.logbook.entry.AttemptEntry;
import insidelift.engine.logbook.entry.BaselineEntry;
import insidelift.engine.logbook.entry.Correction;
import insidelift.engine.logbook.entry.DayEntry;
import insidelift.engine.logbook.entry.DriverEntry;
import insidelift.engine.logbook.entry.Entry;
import insidelift.engine.logbook.entry.KartEntry;
import insidelift.engine.logbook.entry.RefusedEntryException;
import insidelift.engine.logbook.entry.ReviewEntry;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.entry.TrackEntry;
import insidelift.shared.casefile.BaselineJson;
import insidelift.shared.casefile.JsonPlace;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Printable;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The JSON shape of every kind of entry. What is empty is left out. */
public final class EntryJson {

  private static final Set<String> NAMED = Set.of("name", "answers", "note");
  private static final Set<String> DAY = Set.of("date", "track", "note");
  private static final Set<String> BASELINE = Set.of("kart", "for", "run", "kept");
  private static final Set<String> CORRECTION = Set.of("of", "kind", "now", "reason");

  private static final Map<Class<? extends Entry>, String> KINDS =
      Map.of(
          ReviewEntry.class, "review",
          AttemptEntry.class, "attempt",
          BaselineEntry.class, "baseline",
          KartEntry.class, "kart",
          DriverEntry.class, "driver",
          TrackEntry.class, "track",
          DayEntry.class, "day",
          RunEntry.class, "run",
          Correction.class, "correction");

  private EntryJson() {}

  /** The word for a kind of entry, in the file and in messages. */
  public static String kind(Class<? extends Entry> kind) {
    return KINDS.get(kind);
  }

  public static ObjectNode write(Entry entry) {
    if (entry instanceof KartEntry kart) {
      return named(kart.name(), kart.answers(), kart.note());
    } else if (entry instanceof DriverEntry driver) {
      return named(driver.name(), driver.answers(), driver.note());
    } else if (entry instanceof TrackEntry track) {
      return named(track.name(), track.answers(), track.note());
    } else if (entry instanceof DayEntry day) {
      return note(
          object().put("date", day.date().toString()).put("track", day.track()), day.note());
    } else if (entry instanceof RunEntry run) {
      return RunJson.write(run);
    } else if (entry instanceof BaselineEntry baseline) {
      return baseline(baseline);
    } else if (entry instanceof ReviewEntry review) {
      return StudyJson.write(review);
    } else if (entry instanceof AttemptEntry attempt) {
      return StudyJson.write(attempt);
    }
    return correction((Correction) entry);
  }

  /**
   * The entry that a JSON value holds.
   *
   * @throws CaseProblem if it is none of that kind; the message names the place
   */
  public static Entry read(String kind, JsonPlace place) throws CaseProblem {
    try {
      return switch (kind) {
        case "kart" -> {
          place.object(NAMED);
          yield new KartEntry(place.need("name").word(), words(place, "answers"), text(place));
        }
        case "driver" -> {
          place.object(NAMED);
          yield new DriverEntry(place.need("name").word(), words(place, "answers"), text(place));
        }
        case "track" -> {
          place.object(NAMED);
          yield new TrackEntry(place.need("name").word(), words(place, "answers"), text(place));
        }
        case "day" -> {
          place.object(DAY);
          yield new DayEntry(date(place.need("date")), place.need("track").integer(), text(place));
        }
        case "run" -> RunJson.read(place);
        case "baseline" -> baseline(place);
        case "review" -> StudyJson.review(place);
        case "attempt" -> StudyJson.attempt(place);
        case "correction" -> correction(place);
        default ->
            throw place.problem("records of the kind " + Printable.quoted(kind) + " are not known");
      };
    } catch (RefusedEntryException e) {
      throw new CaseProblem(e.getMessage());
    }
  }

  private static ObjectNode named(String name, Map<String, String> answers, String note) {
    ObjectNode json = object().put("name", name);
    words(json, "answers", answers);
    return note(json, note);
  }

  private static ObjectNode note(ObjectNode json, String note) {
    return note.isEmpty() ? json : json.put("note", note);
  }

  private static ObjectNode baseline(BaselineEntry baseline) {
    ObjectNode json = object().put("kart", baseline.kart()).put("for", baseline.condition());
    baseline.run().ifPresent(run -> json.put("run", run));
    BaselineJson.write(baseline.kept(), json.putObject("kept"));
    return json;
  }

  private static BaselineEntry baseline(JsonPlace place) throws CaseProblem {
    place.object(BASELINE);
    JsonPlace kept = place.need("kept").object();
    Set<String> keys = new LinkedHashSet<>();
    kept.node().fieldNames().forEachRemaining(keys::add);
    // Its levers are the vocabulary's, which the writer has checked: every other key is one.
    keys.removeAll(BaselineJson.KEYS);
    return new BaselineEntry(
        place.need("kart").integer(),
        place.need("for").word(),
        place.at("run").isPresent() ? Optional.of(place.need("run").integer()) : Optional.empty(),
        BaselineJson.read(kept, keys));
  }

  private static ObjectNode correction(Correction correction) {
    ObjectNode json = object().put("of", correction.of());
    correction
        .now()
        .ifPresent(now -> json.put("kind", kind(now.getClass())).set("now", write(now)));
    return json.put("reason", correction.reason());
  }

  private static Correction correction(JsonPlace place) throws CaseProblem {
    place.object(CORRECTION);
    int of = place.need("of").integer();
    String reason = place.need("reason").word();
    Optional<JsonPlace> now = place.at("now");
    if (now.isEmpty()) {
      return Correction.withdrawn(of, reason);
    }
    return Correction.of(of, read(place.need("kind").word(), now.get()), reason);
  }

  public static ObjectNode object() {
    return JsonNodeFactory.instance.objectNode();
  }

  static void words(ObjectNode json, String key, Map<String, String> words) {
    if (!words.isEmpty()) {
      words.forEach(json.putObject(key)::put);
    }
  }

  static Map<String, String> words(JsonPlace place, String key) throws CaseProblem {
    Map<String, String> words = new LinkedHashMap<>();
    Optional<JsonPlace> object = place.at(key);
    if (object.isPresent()) {
      JsonPlace held = object.get().object();
      for (Iterator<String> names = held.node().fieldNames(); names.hasNext(); ) {
        String name = names.next();
        words.put(name, held.need(name).word());
      }
    }
    return words;
  }

  static String text(JsonPlace place) throws CaseProblem {
    Optional<JsonPlace> note = place.at("note");
    return note.isPresent() ? note.get().word() : "";
  }

  static LocalDate date(JsonPlace place) throws CaseProblem {
    try {
      return LocalDate.parse(place.word());
    } catch (DateTimeException e) {
      throw place.problem("this must be a date such as 2026-04-12");
    }
  }
}
