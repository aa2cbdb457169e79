package insidelift.engine.geometry.positions;

import com.fasterxml.jackson.databind.JsonNode;
import insidelift.engine.geometry.Fields;
import insidelift.engine.geometry.Range;
import insidelift.engine.geometry.RefusedInputException;
import insidelift.engine.geometry.kart.MovedPivots;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * The eccentric washers of one kingpin: which positions the top and the bottom one can take, and
 * what each does to camber and caster. Both sides of the kart have the same, mirrored.
 */
public final class EccentricHardware {

  private static final String PLACE = "eccentrics";
  private static final int MOST_POSITIONS = 36;
  private static final double MOST_DEGREES = 10;

  private final MovedPivots pivots;
  private final List<WasherPosition> top;
  private final List<WasherPosition> bottom;

  private EccentricHardware(
      MovedPivots pivots, List<WasherPosition> top, List<WasherPosition> bottom) {
    this.pivots = pivots;
    this.top = List.copyOf(top);
    this.bottom = List.copyOf(bottom);
  }

  /**
   * Reads the object under the key {@code eccentrics} of a kart: {@code pivots} ({@code both},
   * {@code top} or {@code bottom}) and either
   *
   * <ul>
   *   <li>{@code throwMm} (0.1 to 10), {@code pivotSpacingMm} (30 to 120) and the positions'
   *       clocking, as {@code anglesDeg} (0 rearward, 90 outward, 180 forward, 270 inward) or as a
   *       number of {@code positions} evenly spaced from 0; {@code camberOnly} true if the design
   *       moves the pivot sideways only; or
   *   <li>{@code table}, measured: a list of {@code {name, camberDeg, casterDeg}}, for {@code both}
   *       with a {@code bottomTable} beside it. These are readings, signed as camber and caster
   *       are.
   * </ul>
   *
   * @throws RefusedInputException if it is not such an object
   */
  public static EccentricHardware from(JsonNode node) {
    Fields fields = Fields.of(PLACE, node);
    MovedPivots pivots = MovedPivots.named(fields.word("pivots", MovedPivots.words()));
    EccentricHardware hardware =
        fields.has("table") ? measured(fields, pivots) : clocked(fields, pivots);
    fields.refuseOthers();
    return hardware;
  }

  private static EccentricHardware measured(Fields fields, MovedPivots pivots) {
    List<WasherPosition> table = table(fields, "table");
    return switch (pivots) {
      case TOP -> new EccentricHardware(pivots, table, List.of(WasherPosition.FIXED));
      case BOTTOM -> new EccentricHardware(pivots, List.of(WasherPosition.FIXED), table);
      case BOTH -> new EccentricHardware(pivots, table, table(fields, "bottomTable"));
    };
  }

  private static List<WasherPosition> table(Fields fields, String key) {
    List<WasherPosition> positions = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (JsonNode row : fields.list(key, MOST_POSITIONS)) {
      String place = fields.placeOf(key) + "[" + positions.size() + "]";
      Fields cells = Fields.of(place, row);
      String name = cells.text("name");
      if (!names.add(name)) {
        throw new RefusedInputException(place + ".name", "\"" + name + "\" is there twice");
      }
      String unit = "° (provisional)";
      positions.add(
          WasherPosition.measured(
              name,
              cells.number("camberDeg", -MOST_DEGREES, MOST_DEGREES, unit),
              cells.number("casterDeg", -MOST_DEGREES, MOST_DEGREES, unit)));
      cells.refuseOthers();
    }
    return positions;
  }

  private static EccentricHardware clocked(Fields fields, MovedPivots pivots) {
    double throwOverSpacing =
        fields.number("throwMm", 0.1, 10, "mm (provisional)")
            / fields.number("pivotSpacingMm", 30, 120, "mm (provisional)");
    boolean camberOnly = fields.has("camberOnly") && fields.flag("camberOnly");
    List<Double> angles = angles(fields);
    List<WasherPosition> fixed = List.of(WasherPosition.FIXED);
    return new EccentricHardware(
        pivots,
        pivots == MovedPivots.BOTTOM ? fixed : washer(angles, throwOverSpacing, camberOnly, 1),
        pivots == MovedPivots.TOP ? fixed : washer(angles, throwOverSpacing, camberOnly, -1));
  }

  private static List<Double> angles(Fields fields) {
    List<Double> angles = new ArrayList<>();
    if (fields.has("anglesDeg")) {
      for (JsonNode angle : fields.list("anglesDeg", MOST_POSITIONS)) {
        String place = fields.placeOf("anglesDeg") + "[" + angles.size() + "]";
        double value = Fields.finite(place, angle);
        Range.check(place, value, -360, 360, "°");
        angles.add(value);
      }
      return angles;
    }
    int count = fields.wholeNumber("positions", 2, MOST_POSITIONS, "(provisional)");
    for (int i = 0; i < count; i++) {
      angles.add(360.0 * i / count);
    }
    return angles;
  }

  private static List<WasherPosition> washer(
      List<Double> angles, double throwOverSpacing, boolean camberOnly, int sign) {
    List<WasherPosition> positions = new ArrayList<>();
    for (double angle : angles) {
      String name = Integer.toString(positions.size() + 1);
      positions.add(WasherPosition.clocked(name, angle, throwOverSpacing, camberOnly, sign));
    }
    return positions;
  }

  /** Which pivots have a washer. */
  public MovedPivots pivots() {
    return pivots;
  }

  /** The first position of each washer: with equal washers these cancel, the neutral setting. */
  public PositionPair neutral() {
    return new PositionPair(top.get(0).name(), bottom.get(0).name());
  }

  /** Whether no position changes the caster. */
  public boolean movesCamberOnly() {
    return still(WasherPosition::casterTan);
  }

  /** Whether no position changes the camber. */
  public boolean movesCasterOnly() {
    return still(WasherPosition::camberTan);
  }

  private boolean still(ToDoubleFunction<WasherPosition> effect) {
    return same(top, effect) && same(bottom, effect);
  }

  private static boolean same(
      List<WasherPosition> washer, ToDoubleFunction<WasherPosition> effect) {
    double first = effect.applyAsDouble(washer.get(0));
    return washer.stream().allMatch(p -> Math.abs(effect.applyAsDouble(p) - first) < 1e-9);
  }

  List<WasherPosition> top() {
    return top;
  }

  List<WasherPosition> bottom() {
    return bottom;
  }

  /**
   * The positions of that name.
   *
   * @throws RefusedInputException if a washer has no position of that name
   */
  WasherPosition topAt(PositionPair pair, String place) {
    return named(top, pair.top(), place + ".top");
  }

  WasherPosition bottomAt(PositionPair pair, String place) {
    return named(bottom, pair.bottom(), place + ".bottom");
  }

  private static WasherPosition named(List<WasherPosition> washer, String name, String place) {
    return washer.stream()
        .filter(position -> position.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new RefusedInputException(
                    place,
                    "\""
                        + name
                        + "\" is not one of "
                        + String.join(", ", washer.stream().map(WasherPosition::name).toList())));
  }
}
