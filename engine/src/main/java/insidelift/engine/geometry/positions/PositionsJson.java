package insidelift.engine.geometry.positions;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;

/** The JSON of the answer about positions. */
final class PositionsJson {

  private PositionsJson() {}

  static ObjectNode of(Positions positions) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("schema", 1).put("nowAssumed", positions.nowAssumed());
    for (PositionAdvice advice : positions.sides()) {
      ObjectNode side = root.putObject(advice.side().word());
      pair(side.putObject("now"), advice.now());
      side.putObject("want")
          .put("camberDeg", advice.wanted().camberDeg())
          .put("casterDeg", advice.wanted().casterDeg());
      side.put("reach", advice.reach().name().toLowerCase(Locale.ROOT).replace('_', '-'));
      side.put("limit", advice.limit());
      ArrayNode choices = side.putArray("choices");
      for (PositionChoice choice : advice.choices()) {
        ObjectNode node = choices.addObject();
        pair(node, choice.to());
        node.put("camberDeg", choice.camberDeg())
            .put("casterDeg", choice.casterDeg())
            .put("camberResidualDeg", choice.camberOverDeg())
            .put("casterResidualDeg", choice.casterOverDeg())
            .put("missDeg", choice.missDeg());
        ArrayNode steps = node.putArray("steps");
        PositionsText.steps(advice, choice).forEach(steps::add);
      }
    }
    return root;
  }

  private static void pair(ObjectNode node, PositionPair pair) {
    node.put("top", pair.top()).put("bottom", pair.bottom());
  }
}
