package insidelift.engine.units;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as it was typed, with its unit if one was typed behind it, as in {@code 11.5psi}, {@code
 * 0,8 bar} or {@code 165F}.
 *
 * @param number the number
 * @param unit the unit, if it was named
 */
public record Amount(double number, Optional<KnownUnit> unit) {

  private static final Pattern TYPED =
      Pattern.compile(
          "([+-]?(?:\\d{1,6}(?:[.,]\\d{0,6})?|[.,]\\d{1,6}))\\s{0,3}(°?[A-Za-z]{1,3}|)");

  /**
   * The amount of a text; nothing for anything else than a decimal number, with a point or a comma,
   * and perhaps a known unit.
   */
  public static Optional<Amount> of(String text) {
    Matcher typed = TYPED.matcher(text.strip());
    if (!typed.matches()) {
      return Optional.empty();
    }
    double number = Double.parseDouble(typed.group(1).replace(',', '.'));
    if (typed.group(2).isEmpty()) {
      return Optional.of(new Amount(number, Optional.empty()));
    }
    return KnownUnit.spelt(typed.group(2)).map(unit -> new Amount(number, Optional.of(unit)));
  }

  /** Whether it can be a number of that quantity: no unit was named, or one of it. */
  public boolean fits(Quantity quantity) {
    return unit.isEmpty() || unit.get().quantity() == quantity;
  }

  /**
   * The number in a unit.
   *
   * @param unnamed the unit that was meant where none was named
   * @throws IllegalArgumentException if the units measure different things
   */
  public double in(KnownUnit wanted, KnownUnit unnamed) {
    return unit.orElse(unnamed).to(wanted, number);
  }
}
