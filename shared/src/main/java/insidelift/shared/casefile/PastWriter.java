package insidelift.shared.casefile;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.shared.situation.Driven;
import insidelift.shared.situation.FrontEnd;
import insidelift.shared.situation.KartRecord;
import insidelift.shared.situation.Sides;
import java.util.List;
import java.util.Map;

/** Writes what {@link PastReader} and {@link FrontEndReader} read. */
final class PastWriter {

  private PastWriter() {}

  static void front(FrontEnd front, ObjectNode node) {
    front.camber().ifPresent(camber -> sides(camber, node.putObject("camber")));
    front
        .caster()
        .ifPresent(
            caster -> {
              ObjectNode sides = node.putObject("caster");
              sides(caster, sides);
              sides.put("reference", front.absolute() ? "absolute" : "neutral");
              front.neutral().ifPresent(neutral -> sides.put("neutral", neutral.value()));
            });
  }

  static void kart(KartRecord past, ObjectNode kart) {
    past.before().ifPresent(before -> front(before, kart.putObject("before")));
    if (!past.baseline().isEmpty()) {
      ObjectNode conditions = kart.putObject("baseline");
      past.baseline()
          .forEach((condition, kept) -> BaselineJson.write(kept, conditions.putObject(condition)));
    }
    levers(past.levers(), kart);
  }

  private static void levers(Map<String, String> standing, ObjectNode kart) {
    if (!standing.isEmpty()) {
      ObjectNode levers = kart.putObject("levers");
      standing.forEach(levers::put);
    }
  }

  static void history(List<Driven> runs, ArrayNode list) {
    for (Driven run : runs) {
      ObjectNode node = list.addObject();
      run.camber().ifPresent(camber -> node.put("camber", camber.value()));
      run.caster().ifPresent(caster -> node.put("caster", caster.value()));
      run.answers().forEach((question, value) -> node.put(PastReader.key(question), value));
      if (run.undo()) {
        node.put("undo", true);
      }
    }
  }

  private static void sides(Sides sides, ObjectNode node) {
    node.put("left", sides.left().value()).put("right", sides.right().value());
  }
}
