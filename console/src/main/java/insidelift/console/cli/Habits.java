package insidelift.console.cli;

import insidelift.engine.units.Units;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is usual where the user lives, by the environment as POSIX has it (IEEE 1003.1, chapter 8.2:
 * {@code LC_ALL}, then the category's own variable, then {@code LANG}); where it says nothing, as
 * on Windows, by the platform's settings.
 */
public enum Habits {
  /** Units. */
  MEASURES("LC_MEASUREMENT"),
  /** Dates. */
  DATES("LC_TIME");

  private final String variable;

  Habits(String variable) {
    this.variable = variable;
  }

  /** The units that are usual in the user's country. */
  public static Units units() {
    return Units.ofRegion(MEASURES.region());
  }

  /** The country's two letters, or nothing where none is named. */
  String region() {
    return locale().getCountry();
  }

  /** The language and country. */
  public Locale locale() {
    return locale(System.getenv());
  }

  Locale locale(Map<String, String> environment) {
    Optional<String> name =
        Stream.of("LC_ALL", variable, "LANG")
            .map(key -> environment.getOrDefault(key, ""))
            .filter(value -> !value.isEmpty())
            .findFirst();
    return name.map(Habits::named).orElseGet(() -> Locale.getDefault(Locale.Category.FORMAT));
  }

  /** A name such as {@code en_US.UTF-8}, {@code de_AT@euro} or {@code C}. */
  private static Locale named(String name) {
    String plain = name.split("[.@]", 2)[0];
    return plain.equals("C") || plain.equals("POSIX")
        ? Locale.ROOT
        : Locale.forLanguageTag(plain.replace('_', '-'));
  }
}
