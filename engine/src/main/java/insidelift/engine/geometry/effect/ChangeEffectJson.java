package insidelift.engine.geometry.effect;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.geometry.kart.CornerState;
import java.util.OptionalDouble;

/** The JSON of a change's effect. */
final class ChangeEffectJson {

  private ChangeEffectJson() {}

  static ObjectNode of(ChangeEffect effect) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("camberDeg", effect.camberDeg()).put("casterDeg", effect.casterDeg());
    root.putObject("trailMm")
        .put("before", effect.before().trailMm())
        .put("after", effect.after().trailMm());
    root.put("toeOutTotalMm", effect.toeOutTotalMm());
    root.put("wheelbaseChangeMm", effect.wheelbaseChangeMm());
    ArrayNode corners = root.putArray("corners");
    for (CornerChange change : effect.corners()) {
      ObjectNode node = corners.addObject();
      node.put("name", change.corner().name())
          .put("steerDeg", change.corner().steerDeg())
          .put("lateralG", change.corner().lateralG())
          .put("longitudinalG", change.corner().longitudinalG());
      state(node.putObject("before"), change.before(), change.liftOffBefore());
      state(node.putObject("after"), change.after(), change.liftOffAfter());
      change.bands().put(node.putObject("change"));
    }
    root.put("sentence", effect.sentence());
    return root;
  }

  private static void state(ObjectNode node, CornerState state, OptionalDouble liftOffG) {
    node.put("innerLeanDeg", state.innerLeanDeg())
        .put("outerLeanDeg", state.outerLeanDeg())
        .put("frontInnerN", state.loads().frontInnerN())
        .put("frontOuterN", state.loads().frontOuterN())
        .put("rearInnerN", state.loads().rearInnerN())
        .put("rearInnerLiftMm", state.loads().rearInnerLiftMm())
        .put("effortTrailNm", state.effort().trailNm())
        .put("effortJackingNm", state.effort().jackingNm());
    if (liftOffG.isPresent()) {
      node.put("liftOffG", liftOffG.getAsDouble());
    } else {
      node.putNull("liftOffG");
    }
  }
}
