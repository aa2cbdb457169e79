package insidelift.engine.geometry.positions;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.geometry.Fields;
import insidelift.engine.geometry.RefusedInputException;
import insidelift.engine.geometry.Side;
import insidelift.engine.geometry.StrictJson;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Which positions of a kart's own eccentrics give a wanted change, on both sides. */
public final class Positions {

  /** The best choice and the two next-best. */
  static final int CHOICES = 3;

  private final List<PositionAdvice> sides;
  private final boolean nowAssumed;

  private Positions(List<PositionAdvice> sides, boolean nowAssumed) {
    this.sides = List.copyOf(sides);
    this.nowAssumed = nowAssumed;
  }

  /**
   * Reads {@code {"schema":1,"eccentrics":{…},"now":{"left":{"top":"1","bottom":"1"},"right":{…}},
   * "want":{"camberDeg":0.5,"casterDeg":0}}} and answers it. {@code now} may be left out: then each
   * washer is taken to be in its first position, and the answer says so. Each change wanted is a
   * number for both sides or {@code {"left":…,"right":…}}; one left out is 0.
   *
   * @throws RefusedInputException if the file is missing, is not strict JSON of that shape or names
   *     a position that the hardware has not
   */
  public static Positions read(Path file) {
    return StrictJson.read(file, Positions::from);
  }

  /**
   * Reads the same from a stream, which stays open.
   *
   * @param name what to call the stream in a message
   * @throws RefusedInputException as for a file
   */
  public static Positions read(InputStream in, String name) {
    return StrictJson.read(in, name, Positions::from);
  }

  private static Positions from(JsonNode root) {
    Fields fields = Fields.ofFile(root);
    EccentricHardware hardware = EccentricHardware.from(fields.required("eccentrics"));
    boolean assumed = !fields.has("now");
    Fields now = assumed ? null : fields.object("now");
    Fields want = fields.object("want");
    List<PositionAdvice> sides = new ArrayList<>();
    for (Side side : Side.values()) {
      PositionPair pair = now == null ? hardware.neutral() : pair(now, side, hardware.neutral());
      WantedChange wanted =
          new WantedChange(change(want, "camberDeg", side), change(want, "casterDeg", side));
      sides.add(PositionAdvice.of(side, hardware, pair, wanted, CHOICES));
    }
    if (now != null) {
      now.refuseOthers();
    }
    want.refuseOthers();
    fields.refuseOthers();
    return new Positions(sides, assumed);
  }

  private static PositionPair pair(Fields now, Side side, PositionPair fixed) {
    Fields washers = now.object(side.word());
    // A pivot without a washer has one position, which nobody needs to write.
    PositionPair pair =
        new PositionPair(
            washers.has("top") ? washers.text("top") : fixed.top(),
            washers.has("bottom") ? washers.text("bottom") : fixed.bottom());
    washers.refuseOthers();
    return pair;
  }

  private static double change(Fields want, String key, Side side) {
    if (!want.has(key)) {
      return 0;
    }
    if (!want.required(key).isObject()) {
      return want.number(key);
    }
    Fields both = want.object(key);
    double left = both.number(Side.LEFT.word());
    double right = both.number(Side.RIGHT.word());
    both.refuseOthers();
    return side == Side.LEFT ? left : right;
  }

  /** The same change on both sides, from the same positions. */
  public static Positions of(EccentricHardware hardware, PositionPair now, WantedChange wanted) {
    List<PositionAdvice> sides = new ArrayList<>();
    for (Side side : Side.values()) {
      sides.add(PositionAdvice.of(side, hardware, now, wanted, CHOICES));
    }
    return new Positions(sides, false);
  }

  /**
   * The same change on both sides of a case's kart.
   *
   * @param eccentrics the washers, as {@link EccentricHardware#from} reads them
   * @param now the positions they are in, {@code {"left":{"top":"1","bottom":"1"},"right":{…}}};
   *     null where they were not told: then the first positions, and the answer says so
   * @param camberDeg the camber wanted, degrees, as a change
   * @param casterDeg the caster wanted, degrees, as a change
   * @throws RefusedInputException if either is not of that shape
   */
  public static Positions of(
      JsonNode eccentrics, JsonNode now, double camberDeg, double casterDeg) {
    ObjectNode file = JsonNodeFactory.instance.objectNode().put("schema", 1);
    file.set("eccentrics", eccentrics);
    if (now != null) {
      file.set("now", now);
    }
    file.putObject("want").put("camberDeg", camberDeg).put("casterDeg", casterDeg);
    return from(file);
  }

  /** What to do, left and right. */
  public List<PositionAdvice> sides() {
    return sides;
  }

  /** Whether the present positions were not given but taken to be the first ones. */
  public boolean nowAssumed() {
    return nowAssumed;
  }

  /** The answer as JSON, numbers unrounded. */
  public ObjectNode json() {
    return PositionsJson.of(this);
  }

  /** The answer as plain text of at most 80 columns. */
  public List<String> lines() {
    return PositionsText.of(this);
  }
}
