package insidelift.engine.geometry.gauge;

import com.fasterxml.jackson.databind.JsonNode;
import insidelift.engine.geometry.BothSides;
import insidelift.engine.geometry.Fields;
import insidelift.engine.geometry.RefusedInputException;
import insidelift.engine.geometry.StrictJson;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;

/** Reads a file that says what a garage gauge shows, and answers what it comes to. */
public final class Gauge {

  private static final String DEGREES = "° (provisional)";

  private static final List<String> GAUGES = List.of("laser", "sweep", "toe", "lift", "scales");

  private Gauge() {}

  /**
   * Reads one of
   *
   * <ul>
   *   <li>{@code {"schema":1,"laser":{"distanceMm":1000,"beam":"inboard",
   *       "dotMm":{"left":8.7,"right":8.7},"changeDeg":0.5}}}: {@code beam} is {@code inboard} or
   *       {@code outboard} and always asked; {@code camberDeg} may stand in place of {@code dotMm};
   *       {@code changeDeg}, an advised change, is optional and gives the dots to aim at;
   *   <li>{@code {"schema":1,"sweep":{"steerDeg":20,"turnedLeftDeg":{"left":4.7,"right":-3.9},
   *       "turnedRightDeg":{"left":-3.9,"right":4.7}}}}: camber of both wheels;
   *   <li>{@code {"schema":1,"toe":{"discMm":280,"totalMm":2,"direction":"out"}}}: {@code totalDeg}
   *       may stand in place of {@code totalMm};
   *   <li>{@code {"schema":1,"lift":{"heightMm":{"left":12,"right":17}}}}: each rear raised with
   *       the steering fully to its side;
   *   <li>{@code {"schema":1,"scales":{"frontKg":{"left":33,"right":34},"rearKg":{"left":44,
   *       "right":45}}}}.
   * </ul>
   *
   * @throws RefusedInputException if the file is missing, is not strict JSON of such a shape or a
   *     number is outside its range
   */
  public static GaugeReading read(Path file) {
    return StrictJson.read(file, Gauge::from);
  }

  /**
   * Reads the same from a stream, which stays open.
   *
   * @param name what to call the stream in a message
   * @throws RefusedInputException as for a file
   */
  public static GaugeReading read(InputStream in, String name) {
    return StrictJson.read(in, name, Gauge::from);
  }

  /**
   * The same reading from a document that is read already.
   *
   * @throws RefusedInputException as for a file
   */
  public static GaugeReading of(JsonNode document) {
    return from(document);
  }

  private static GaugeReading from(JsonNode root) {
    Fields fields = Fields.ofFile(root);
    List<String> given = GAUGES.stream().filter(fields::has).toList();
    if (given.size() != 1) {
      throw new RefusedInputException("document", "must have one of " + String.join(", ", GAUGES));
    }
    Fields gauge = fields.object(given.get(0));
    fields.refuseOthers();
    GaugeReading reading =
        switch (given.get(0)) {
          case "laser" -> laser(gauge);
          case "sweep" -> sweep(gauge);
          case "toe" -> toe(gauge);
          case "lift" -> lift(gauge);
          default -> scales(gauge);
        };
    gauge.refuseOthers();
    return reading;
  }

  private static GaugeReading laser(Fields fields) {
    Beam beam = Beam.named(fields.word("beam", Beam.words()));
    double distance = fields.number("distanceMm", 100, 5000, "mm (provisional)");
    double most = CamberByLaser.MOST_CAMBER_DEG;
    CamberByLaser reading =
        onlyOne(fields, "dotMm", "camberDeg")
            ? CamberByLaser.ofDots(
                beam, distance, BothSides.read(fields, "dotMm", -1000, 1000, "mm (provisional)"))
            : CamberByLaser.ofCamber(
                beam, distance, BothSides.read(fields, "camberDeg", -most, most, DEGREES));
    return fields.has("changeDeg")
        ? reading.withTarget(fields.number("changeDeg", -most, most, DEGREES))
        : reading;
  }

  private static GaugeReading sweep(Fields fields) {
    double most = CasterBySweep.MOST_CAMBER_DEG;
    return new CasterBySweep(
        fields.number("steerDeg"),
        BothSides.read(fields, "turnedLeftDeg", -most, most, DEGREES),
        BothSides.read(fields, "turnedRightDeg", -most, most, DEGREES));
  }

  private static GaugeReading toe(Fields fields) {
    double disc = fields.number("discMm");
    int sign = fields.word("direction", ToeOverDisc.DIRECTIONS).equals("out") ? 1 : -1;
    return onlyOne(fields, "totalMm", "totalDeg")
        ? new ToeOverDisc(disc, sign * fields.number("totalMm", 0, 200, "mm (provisional)"))
        : ToeOverDisc.ofDegrees(
            disc, sign * fields.number("totalDeg", 0, ToeOverDisc.MOST_DEG, DEGREES));
  }

  private static GaugeReading lift(Fields fields) {
    return new LiftTest(
        BothSides.read(fields, "heightMm", 0, LiftTest.MOST_MM, "mm (provisional)"));
  }

  private static GaugeReading scales(Fields fields) {
    return new FourScales(kg(fields, "frontKg"), kg(fields, "rearKg"));
  }

  private static BothSides kg(Fields fields, String axle) {
    return BothSides.read(
        fields, axle, FourScales.LEAST_KG, FourScales.MOST_KG, "kg (provisional)");
  }

  /** Whether the first of two keys is there; one of them must be, and not both. */
  private static boolean onlyOne(Fields fields, String first, String second) {
    boolean isFirst = fields.has(first);
    if (isFirst == fields.has(second)) {
      throw new RefusedInputException(
          fields.placeOf(first), "give either " + first + " or " + second);
    }
    return isFirst;
  }
}
