package insidelift.console.cli;

import insidelift.shared.situation.Printable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A number on the command line, with a decimal point or a decimal comma. */
public final class Decimal implements ITypeConverter<Double> {

  @Override
  public Double convert(String text) {
    if (!text.strip().matches("[+-]?(?:\\d{1,9}(?:[.,]\\d{0,9})?|[.,]\\d{1,9})")) {
      throw new TypeConversionException(
          Printable.quoted(text) + " is not a number such as 0.4 or 0,4");
    }
    return Double.valueOf(text.strip().replace(',', '.'));
  }
}
