package insidelift.engine.geometry.toe;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.geometry.BothSides;
import insidelift.engine.geometry.Fields;
import insidelift.engine.geometry.RefusedInputException;
import insidelift.engine.geometry.StrictJson;
import insidelift.engine.geometry.kart.SteeringArm;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The toe job: how it is measured, and what a reading asks of the tie-rods. */
public final class ToeJob {

  /** Toe-out of each wheel on the stand where a kart starts in the dry, mm. Provisional. */
  public static final double OUR_START_OUT_MM = 1;

  static final String PLACE = "toeJob";

  private final Optional<ToeMethod> method;
  private final Optional<ToeTask> task;

  private ToeJob(Optional<ToeMethod> method, Optional<ToeTask> task) {
    this.method = method;
    this.task = task;
  }

  /**
   * Reads {@code {"schema":1,"toeJob":{…}}}, in which everything may be left out:
   *
   * <ul>
   *   <li>{@code with}: {@code laser}, {@code discs}, {@code straight-edge} or {@code tape};
   *   <li>what was read, one of: {@code left} and {@code right}, each wheel by itself; {@code
   *       total}, both together; {@code sweep}, {@code {"beamMm":1000,"left":612,"right":618}}, see
   *       {@link ToeSweep};
   *   <li>{@code discMm}: the length that mm of toe are over, 100 to 2000;
   *   <li>{@code wanted}, of each wheel, or {@code wantedTotal}; without them our own starting
   *       point;
   *   <li>{@code armMm} and {@code arm}, {@code behind} or {@code ahead} of the kingpin; without
   *       them as in {@link SteeringArm#TYPICAL};
   *   <li>{@code pitchMm} and {@code threads}, {@code both} (if left out) or {@code one}.
   * </ul>
   *
   * A toe is a text such as {@code "1.5 out"}, {@code "0.2 deg in"} or {@code "0"}.
   *
   * @throws RefusedInputException if the file is missing, is not strict JSON of such a shape or a
   *     number is outside its range
   */
  public static ToeJob read(Path file) {
    return StrictJson.read(file, ToeJob::of);
  }

  /**
   * Reads the same from a stream, which stays open.
   *
   * @param name what to call the stream in a message
   * @throws RefusedInputException as for a file
   */
  public static ToeJob read(InputStream in, String name) {
    return StrictJson.read(in, name, ToeJob::of);
  }

  /**
   * The same from a document that is read already.
   *
   * @throws RefusedInputException as for a file
   */
  public static ToeJob of(JsonNode document) {
    Fields root = Fields.ofFile(document);
    Fields fields = root.object(PLACE);
    root.refuseOthers();
    Optional<ToeMethod> method =
        fields.has("with")
            ? Optional.of(ToeMethod.named(fields.word("with", ToeMethod.words())))
            : Optional.empty();
    ToeRods rods = rods(fields);
    OptionalDouble over =
        fields.has("discMm")
            ? OptionalDouble.of(fields.number("discMm", 100, 2000, "mm (provisional)"))
            : OptionalDouble.empty();
    Optional<ToeTask> task = task(fields, over, rods);
    fields.refuseOthers();
    if (task.isEmpty() && document.get(PLACE).size() > (method.isPresent() ? 1 : 0)) {
      throw new RefusedInputException(
          PLACE, "has no reading: give left and right, or total, or sweep");
    }
    return new ToeJob(method, task);
  }

  private static Optional<ToeTask> task(Fields fields, OptionalDouble over, ToeRods rods) {
    boolean total = fields.has("total");
    boolean apart = fields.has("left") || fields.has("right");
    boolean sweep = fields.has("sweep");
    if (total && apart) {
      throw new RefusedInputException(
          fields.placeOf("total"), "give left and right, or total, not both");
    }
    Optional<SideToe> wanted = wanted(fields, over);
    if (sweep && (total || apart || wanted.isPresent())) {
      throw new RefusedInputException(
          fields.placeOf("sweep"), "give it without toe: the sweep is first, toe is read after it");
    }
    if (sweep) {
      return Optional.of(sweep(fields.object("sweep"), rods));
    }
    if (!total && !apart) {
      return Optional.empty();
    }
    SideToe half = total ? TypedToe.read(fields, "total").total(over).half() : null;
    return Optional.of(
        new ToeCorrection(
            total ? half : TypedToe.read(fields, "left").side(over),
            total ? half : TypedToe.read(fields, "right").side(over),
            apart,
            wanted.orElseGet(() -> ourStart(fields, over)),
            wanted.isEmpty(),
            over,
            rods));
  }

  private static Optional<SideToe> wanted(Fields fields, OptionalDouble over) {
    boolean side = fields.has("wanted");
    boolean total = fields.has("wantedTotal");
    if (side && total) {
      throw new RefusedInputException(
          fields.placeOf("wanted"), "give either wanted, for each side, or wantedTotal");
    }
    return side
        ? Optional.of(TypedToe.read(fields, "wanted").side(over))
        : total
            ? Optional.of(TypedToe.read(fields, "wantedTotal").total(over).half())
            : Optional.empty();
  }

  private static SideToe ourStart(Fields fields, OptionalDouble over) {
    if (over.isEmpty()) {
      throw new RefusedInputException(
          fields.placeOf("wanted"),
          "is missing, and our own is in mm: say what is wanted, or discMm");
    }
    return SideToe.ofMm(OUR_START_OUT_MM, over.getAsDouble());
  }

  private static ToeSweep sweep(Fields fields, ToeRods rods) {
    String unit = "mm (provisional)";
    ToeSweep sweep =
        new ToeSweep(
            fields.number("beamMm"),
            new BothSides(
                fields.number("left", 0, 5000, unit), fields.number("right", 0, 5000, unit)),
            rods);
    fields.refuseOthers();
    return sweep;
  }

  private static ToeRods rods(Fields fields) {
    boolean arm = fields.has("armMm");
    boolean way = fields.has("arm");
    boolean threads = fields.has("threads");
    return new ToeRods(
        new TieRod(
            arm ? fields.number("armMm") : SteeringArm.TYPICAL.armLengthMm(),
            way
                ? fields.word("arm", List.of("behind", "ahead")).equals("behind")
                : SteeringArm.TYPICAL.behindKingpin(),
            threads
                ? TieRod.Threads.named(fields.word("threads", TieRod.Threads.words()))
                : TieRod.Threads.BOTH,
            fields.has("pitchMm")
                ? OptionalDouble.of(fields.number("pitchMm"))
                : OptionalDouble.empty()),
        !arm,
        !way,
        !threads);
  }

  /** How it is measured; none if nobody said. */
  public Optional<ToeMethod> method() {
    return method;
  }

  /** The answer as JSON, numbers unrounded. */
  public ObjectNode json() {
    ObjectNode node = JsonNodeFactory.instance.objectNode().put("schema", 1);
    method.ifPresent(with -> node.put("with", with.word()));
    task.ifPresent(what -> node.setAll(what.json()));
    return node;
  }

  /** What to turn, as plain text of at most 80 columns; nothing without a reading. */
  public List<String> lines() {
    return task.map(ToeTask::lines).orElse(List.of());
  }
}
