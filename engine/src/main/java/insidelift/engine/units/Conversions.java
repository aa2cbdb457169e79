package insidelift.engine.units;

import javax.measure.IncommensurableException;
import javax.measure.Unit;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import tech.units.indriya.unit.Units;

/**
 * Conversions by the reference implementation of the units API (JSR 385). The units that it leaves
 * to others are put together from their exact definitions: the international pound and inch of 1959
 * and the standard gravity of the CGPM of 1901, as NIST SP 811, appendix B, gives them.
 */
final class Conversions {

  private static final double POUND_KG = 0.45359237;
  private static final double INCH_M = 0.0254;
  private static final double GRAVITY = 9.80665;

  private static final Unit<Pressure> BAR = Units.PASCAL.multiply(100_000);
  private static final Unit<Pressure> KILOPASCAL = Units.PASCAL.multiply(1000);
  private static final Unit<Pressure> PSI =
      Units.PASCAL.multiply(POUND_KG * GRAVITY / (INCH_M * INCH_M));
  private static final Unit<Temperature> RANKINE = Units.KELVIN.multiply(5).divide(9);
  private static final Unit<Temperature> FAHRENHEIT = RANKINE.shift(459.67);
  private static final Unit<Power> KILOWATT = Units.WATT.multiply(1000);
  private static final Unit<Power> HORSEPOWER =
      Units.WATT.multiply(550 * 12 * INCH_M * POUND_KG * GRAVITY);
  private static final Unit<Power> METRIC_HORSEPOWER = Units.WATT.multiply(75 * GRAVITY);

  private Conversions() {}

  static double convert(KnownUnit from, KnownUnit to, double number) {
    return convert(unit(from), unit(to), number);
  }

  static double convertDifference(KnownUnit from, KnownUnit to, double number) {
    return convert(step(from), step(to), number);
  }

  private static double convert(Unit<?> from, Unit<?> to, double number) {
    try {
      return from.getConverterToAny(to).convert(number);
    } catch (IncommensurableException e) {
      throw new IllegalArgumentException(from + " and " + to + " measure different things", e);
    }
  }

  private static Unit<?> unit(KnownUnit unit) {
    return switch (unit) {
      case BAR -> BAR;
      case KILOPASCAL -> KILOPASCAL;
      case PSI -> PSI;
      case CELSIUS -> Units.CELSIUS;
      case FAHRENHEIT -> FAHRENHEIT;
      case KILOWATT -> KILOWATT;
      case HORSEPOWER -> HORSEPOWER;
      case METRIC_HORSEPOWER -> METRIC_HORSEPOWER;
    };
  }

  /** One step of a scale, without its nought. */
  private static Unit<?> step(KnownUnit unit) {
    return switch (unit) {
      case CELSIUS -> Units.KELVIN;
      case FAHRENHEIT -> RANKINE;
      default -> unit(unit);
    };
  }
}
