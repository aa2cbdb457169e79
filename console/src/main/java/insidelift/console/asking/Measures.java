package insidelift.console.asking;

import insidelift.engine.logbook.entry.Pressures;
import insidelift.engine.logbook.entry.RefusedEntryException;
import insidelift.engine.logbook.entry.Tyres;
import insidelift.engine.units.Amount;
import insidelift.engine.units.KnownUnit;
import insidelift.engine.units.Quantity;
import insidelift.engine.units.Units;
import insidelift.shared.Degrees;
import insidelift.shared.situation.EdgeTemperatures;
import insidelift.shared.situation.Printable;
import insidelift.shared.situation.Sides;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;

/**
 * Measured numbers as they are typed: {@code 0.75/0.75/0.8/0.8}, with a decimal point or comma. A
 * unit behind a number counts for it, one behind the last for all that have none.
 */
public final class Measures {

  private static final String PRESSURES =
      "a number such as %s, or front left/front right/rear left/rear right such as %s";
  private static final String TREAD =
      "edge nearest the seat/middle/edge away from the seat such as %s";

  private final Units units;

  /**
   * @param units what numbers without a unit mean
   */
  public Measures(Units units) {
    this.units = units;
  }

  /** Left and right; one number stands for both. */
  public static Sides sides(String text) {
    String wanted = "a number such as -0.5, or left/right such as -0.5/-0.25";
    String[] parts = parts(text, 2, wanted);
    double[] sides = new double[parts.length];
    Arrays.setAll(sides, i -> angle(parts[i].strip(), text, wanted));
    return new Sides(Degrees.of(sides[0]), Degrees.of(sides[1]));
  }

  /** The four tyres; one number stands for all. */
  public Pressures pressures(String text) {
    boolean bar = units.pressure() == KnownUnit.BAR;
    String wanted =
        bar
            ? PRESSURES.formatted("0.75", "0.75/0.75/0.8/0.8")
            : PRESSURES.formatted("11psi", "11/11/11.5/11.5psi");
    double[] each = amounts(text, 4, Quantity.PRESSURE, wanted);
    try {
      return new Pressures(each[0], each[1], each[2], each[3]);
    } catch (RefusedEntryException e) {
      throw new IllegalArgumentException(e.getMessage() + readAs(text, Quantity.PRESSURE), e);
    }
  }

  /** The front left tyre: edge nearest the seat, middle, edge away from the seat. */
  public EdgeTemperatures leftTread(String text) {
    return within(text, tread -> new Tyres(none(), none(), Optional.of(tread), none()));
  }

  /** The front right tyre, the same way. */
  public EdgeTemperatures rightTread(String text) {
    return within(text, tread -> new Tyres(none(), none(), none(), Optional.of(tread)));
  }

  private static <T> Optional<T> none() {
    return Optional.empty();
  }

  private EdgeTemperatures within(String text, Function<EdgeTemperatures, Tyres> check) {
    EdgeTemperatures tread = tread(text);
    try {
      Tyres checked = check.apply(tread);
      return checked.left().or(checked::right).orElseThrow();
    } catch (RefusedEntryException e) {
      throw new IllegalArgumentException(e.getMessage() + readAs(text, Quantity.TEMPERATURE), e);
    }
  }

  private EdgeTemperatures tread(String text) {
    String wanted =
        TREAD.formatted(units.temperature() == KnownUnit.CELSIUS ? "61/58/55" : "142/136/131");
    if (text.split("/", -1).length == 1) {
      throw refused(text, wanted);
    }
    double[] tread = amounts(text, 3, Quantity.TEMPERATURE, wanted);
    return new EdgeTemperatures(tread[0], tread[1], tread[2]);
  }

  /** The numbers of a text in the unit of files. */
  private double[] amounts(String text, int count, Quantity quantity, String wanted) {
    String[] parts = parts(text, count, wanted);
    KnownUnit unnamed = unnamed(text, quantity);
    double[] numbers = new double[count];
    Arrays.setAll(
        numbers,
        i -> {
          Amount amount = Amount.of(parts[i]).orElseThrow(() -> refused(text, wanted));
          if (!amount.fits(quantity)) {
            throw refused(text, wanted);
          }
          return amount.in(quantity.stored(), unnamed);
        });
    return numbers;
  }

  /** What a number without a unit means in a text. */
  private KnownUnit unnamed(String text, Quantity quantity) {
    Optional<KnownUnit> last =
        Amount.of(text.substring(text.lastIndexOf('/') + 1)).flatMap(Amount::unit);
    return last.orElse(units.of(quantity));
  }

  /** Where a number was converted, what it was taken for. */
  private String readAs(String text, Quantity quantity) {
    KnownUnit unit = unnamed(text, quantity);
    return unit == quantity.stored()
        ? ""
        : " (" + Printable.quoted(text) + " was read as " + unit.symbol() + ")";
  }

  private static String[] parts(String text, int count, String wanted) {
    String[] parts = text.split("/", -1);
    if (parts.length != count && parts.length != 1) {
      throw refused(text, wanted);
    }
    String[] all = new String[count];
    Arrays.setAll(all, i -> parts[parts.length == 1 ? 0 : i]);
    return all;
  }

  private static double angle(String part, String text, String wanted) {
    if (!part.matches("[+-]?\\d{1,4}(?:[.,]\\d{1,4})?")) {
      throw refused(text, wanted);
    }
    return Double.parseDouble(part.replace(',', '.'));
  }

  private static IllegalArgumentException refused(String text, String wanted) {
    return new IllegalArgumentException(Printable.quoted(text) + " is not " + wanted);
  }
}
