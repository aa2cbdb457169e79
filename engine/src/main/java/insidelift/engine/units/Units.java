package insidelift.engine.units;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The units that a person reads and types.
 *
 * @param pressure the unit of pressures
 * @param temperature the unit of temperatures
 * @param power the unit of engine powers
 */
public record Units(KnownUnit pressure, KnownUnit temperature, KnownUnit power) {

  /** The units in which everything is stored. */
  public static final Units METRIC =
      new Units(KnownUnit.BAR, KnownUnit.CELSIUS, KnownUnit.KILOWATT);

  private static final Units US =
      new Units(KnownUnit.PSI, KnownUnit.FAHRENHEIT, KnownUnit.HORSEPOWER);

  private static final Units UK = new Units(KnownUnit.PSI, KnownUnit.CELSIUS, KnownUnit.HORSEPOWER);

  private static final String REGIONS = "/insidelift/units-by-region.properties";

  private static final Pattern STORED = Pattern.compile("(\\d+(?:\\.\\d+)?) (bar|°C)\\b");

  /** What stands behind a temperature that is a step between two, not a point of the scale. */
  private static final Pattern DIFFERENCE =
      Pattern.compile(" (?:counts as a difference|hotter|colder|warmer|cooler|apart)\\b.*");

  /**
   * Whether these are the units in which everything is stored. Asked at every start, where the
   * first comparison of two records would take Java fifty milliseconds to prepare.
   */
  public boolean metric() {
    return pressure == KnownUnit.BAR
        && temperature == KnownUnit.CELSIUS
        && power == KnownUnit.KILOWATT;
  }

  /**
   * The units of words such as {@code us}, {@code psi} or {@code uk,F}, the later word winning.
   *
   * @throws IllegalArgumentException if a word is unknown, and which
   */
  public static Units named(String words) {
    Units units = METRIC;
    for (String word : words.split(",", -1)) {
      units = units.with(word.strip());
    }
    return units;
  }

  private Units with(String word) {
    return switch (word.toLowerCase(Locale.ROOT)) {
      case "metric" -> METRIC;
      case "us" -> US;
      case "uk" -> UK;
      default ->
          with(
              KnownUnit.spelt(word)
                  .orElseThrow(
                      () ->
                          new IllegalArgumentException(
                              "use metric, us or uk, or units such as psi,F,hp")));
    };
  }

  private Units with(KnownUnit unit) {
    return switch (unit.quantity()) {
      case PRESSURE -> new Units(unit, temperature, power);
      case TEMPERATURE -> new Units(pressure, unit, power);
      case POWER -> new Units(pressure, temperature, unit);
    };
  }

  /**
   * The units that are usual in a country.
   *
   * @param region its two letters by ISO 3166; metric for any other text
   */
  public static Units ofRegion(String region) {
    if (region.isEmpty()) {
      return METRIC;
    }
    Properties usual = new Properties();
    try (InputStream in = Units.class.getResourceAsStream(REGIONS)) {
      usual.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Units units = METRIC;
    for (KnownUnit unit : List.of(KnownUnit.PSI, KnownUnit.FAHRENHEIT, KnownUnit.HORSEPOWER)) {
      String regions = usual.getProperty(unit.name().toLowerCase(Locale.ROOT), "");
      if (List.of(regions.split(" ", -1)).contains(region)) {
        units = units.with(unit);
      }
    }
    return units;
  }

  /** The unit of a quantity. */
  public KnownUnit of(Quantity quantity) {
    return switch (quantity) {
      case PRESSURE -> pressure;
      case TEMPERATURE -> temperature;
      case POWER -> power;
    };
  }

  /** A stored number in these units. */
  public double number(Quantity quantity, double stored) {
    return quantity.stored().to(of(quantity), stored);
  }

  /**
   * Prose in these units: every pressure in bar and every temperature in °C that it names is
   * converted. A temperature that is said to be a difference is converted as one. Powers are left:
   * where the knowledge names one, kilowatts and horsepower stand side by side.
   */
  public String prose(String text) {
    if (pressure == KnownUnit.BAR && temperature == KnownUnit.CELSIUS) {
      return text;
    }
    Matcher found = STORED.matcher(text);
    StringBuilder told = new StringBuilder();
    while (found.find()) {
      KnownUnit stored = KnownUnit.spelt(found.group(2)).orElseThrow();
      KnownUnit wanted = of(stored.quantity());
      double number = Double.parseDouble(found.group(1));
      boolean difference =
          stored == KnownUnit.CELSIUS
              && DIFFERENCE.matcher(text).region(found.end(), text.length()).matches();
      String words =
          stored == wanted
              ? found.group()
              : wanted.text(
                  difference ? stored.differenceTo(wanted, number) : stored.to(wanted, number));
      found.appendReplacement(told, Matcher.quoteReplacement(words));
    }
    return found.appendTail(told).toString();
  }
}
