package insidelift.engine.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The units that can be read and shown. */
public enum KnownUnit {
  /** 100 kPa. */
  BAR(Quantity.PRESSURE, "bar", "bar", 2, 4, "bar"),
  /** 1000 N/m². */
  KILOPASCAL(Quantity.PRESSURE, "kPa", "kilopascal", 0, 2, "kpa"),
  /** Pound-force per square inch. */
  PSI(Quantity.PRESSURE, "psi", "psi", 1, 3, "psi"),
  /** Degree Celsius. */
  CELSIUS(Quantity.TEMPERATURE, "°C", "degrees Celsius", 0, 2, "c °c"),
  /** Degree Fahrenheit. */
  FAHRENHEIT(Quantity.TEMPERATURE, "°F", "degrees Fahrenheit", 0, 2, "f °f"),
  /** 1000 W. */
  KILOWATT(Quantity.POWER, "kW", "kilowatts", 1, 3, "kw"),
  /** Mechanical horsepower: 550 foot-pounds-force a second. */
  HORSEPOWER(Quantity.POWER, "hp", "horsepower", 1, 3, "hp bhp"),
  /** Metric horsepower: 75 kilogram-force metres a second. */
  METRIC_HORSEPOWER(Quantity.POWER, "PS", "metric horsepower", 1, 3, "ps cv ch");

  private final Quantity quantity;
  private final String symbol;
  private final String words;
  private final int shown;
  private final int kept;
  private final String spellings;

  KnownUnit(Quantity quantity, String symbol, String words, int shown, int kept, String spellings) {
    this.quantity = quantity;
    this.symbol = symbol;
    this.words = words;
    this.shown = shown;
    this.kept = kept;
    this.spellings = spellings;
  }

  /** The unit that is spelt so, whatever the case of the letters. */
  public static Optional<KnownUnit> spelt(String word) {
    String small = word.toLowerCase(Locale.ROOT);
    return Stream.of(values())
        .filter(unit -> List.of(unit.spellings.split(" ", -1)).contains(small))
        .findFirst();
  }

  /** What it measures. */
  public Quantity quantity() {
    return quantity;
  }

  /** Its sign, as in {@code °C}. */
  public String symbol() {
    return symbol;
  }

  /** Its name in words, as in {@code degrees Celsius}. */
  public String words() {
    return words;
  }

  /** How many decimals a reader needs. */
  public int decimals() {
    return shown;
  }

  /**
   * A number of this unit in another.
   *
   * @throws IllegalArgumentException if the units measure different things
   */
  public double to(KnownUnit other, double number) {
    return this == other ? number : other.kept(Conversions.convert(this, other, number));
  }

  /**
   * A difference of two numbers of this unit in another: for temperatures the noughts of the two
   * scales do not matter.
   *
   * @throws IllegalArgumentException if the units measure different things
   */
  public double differenceTo(KnownUnit other, double difference) {
    return this == other
        ? difference
        : other.kept(Conversions.convertDifference(this, other, difference));
  }

  /** Without the noise of arithmetic, and finer than any gauge resolves. */
  private double kept(double number) {
    return BigDecimal.valueOf(number).setScale(kept, RoundingMode.HALF_UP).doubleValue();
  }

  /** A number as it is shown, rounded half up, with its unit, as in {@code 0.75 bar}. */
  public String text(double number) {
    return text(number, shown) + ' ' + symbol;
  }

  /** A number rounded half up to so many decimals; never a negative nought. */
  public static String text(double number, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
    return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString();
  }
}
