package insidelift.engine.logbook.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.logbook.entry.AdviceTaken;
import insidelift.engine.logbook.entry.Pressures;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.entry.Tyres;
import insidelift.engine.proof.Feel;
import insidelift.engine.proof.laps.LapTimes.Lap;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Named;
import insidelift.shared.casefile.JsonPlace;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.EdgeTemperatures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The JSON shape of a run: pressures in bar, treads in degrees Celsius, laps as their seconds. A
 * lap that does not follow the one before by its number is a pair of number and seconds.
 */
final class RunJson {

  private static final Set<String> RUN =
      Set.of(
          "day",
          "kart",
          "driver",
          "run",
          "answers",
          "numbers",
          "unknown",
          "setup",
          "settings",
          "advice",
          "laps",
          "coldBar",
          "hotBar",
          "leftCelsius",
          "rightCelsius",
          "feel",
          "said");
  private static final Set<String> ADVICE =
      Set.of("lever", "direction", "degrees", "claim", "taken", "reason");
  private static final Set<String> BAR = Set.of("frontLeft", "frontRight", "rearLeft", "rearRight");
  private static final Set<String> CELSIUS = Set.of("inner", "middle", "outer");

  private RunJson() {}

  static ObjectNode write(RunEntry run) {
    ObjectNode json =
        EntryJson.object()
            .put("day", run.day())
            .put("kart", run.kart())
            .put("driver", run.driver())
            .put("run", run.runOfDay());
    SituationJson.write(run.situation(), json);
    EntryJson.words(json, "settings", run.settings());
    if (!run.advice().isEmpty()) {
      ArrayNode advice = json.putArray("advice");
      run.advice().forEach(decision -> write(decision, advice.addObject()));
    }
    if (!run.laps().isEmpty()) {
      laps(run.laps(), json.putArray("laps"));
    }
    Tyres tyres = run.tyres();
    tyres.cold().ifPresent(cold -> write(cold, json.putObject("coldBar")));
    tyres.hot().ifPresent(hot -> write(hot, json.putObject("hotBar")));
    tyres.left().ifPresent(left -> write(left, json.putObject("leftCelsius")));
    tyres.right().ifPresent(right -> write(right, json.putObject("rightCelsius")));
    if (run.feel() != Feel.UNKNOWN) {
      json.put("feel", run.feel().id());
    }
    return run.said().isEmpty() ? json : json.put("said", run.said());
  }

  static RunEntry read(JsonPlace place) throws CaseProblem {
    place.object(RUN);
    Optional<JsonPlace> said = place.at("said");
    return new RunEntry(
        place.need("day").integer(),
        place.need("kart").integer(),
        place.need("driver").integer(),
        place.need("run").integer(),
        SituationJson.read(place),
        EntryJson.words(place, "settings"),
        advice(place.at("advice")),
        laps(place.at("laps")),
        new Tyres(
            bar(place.at("coldBar")),
            bar(place.at("hotBar")),
            celsius(place.at("leftCelsius")),
            celsius(place.at("rightCelsius"))),
        feel(place.at("feel")),
        said.isPresent() ? said.get().word() : "");
  }

  private static void write(AdviceTaken decision, ObjectNode json) {
    json.put("lever", decision.lever().id())
        .put("direction", decision.direction().id())
        .put("degrees", decision.degrees())
        .put("claim", decision.claim())
        .put("taken", decision.taken());
    if (!decision.reason().isEmpty()) {
      json.put("reason", decision.reason());
    }
  }

  private static void write(Pressures bar, ObjectNode json) {
    json.put("frontLeft", bar.frontLeft())
        .put("frontRight", bar.frontRight())
        .put("rearLeft", bar.rearLeft())
        .put("rearRight", bar.rearRight());
  }

  private static void write(EdgeTemperatures tread, ObjectNode json) {
    json.put("inner", tread.inner()).put("middle", tread.middle()).put("outer", tread.outer());
  }

  private static List<AdviceTaken> advice(Optional<JsonPlace> place) throws CaseProblem {
    List<AdviceTaken> advice = new ArrayList<>();
    if (place.isPresent()) {
      for (JsonNode node : list(place.get())) {
        JsonPlace one = place.get().item(node).object(ADVICE);
        JsonNode taken = one.need("taken").node();
        if (!taken.isBoolean()) {
          throw one.need("taken").problem("this must be true or false");
        }
        Optional<JsonPlace> reason = one.at("reason");
        advice.add(
            new AdviceTaken(
                named(Lever.class, one.need("lever")),
                named(Direction.class, one.need("direction")),
                number(one, "degrees"),
                one.need("claim").word(),
                taken.booleanValue(),
                reason.isPresent() ? reason.get().word() : ""));
      }
    }
    return advice;
  }

  private static void laps(List<Lap> laps, ArrayNode json) {
    int next = 1;
    for (Lap lap : laps) {
      if (lap.number() == next) {
        json.add(lap.seconds());
      } else {
        json.addArray().add(lap.number()).add(lap.seconds());
      }
      next = lap.number() + 1;
    }
  }

  private static List<Lap> laps(Optional<JsonPlace> place) throws CaseProblem {
    List<Lap> laps = new ArrayList<>();
    if (place.isPresent()) {
      int next = 1;
      for (JsonNode node : list(place.get())) {
        boolean numbered = node.isArray() && node.size() == 2 && node.get(0).isInt();
        JsonNode seconds = numbered ? node.get(1) : node;
        if (!seconds.isNumber()) {
          throw place.get().problem("a lap must be its seconds, or its number and seconds");
        }
        int number = numbered ? node.get(0).intValue() : next;
        try {
          laps.add(new Lap(number, seconds.doubleValue()));
        } catch (IllegalArgumentException e) {
          throw place.get().problem(e.getMessage());
        }
        next = number + 1;
      }
    }
    return laps;
  }

  private static Optional<Pressures> bar(Optional<JsonPlace> place) throws CaseProblem {
    if (place.isEmpty()) {
      return Optional.empty();
    }
    JsonPlace bar = place.get().object(BAR);
    return Optional.of(
        new Pressures(
            number(bar, "frontLeft"),
            number(bar, "frontRight"),
            number(bar, "rearLeft"),
            number(bar, "rearRight")));
  }

  private static Optional<EdgeTemperatures> celsius(Optional<JsonPlace> place) throws CaseProblem {
    if (place.isEmpty()) {
      return Optional.empty();
    }
    JsonPlace tread = place.get().object(CELSIUS);
    return Optional.of(
        new EdgeTemperatures(
            number(tread, "inner"), number(tread, "middle"), number(tread, "outer")));
  }

  private static Feel feel(Optional<JsonPlace> place) throws CaseProblem {
    if (place.isEmpty()) {
      return Feel.UNKNOWN;
    }
    return Feel.of(place.get().word())
        .orElseThrow(() -> place.get().problem("this must be better, same, worse or unknown"));
  }

  private static <E extends Enum<E> & Named> E named(Class<E> type, JsonPlace place)
      throws CaseProblem {
    String word = place.word();
    try {
      return Named.of(type, word);
    } catch (IllegalArgumentException e) {
      throw place.problem("this is no " + type.getSimpleName());
    }
  }

  private static double number(JsonPlace place, String key) throws CaseProblem {
    return place.need(key).number();
  }

  static JsonNode list(JsonPlace place) throws CaseProblem {
    if (!place.node().isArray()) {
      throw place.problem("this must be a list");
    }
    return place.node();
  }
}
