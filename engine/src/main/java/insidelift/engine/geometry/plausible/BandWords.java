package insidelift.engine.geometry.plausible;

import insidelift.engine.geometry.Printed;
import insidelift.engine.geometry.kart.Corner;

/**
 * Bands in words, with no digit that the band does not bear: loads in tenths of the standing load,
 * accelerations to 0.1 g, leans to whole degrees; newtons and half degrees only of a kart measured
 * well enough.
 */
public final class BandWords {

  /** With half a band no wider, newtons to the ten say something; provisional. */
  private static final double NEWTONS_FROM_N = 30;

  /** With half a band no wider, half degrees say something; provisional. */
  private static final double HALVES_FROM_DEG = 0.8;

  private static final double NEARLY_NOTHING = 0.1;

  private BandWords() {}

  static String corner(Corner corner) {
    String name = corner.name().isEmpty() ? "left turn" : corner.name();
    double slowing = -corner.longitudinalG();
    return Character.toUpperCase(name.charAt(0))
        + name.substring(1)
        + ": "
        + Printed.exact(corner.steerDeg())
        + "° of steer, "
        + Printed.exact(corner.lateralG())
        + " g"
        + (slowing == 0
            ? ""
            : (slowing > 0 ? ", slowing by " : ", speeding up by ")
                + Printed.exact(Math.abs(slowing))
                + " g");
  }

  static String insideRear(CornerBands bands) {
    Band share = bands.rearInnerShare();
    Band newtons = bands.rearInnerN();
    if (newtons.halfWidth() <= NEWTONS_FROM_N) {
      return "about "
          + tens(newtons.mid())
          + " N on it, "
          + to(tens(newtons.low()), tens(newtons.high()));
    }
    String mid = share.mid() < NEARLY_NOTHING ? "nearly nothing" : "about " + tenths(share.mid());
    return mid
        + " on it, "
        + to(tenths(share.low()), tenths(share.high()))
        + " of its standing load";
  }

  private static String tens(double newtons) {
    return Printed.fixed(10.0 * Math.round(newtons / 10), 0);
  }

  private static String to(String low, String high) {
    return low.equals(high) ? high : low + " to " + high;
  }

  /** A share in tenths, a quarter and a half by their names. */
  static String tenths(double share) {
    if (Math.abs(share - 0.25) < 0.025) {
      return "a quarter";
    }
    long tenths = Math.round(10 * share);
    if (tenths == 0) {
      return "0";
    }
    if (tenths == 5) {
      return "half";
    }
    return tenths == 1 ? "a tenth" : tenths == 10 ? "all" : tenths + " tenths";
  }

  static String ofTen(double share) {
    long tenths = Math.round(10 * share);
    if (share == 0) {
      return "on no kart that fits what is known";
    }
    return tenths == 0
        ? "on hardly any kart that fits what is known"
        : "on " + tenths + " of 10 karts that fit what is known";
  }

  public static String lift(Band g) {
    if (!Double.isFinite(g.mid())) {
      return "not before it tips over";
    }
    return "at "
        + Printed.fixed(g.mid(), 1)
        + " g, "
        + Printed.fixed(g.low(), 1)
        + " to "
        + (Double.isFinite(g.high()) ? Printed.fixed(g.high(), 1) : "never");
  }

  static String least(Band g) {
    return Printed.fixed(g.mid(), 1).equals("0.0")
        ? ""
        : "; below " + Printed.fixed(g.mid(), 1) + " g at no steer";
  }

  /**
   * A lean into the turn.
   *
   * @param into the sign of the camber that is into the turn: +1 inner, −1 outer
   */
  static String lean(Band deg, int into) {
    boolean halves = deg.halfWidth() <= HALVES_FROM_DEG;
    double low = into > 0 ? deg.low() : -deg.high();
    double high = into > 0 ? deg.high() : -deg.low();
    return degrees(into * deg.mid(), halves)
        + "° into the turn ("
        + degrees(low, halves)
        + " to "
        + degrees(high, halves)
        + ")";
  }

  private static String degrees(double deg, boolean halves) {
    return halves ? Printed.fixed(Math.round(2 * deg) / 2.0, 1) : Printed.fixed(deg, 0);
  }

  /** How many decimals show one significant digit of a difference, at most two. */
  public static int decimals(double difference) {
    double size = Math.abs(difference);
    return size >= 1 ? 0 : size >= 0.1 ? 1 : 2;
  }

  /** A difference with one significant digit, and its band as fine; empty if it shows none. */
  public static String difference(Band band) {
    if (!band.isFinite()) {
      return "";
    }
    int decimals = decimals(band.mid());
    String mid = Printed.signed(band.mid(), decimals);
    boolean none = mid.matches("[0.]+");
    return none
        ? ""
        : mid
            + " ("
            + Printed.signed(band.low(), decimals)
            + " to "
            + Printed.signed(band.high(), decimals)
            + ")";
  }
}
