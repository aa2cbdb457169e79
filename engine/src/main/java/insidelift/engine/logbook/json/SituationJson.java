package insidelift.engine.logbook.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.shared.Degrees;
import insidelift.shared.casefile.JsonPlace;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Eccentrics;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
import insidelift.shared.situation.Situation;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The JSON shape of a situation. Unlike a case file it keeps the words beside the numbers they come
 * from, and takes words that this build's vocabulary does not know: a logbook outlives
 * vocabularies.
 */
final class SituationJson {

  private static final Set<String> SETUP =
      Set.of(
          "camber",
          "caster",
          "casterIs",
          "neutralCaster",
          "camberPerPosition",
          "casterPerPosition",
          "washers",
          "positionsNow",
          "geometry");
  private static final Set<String> SIDES = Set.of("left", "right");
  private static final String ABSOLUTE = "absolute";

  private SituationJson() {}

  static void write(Situation situation, ObjectNode json) {
    EntryJson.words(json, "answers", situation.answers());
    if (!situation.numbers().isEmpty()) {
      situation.numbers().forEach(json.putObject("numbers")::put);
    }
    if (!situation.declined().isEmpty()) {
      situation.declined().forEach(json.putArray("unknown")::add);
    }
    ObjectNode setup = setup(situation.kart());
    if (!setup.isEmpty()) {
      json.set("setup", setup);
    }
  }

  static Situation read(JsonPlace place) throws CaseProblem {
    Map<String, Double> numbers = new LinkedHashMap<>();
    Optional<JsonPlace> held = place.at("numbers");
    if (held.isPresent()) {
      JsonPlace object = held.get().object();
      for (Iterator<String> names = object.node().fieldNames(); names.hasNext(); ) {
        String name = names.next();
        numbers.put(name, number(object, name));
      }
    }
    Optional<JsonPlace> setup = place.at("setup");
    return new Situation(
        EntryJson.words(place, "answers"),
        numbers,
        setup.isPresent() ? kart(setup.get().object(SETUP)) : Kart.UNKNOWN,
        declined(place.at("unknown")));
  }

  private static Set<String> declined(Optional<JsonPlace> place) throws CaseProblem {
    Set<String> declined = new LinkedHashSet<>();
    if (place.isPresent()) {
      for (JsonNode question : RunJson.list(place.get())) {
        declined.add(place.get().item(question).word());
      }
    }
    return declined;
  }

  private static ObjectNode setup(Kart kart) {
    ObjectNode json = EntryJson.object();
    kart.camber().ifPresent(camber -> write(camber, json.putObject("camber")));
    kart.caster().ifPresent(caster -> write(caster, json.putObject("caster")));
    if (kart.absolute()) {
      json.put("casterIs", ABSOLUTE);
    }
    kart.neutral().ifPresent(neutral -> json.put("neutralCaster", neutral.value()));
    Eccentrics eccentrics = kart.eccentrics();
    if (eccentrics.camberPerPosition() != null) {
      json.put("camberPerPosition", eccentrics.camberPerPosition().value());
    }
    if (eccentrics.casterPerPosition() != null) {
      json.put("casterPerPosition", eccentrics.casterPerPosition().value());
    }
    copy(eccentrics.washers(), "washers", json);
    copy(eccentrics.now(), "positionsNow", json);
    copy(kart.geometry().orElse(null), "geometry", json);
    return json;
  }

  private static void copy(JsonNode part, String key, ObjectNode json) {
    if (part != null) {
      json.set(key, part.deepCopy());
    }
  }

  private static Optional<JsonNode> copy(JsonPlace setup, String key) {
    return setup.at(key).map(JsonPlace::node).map(JsonNode::deepCopy);
  }

  private static void write(Sides sides, ObjectNode json) {
    json.put("left", sides.left().value()).put("right", sides.right().value());
  }

  private static Kart kart(JsonPlace setup) throws CaseProblem {
    Optional<JsonPlace> casterIs = setup.at("casterIs");
    if (casterIs.isPresent() && !casterIs.get().word().equals(ABSOLUTE)) {
      throw casterIs.get().problem("this must be \"absolute\", or left out");
    }
    return new Kart(
        sides(setup.at("camber")),
        sides(setup.at("caster")),
        casterIs.isPresent(),
        degrees(setup, "neutralCaster"),
        new Eccentrics(
            degrees(setup, "camberPerPosition").orElse(null),
            degrees(setup, "casterPerPosition").orElse(null),
            copy(setup, "washers").orElse(null),
            copy(setup, "positionsNow").orElse(null)),
        copy(setup, "geometry"));
  }

  private static Optional<Sides> sides(Optional<JsonPlace> place) throws CaseProblem {
    if (place.isEmpty()) {
      return Optional.empty();
    }
    JsonPlace sides = place.get().object(SIDES);
    return Optional.of(
        new Sides(Degrees.of(number(sides, "left")), Degrees.of(number(sides, "right"))));
  }

  private static Optional<Degrees> degrees(JsonPlace place, String key) throws CaseProblem {
    return place.at(key).isPresent()
        ? Optional.of(Degrees.of(number(place, key)))
        : Optional.empty();
  }

  private static double number(JsonPlace place, String key) throws CaseProblem {
    return place.need(key).number();
  }
}
