package insidelift.engine.geometry.toe;

import insidelift.engine.geometry.Printed;
import insidelift.engine.geometry.Range;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * The tie-rod of one wheel: how much longer it has to be for a wanted change of toe, and how far to
 * turn it for that.
 *
 * <p>Why longer is toe-in with the arm behind the kingpin: the rod comes from the column, in the
 * middle of the kart, to the end of the arm. A longer rod pushes that end away from the middle. The
 * end is behind the kingpin, so the rear of the wheel goes out and its front comes in. With the arm
 * ahead of the kingpin the front of the wheel is pushed out instead.
 *
 * @param armMm how far the line of the rod passes from the kingpin axis, mm, 50 to 200: the
 *     steering arm's length where arm and rod are square
 * @param behindKingpin whether the arm points rearward; otherwise forward
 * @param threads what turns, and how much a turn does
 * @param pitchMm from one thread to the next, mm, 0.5 to 2.5; none if nobody measured it
 */
record TieRod(double armMm, boolean behindKingpin, Threads threads, OptionalDouble pitchMm) {

  /** Flats of a hexagon, the usual place for the spanner. */
  static final int FLATS = 6;

  /** Below this a rod is left alone: what no spanner can turn, provisional. */
  private static final double NOTHING_MM = 0.005;

  /** The threads of a rod. */
  enum Threads {
    /** Right-hand at one end and left-hand at the other: the rod turns and both ends grow. */
    BOTH(2),
    /** One joint turns on its thread. */
    ONE(1);

    private final int pitchesPerTurn;

    Threads(int pitchesPerTurn) {
      this.pitchesPerTurn = pitchesPerTurn;
    }

    /** Its JSON word. */
    String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    static List<String> words() {
      return Stream.of(values()).map(Threads::word).toList();
    }

    static Threads named(String word) {
      return valueOf(word.toUpperCase(Locale.ROOT));
    }
  }

  /** A rod that a kart can have. */
  TieRod {
    Range.check(ToeJob.PLACE + ".armMm", armMm, 50, 200, "mm (provisional)");
    if (pitchMm.isPresent()) {
      Range.check(ToeJob.PLACE + ".pitchMm", pitchMm.getAsDouble(), 0.5, 2.5, "mm (provisional)");
    }
  }

  /**
   * How much longer the rod has to be, mm, negative for shorter: arm · sin(change), longer for
   * toe-in with the arm behind the kingpin and for toe-out with it ahead (derived; within 3 % of
   * the exact linkage for changes up to 1°).
   *
   * @param gained wanted change of toe of this wheel, the steering held
   */
  double longerMm(SideToe gained) {
    double pushed = armMm * Math.sin(Math.toRadians(gained.outDeg()));
    return (behindKingpin ? -pushed : pushed) + 0.0;
  }

  /** The length that one turn adds or takes away, mm; none without the pitch. */
  OptionalDouble mmPerTurn() {
    return pitchMm.isPresent()
        ? OptionalDouble.of(threads.pitchesPerTurn * pitchMm.getAsDouble())
        : OptionalDouble.empty();
  }

  /** The turns that make a rod so much longer or shorter, without sign; none without the pitch. */
  OptionalDouble turns(double longerMm) {
    return mmPerTurn().isPresent()
        ? OptionalDouble.of(Math.abs(longerMm) / mmPerTurn().getAsDouble())
        : OptionalDouble.empty();
  }

  /** What one flat does to the toe of its wheel, without sign; none without the pitch. */
  OptionalDouble degPerFlat() {
    return mmPerTurn().isPresent()
        ? OptionalDouble.of(Math.toDegrees(Math.asin(mmPerTurn().getAsDouble() / FLATS / armMm)))
        : OptionalDouble.empty();
  }

  /** {@code longer}, {@code shorter} or {@code leave}. */
  static String way(double longerMm) {
    return Math.abs(longerMm) < NOTHING_MM ? "leave" : longerMm > 0 ? "longer" : "shorter";
  }

  /** As in "0.54 mm shorter = 1 turn and 1.3 flats". */
  String told(double longerMm) {
    String way = way(longerMm);
    if (way.equals("leave")) {
      return "leave it as it is";
    }
    return Printed.fixed(Math.abs(longerMm), 2)
        + " mm "
        + way
        + (pitchMm.isPresent() ? " = " + told(turns(longerMm)) : "");
  }

  private static String told(OptionalDouble turns) {
    // Tenths of a flat first, so that 5.96 flats are a turn and not "6.0 flats".
    long tenths = Math.round(turns.getAsDouble() * FLATS * 10);
    long whole = tenths / (10 * FLATS);
    String flats = Printed.exact(tenths % (10 * FLATS) / 10.0);
    String rest = flats.equals("1") ? "1 flat" : flats + " flats";
    if (whole == 0) {
      return tenths < 10 ? flats + " of a flat" : rest;
    }
    String full = whole == 1 ? "1 turn" : whole + " turns";
    return flats.equals("0") ? full : full + " and " + rest;
  }
}
