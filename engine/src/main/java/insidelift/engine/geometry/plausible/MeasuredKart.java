package insidelift.engine.geometry.plausible;

import com.fasterxml.jackson.databind.JsonNode;
import insidelift.engine.geometry.Fields;
import insidelift.engine.geometry.Range;
import insidelift.engine.geometry.RefusedInputException;
import insidelift.engine.geometry.StrictJson;
import insidelift.engine.geometry.kart.Dimension;
import insidelift.engine.geometry.kart.KartGeometry;
import insidelift.engine.geometry.kart.LoadModel;
import insidelift.engine.geometry.kart.SteeredWheels;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A kart file with what was read on the kart by the protocol of the note {@code fit-my-kart}. All
 * of it may be left out but the scales, which the other readings on the stand are compared with:
 *
 * <pre>{@code
 * {"schema": 1, "geometry": {…},
 *  "measured": {"scalesKg": {"front": [36, 36], "rear": [45, 45]},
 *   "board": {"heightMm": 20, "leftRearKg": 32}, "steered": {"steerDeg": 15, "leftRearKg": 34},
 *   "raised": {"heightMm": 250, "frontKg": 75},
 *   "liftOff": {"lateralG": 1.0, "longitudinalG": -0.55, "steerDeg": 12}}}
 * }</pre>
 *
 * @param kart the measures, with mass and front share from the scales where not given
 * @param readings what was read
 */
public record MeasuredKart(KartGeometry kart, List<Measurement> readings) {

  private static final String PROVISIONAL = " (provisional)";
  private static final double USUAL_STEER_DEG = 12;
  private static final double MOST_KG = 200;

  /**
   * Reads a kart file.
   *
   * @throws RefusedInputException if it is missing, not of that shape, or a value is outside its
   *     range
   */
  public static MeasuredKart read(Path file) {
    return StrictJson.read(file, MeasuredKart::from);
  }

  /**
   * Reads a kart file from a stream, which stays open.
   *
   * @param name what to call the stream in a message
   * @throws RefusedInputException as for a file
   */
  public static MeasuredKart read(InputStream in, String name) {
    return StrictJson.read(in, name, MeasuredKart::from);
  }

  private static MeasuredKart from(JsonNode root) {
    Fields file = Fields.ofFile(root);
    KartGeometry kart = KartGeometry.from(file.required("geometry"));
    List<Measurement> readings = new ArrayList<>();
    if (file.has("measured")) {
      Fields measured = file.object("measured");
      Scales scales = Scales.of(measured);
      kart = scales.weighed(kart);
      onTheStand(measured, scales, readings);
      if (measured.has("liftOff")) {
        readings.add(liftOff(measured.object("liftOff")));
      }
      measured.refuseOthers();
    }
    file.refuseOthers();
    return new MeasuredKart(kart, List.copyOf(readings));
  }

  private static void onTheStand(Fields measured, Scales scales, List<Measurement> readings) {
    if (measured.has("board")) {
      Fields board = measured.object("board");
      readings.add(
          Measurement.board(
              board.number("heightMm", 5, 40, "mm" + PROVISIONAL),
              scales.leftRearN(measured, board)));
      board.refuseOthers();
    }
    if (measured.has("steered")) {
      Fields steered = measured.object("steered");
      readings.add(
          Measurement.steered(
              steered.number("steerDeg", 5, 30, "° to the left" + PROVISIONAL),
              scales.leftRearN(measured, steered)));
      steered.refuseOthers();
    }
    if (measured.has("raised")) {
      Fields raised = measured.object("raised");
      readings.add(
          Measurement.raised(
              raised.number("heightMm", 100, 400, "mm" + PROVISIONAL),
              scales.frontN(measured, raised)));
      raised.refuseOthers();
    }
  }

  private static Measurement liftOff(Fields seen) {
    Measurement reading =
        Measurement.liftOff(
            seen.has("steerDeg")
                ? seen.number("steerDeg", 0, SteeredWheels.MOST_STEER_DEG, "°")
                : USUAL_STEER_DEG,
            seen.number("lateralG", 0.2, 2, "g" + PROVISIONAL),
            seen.number("longitudinalG", -1.2, 0.3, "g, below nought when slowing" + PROVISIONAL));
    seen.refuseOthers();
    return reading;
  }

  /** What the four wheels carry, straight ahead, kg; nothing where nobody weighed. */
  private record Scales(List<Double> front, List<Double> rear) {

    static Scales of(Fields measured) {
      if (!measured.has("scalesKg")) {
        return new Scales(List.of(), List.of());
      }
      Fields scales = measured.object("scalesKg");
      Scales read = new Scales(pair(scales, "front"), pair(scales, "rear"));
      scales.refuseOthers();
      return read;
    }

    private static List<Double> pair(Fields scales, String key) {
      List<JsonNode> two = scales.list(key, 2);
      if (two.size() != 2) {
        throw new RefusedInputException(scales.placeOf(key), "must be two numbers, left and right");
      }
      return two.stream()
          .map(
              node -> {
                double kg = Fields.finite(scales.placeOf(key), node);
                Range.check(scales.placeOf(key), kg, 5, MOST_KG, "kg" + PROVISIONAL);
                return kg;
              })
          .toList();
    }

    private static double sum(List<Double> pair) {
      return pair.get(0) + pair.get(1);
    }

    KartGeometry weighed(KartGeometry kart) {
      if (front.isEmpty()) {
        return kart;
      }
      Map<Dimension, Double> given = new EnumMap<>(Dimension.class);
      given.put(Dimension.MASS, sum(front) + sum(rear));
      given.put(Dimension.FRONT_SHARE, sum(front) / (sum(front) + sum(rear)));
      given.putAll(kart.given());
      return new KartGeometry(given);
    }

    private void needed(Fields measured) {
      if (front.isEmpty()) {
        throw new RefusedInputException(
            measured.placeOf("scalesKg"),
            "is missing; the other readings on the stand are compared with it");
      }
    }

    double leftRearN(Fields measured, Fields step) {
      needed(measured);
      double kg = step.number("leftRearKg", 0, MOST_KG, "kg" + PROVISIONAL);
      return (rear.get(0) - kg) * LoadModel.GRAVITY;
    }

    double frontN(Fields measured, Fields step) {
      needed(measured);
      double kg = step.number("frontKg", 0, 2 * MOST_KG, "kg" + PROVISIONAL);
      return (kg - sum(front)) * LoadModel.GRAVITY;
    }
  }
}
