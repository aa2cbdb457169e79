package insidelift.console.asking;

import insidelift.engine.units.Amount;
import insidelift.engine.units.KnownUnit;
import insidelift.shared.situation.Printable;
import java.util.Optional;

/**
 * The legal range of a number, both ends included.
 *
 * @param min the least number, in the unit that is asked for
 * @param max the greatest number, in the unit that is asked for
 * @param unit that unit in words
 * @param other that unit, where another may be typed behind the number
 */
public record Span(double min, double max, String unit, Optional<KnownUnit> other)
    implements Measurable {

  /** A range of plain numbers. */
  public Span(double min, double max, String unit) {
    this(min, max, unit, Optional.empty());
  }

  /** A range that is given in the unit of files and asked for in another. */
  static Span of(double min, double max, KnownUnit asked) {
    KnownUnit stored = asked.quantity().stored();
    return new Span(
        Math.round(stored.to(asked, min)),
        Math.round(stored.to(asked, max)),
        asked.words(),
        Optional.of(asked));
  }

  @Override
  public String asked() {
    return "a number, " + words();
  }

  String words() {
    return "%s to %s %s".formatted(plain(min), plain(max), unit);
  }

  /** What a typed number means, in the unit of files; or what is wrong with it. */
  @Override
  public Reply read(String said) {
    Optional<Amount> amount = Amount.of(said);
    if (amount.isEmpty() || (other.isEmpty() && amount.get().unit().isPresent())) {
      return new Reply.Unclear(
          Printable.quoted(said) + " is not a number; it takes " + words() + ".");
    }
    double number = amount.get().number();
    if (other.isPresent()) {
      KnownUnit wanted = other.get();
      if (!amount.get().fits(wanted.quantity())) {
        return new Reply.Unclear(
            "%s is %s; it takes %s."
                .formatted(
                    Printable.quoted(said),
                    amount.get().unit().orElseThrow().quantity().words(),
                    words()));
      }
      number = amount.get().in(wanted, wanted);
    }
    if (!(number >= min && number <= max)) {
      return new Reply.Unclear("It takes " + words() + ".");
    }
    return new Reply.Measured(
        other.isPresent() ? amount.get().in(other.get().quantity().stored(), other.get()) : number);
  }

  @Override
  public String withUnit(String typed) {
    boolean named = Amount.of(typed).flatMap(Amount::unit).isPresent();
    return named ? typed : typed + ' ' + unit;
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }
}
