package insidelift.engine.geometry.positions;

import insidelift.engine.geometry.Printed;
import insidelift.engine.geometry.RefusedInputException;
import insidelift.engine.geometry.Side;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The pairs of positions of one kingpin that come nearest to a wanted change of camber and caster
 * together.
 *
 * @param side of the kart
 * @param now where the washers are
 * @param wanted the change wanted
 * @param choices the best first, never empty
 * @param reach whether the best one will do
 * @param limit what the hardware cannot do, as a sentence; empty if nothing
 */
public record PositionAdvice(
    Side side,
    PositionPair now,
    WantedChange wanted,
    List<PositionChoice> choices,
    Reach reach,
    String limit) {

  /** How good the best choice is. */
  public enum Reach {
    /** Within 0.05°: nearer than a garage gauge reads (provisional). */
    REACHED,
    /** Within 0.25°, which counts as equal left and right (provisional). */
    NEAR,
    /** Further off: the hardware cannot do it. */
    OUT_OF_REACH
  }

  private static final double REACHED_DEG = 0.05;
  private static final double NEAR_DEG = 0.25;

  /** Choices that differ by less than this are one choice: far below what a gauge reads. */
  private static final double SAME_DEG = 1e-6;

  /** The choices in their order cannot be changed from outside. */
  public PositionAdvice {
    choices = List.copyOf(choices);
  }

  /**
   * Tries every pair.
   *
   * @param now where the washers are
   * @param count how many choices to keep, at least 1
   * @throws RefusedInputException if {@code now} names a position that the hardware has not
   */
  public static PositionAdvice of(
      Side side, EccentricHardware hardware, PositionPair now, WantedChange wanted, int count) {
    String place = "now." + side.word();
    WasherPosition top = hardware.topAt(now, place);
    WasherPosition bottom = hardware.bottomAt(now, place);
    List<PositionChoice> all = new ArrayList<>();
    for (WasherPosition newTop : hardware.top()) {
      for (WasherPosition newBottom : hardware.bottom()) {
        all.add(choice(top, bottom, newTop, newBottom, wanted));
      }
    }
    all.sort(
        Comparator.comparingDouble((PositionChoice c) -> Math.rint(c.missDeg() / SAME_DEG))
            .thenComparingDouble(PositionChoice::turningDeg));
    List<PositionChoice> best = new ArrayList<>();
    for (PositionChoice choice : all) {
      if (best.size() < count && best.stream().noneMatch(b -> sameEffect(b, choice))) {
        best.add(choice);
      }
    }
    double miss = best.get(0).missDeg();
    Reach reach =
        miss <= REACHED_DEG ? Reach.REACHED : miss <= NEAR_DEG ? Reach.NEAR : Reach.OUT_OF_REACH;
    return new PositionAdvice(
        side, now, wanted, best, reach, limit(hardware, wanted, best.get(0), reach));
  }

  private static PositionChoice choice(
      WasherPosition top,
      WasherPosition bottom,
      WasherPosition newTop,
      WasherPosition newBottom,
      WantedChange wanted) {
    // Top and bottom shift the same kingpin, so their tangents add before the angle is taken.
    double camber =
        degrees(newTop.camberTan() + newBottom.camberTan())
            - degrees(top.camberTan() + bottom.camberTan());
    double caster =
        degrees(newTop.casterTan() + newBottom.casterTan())
            - degrees(top.casterTan() + bottom.casterTan());
    return new PositionChoice(
        new PositionPair(newTop.name(), newBottom.name()),
        camber,
        caster,
        camber - wanted.camberDeg(),
        caster - wanted.casterDeg(),
        top.turnTo(newTop),
        bottom.turnTo(newBottom));
  }

  private static double degrees(double tangent) {
    return Math.toDegrees(Math.atan(tangent));
  }

  private static boolean sameEffect(PositionChoice a, PositionChoice b) {
    return Math.abs(a.camberDeg() - b.camberDeg()) < SAME_DEG
        && Math.abs(a.casterDeg() - b.casterDeg()) < SAME_DEG;
  }

  private static String limit(
      EccentricHardware hardware, WantedChange wanted, PositionChoice best, Reach reach) {
    String still = "";
    if (wanted.casterDeg() != 0 && hardware.movesCamberOnly()) {
      still = "This hardware moves camber only: the caster stays. ";
    } else if (wanted.camberDeg() != 0 && hardware.movesCasterOnly()) {
      still = "This hardware moves caster only: the camber stays. ";
    }
    String miss =
        reach != Reach.OUT_OF_REACH
            ? ""
            : "This hardware cannot do it: its nearest pair misses camber by "
                + Printed.signed(best.camberOverDeg(), 2)
                + "° and caster by "
                + Printed.signed(best.casterOverDeg(), 2)
                + "°.";
    return (still + miss).strip();
  }

  /** The choice to make. */
  public PositionChoice best() {
    return choices.get(0);
  }
}
