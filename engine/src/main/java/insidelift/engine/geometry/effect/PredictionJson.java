package insidelift.engine.geometry.effect;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.geometry.kart.CornerState;
import insidelift.engine.geometry.kart.Dimension;
import insidelift.engine.geometry.kart.KartGeometry;
import insidelift.engine.geometry.kart.KartSize;
import insidelift.engine.geometry.kart.SteeredWheels;
import insidelift.engine.geometry.kart.SteeringArm;
import insidelift.engine.geometry.kart.WheelLoads;
import insidelift.engine.geometry.kart.WheelState;
import java.util.OptionalDouble;

/** The JSON of a prediction. */
final class PredictionJson {

  private PredictionJson() {}

  static ObjectNode of(Prediction prediction) {
    KartGeometry kart = prediction.kart();
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("schema", 1).put("note", PredictionText.NOTE);
    ArrayNode wheels = root.putArray("wheels");
    for (SteeredWheels row : prediction.wheels()) {
      ObjectNode node = wheels.addObject().put("steerDeg", row.steerDeg());
      wheel(node.putObject("inner"), row.inner());
      wheel(node.putObject("outer"), row.outer());
      node.put("heightDifferenceMm", row.heightDifferenceMm());
    }
    root.put("trailMm", kart.trailMm());
    root.put("scrubRadiusMm", kart.scrubRadiusMm());
    ArrayNode loads = root.putArray("loads");
    prediction.corners().forEach(corner -> loads(loads.addObject(), corner.loads()));
    putOrNull(root, "liftOffG", prediction.liftOffG());
    ArrayNode liftOffs = root.putArray("liftOffs");
    for (Prediction.LiftOff liftOff : prediction.liftOffs()) {
      ObjectNode node = liftOffs.addObject().put("steerDeg", liftOff.steerDeg());
      putOrNull(node, "liftOffG", liftOff.lateralG());
    }
    double longitudinalG = prediction.longitudinalG();
    root.put("leastLiftG", kart.leastLiftG(longitudinalG));
    root.put("tipsOverG", kart.tipsOverAtG(longitudinalG));
    root.put("longitudinalTransferN", kart.frontAxleN(longitudinalG) - kart.frontAxleN(0));
    ArrayNode leans = root.putArray("leanToGround");
    ArrayNode efforts = root.putArray("steeringEffort");
    for (CornerState corner : prediction.corners()) {
      at(leans.addObject(), corner.loads())
          .put("innerDeg", corner.innerLeanDeg())
          .put("outerDeg", corner.outerLeanDeg())
          .put("frontRollDeg", corner.loads().frontRollDeg());
      at(efforts.addObject(), corner.loads())
          .put("trailNm", corner.effort().trailNm())
          .put("jackingNm", corner.effort().jackingNm())
          .put("totalNm", corner.effort().totalNm());
    }
    ArrayNode bands = root.putArray("bands");
    prediction.bands().forEach(corner -> corner.put(bands.addObject()));
    prediction.fitted().put(root);
    SteeringArm arm = SteeringArm.TYPICAL;
    root.putObject("perDegree")
        .put("toeOutDegPerWheelPerDegCamber", arm.toeOutDeg(1))
        .put("toeOutTotalMmPerDegCamber", arm.toeOutTotalMm(1))
        .put("wheelbaseMmPerDegCaster", arm.wheelbaseMm(1))
        .put("basis", "typical steering arm and hub height, provisional");
    ArrayNode typical = root.putArray("typical");
    for (Dimension dimension : Dimension.values()) {
      if (kart.isTypical(dimension)) {
        typical
            .addObject()
            .put("key", dimension.key())
            .put("value", kart.value(dimension))
            .put("source", KartSize.of(kart.given()).source(dimension));
      }
    }
    return root;
  }

  private static void wheel(ObjectNode node, WheelState wheel) {
    node.put("camberDeg", wheel.camberDeg()).put("heightMm", wheel.heightMm());
  }

  private static void loads(ObjectNode node, WheelLoads loads) {
    at(node, loads)
        .put("rearOuterN", loads.rearOuterN())
        .put("rearInnerN", loads.rearInnerN())
        .put("frontInnerN", loads.frontInnerN())
        .put("frontOuterN", loads.frontOuterN())
        .put("rearInnerLiftMm", loads.rearInnerLiftMm())
        .put("frameTwistDeg", loads.frameTwistDeg());
  }

  private static ObjectNode at(ObjectNode node, WheelLoads loads) {
    return node.put("steerDeg", loads.steerDeg())
        .put("lateralG", loads.lateralG())
        .put("longitudinalG", loads.longitudinalG());
  }

  private static void putOrNull(ObjectNode node, String key, OptionalDouble value) {
    if (value.isPresent()) {
      node.put(key, value.getAsDouble());
    } else {
      node.putNull(key);
    }
  }
}
