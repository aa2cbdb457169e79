package insidelift.console.asking;

import insidelift.engine.units.KnownUnit;
import insidelift.engine.units.Units;

/**
 * The heat across one front tyre, typed in one line as everywhere else: {@code 78/70/61}, from the
 * edge nearest the seat outward.
 *
 * @param units what numbers without a unit mean
 */
public record Tread(Units units) implements Measurable {

  @Override
  public String asked() {
    return "edge nearest the seat/middle/edge away from the seat, in %s, as in %s"
        .formatted(unit(), units.temperature() == KnownUnit.CELSIUS ? "78/70/61" : "172/158/142");
  }

  @Override
  public Reply read(String said) {
    String row = said.strip();
    try {
      // The left one stands for both: the same numbers are numbers of a tyre on either side.
      return new Reply.Heat(
          new Measures(units).leftTread(row.contains("/") ? row : row.replaceAll(" +", "/")));
    } catch (IllegalArgumentException e) {
      return new Reply.Unclear("It takes " + asked() + ".");
    }
  }

  @Override
  public String withUnit(String typed) {
    return typed.chars().anyMatch(Character::isLetter) ? typed : typed + ' ' + unit();
  }

  @Override
  public String unit() {
    return units.temperature().words();
  }
}
