package insidelift.console;

import insidelift.engine.logbook.Pressures;
import insidelift.shared.Degrees;
import insidelift.shared.situation.EdgeTemperatures;
import insidelift.shared.situation.Printable;
import insidelift.shared.situation.Sides;
import java.util.Arrays;
import picocli.CommandLine.TypeConversionException;

/** Measured numbers as they are typed: {@code 0.75/0.75/0.8/0.8}, with a decimal point or comma. */
final class Measures {

  private Measures() {}

  /** Left and right; one number stands for both. */
  static Sides sides(String text) {
    double[] sides = numbers(text, 2, "a number such as -0.5, or left/right such as -0.5/-0.25");
    return new Sides(Degrees.of(sides[0]), Degrees.of(sides[1]));
  }

  /** The four tyres; one number stands for all. */
  static Pressures bar(String text) {
    double[] bar =
        numbers(
            text,
            4,
            "a number such as 0.75, or front left/front right/rear left/rear right such as"
                + " 0.75/0.75/0.8/0.8");
    return new Pressures(bar[0], bar[1], bar[2], bar[3]);
  }

  /** Edge nearest the seat, middle, edge away from the seat. */
  static EdgeTemperatures tread(String text) {
    String wanted = "edge nearest the seat/middle/edge away from the seat such as 61/58/55";
    if (text.split("/", -1).length == 1) {
      throw refused(text, wanted);
    }
    double[] tread = numbers(text, 3, wanted);
    return new EdgeTemperatures(tread[0], tread[1], tread[2]);
  }

  private static double[] numbers(String text, int count, String wanted) {
    String[] parts = text.split("/", -1);
    if (parts.length != count && parts.length != 1) {
      throw refused(text, wanted);
    }
    double[] numbers = new double[count];
    Arrays.setAll(numbers, i -> number(parts[parts.length == 1 ? 0 : i].strip(), text, wanted));
    return numbers;
  }

  private static double number(String part, String text, String wanted) {
    if (!part.matches("[+-]?\\d{1,4}(?:[.,]\\d{1,4})?")) {
      throw refused(text, wanted);
    }
    return Double.parseDouble(part.replace(',', '.'));
  }

  private static TypeConversionException refused(String text, String wanted) {
    return new TypeConversionException(Printable.quoted(text) + " is not " + wanted);
  }
}
