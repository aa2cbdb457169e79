package insidelift.console.asking;

import insidelift.console.cli.Decimal;
import insidelift.console.cli.UnitsOption;
import insidelift.console.log.RunFacts;
import insidelift.console.log.RunPlace;
import insidelift.console.log.RunSituation;
import insidelift.console.terminal.Numbers;
import insidelift.engine.units.Units;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.TypeConversionException;

/** Everything that turns a typed word into a value. */
public final class TypedWords {

  /** What reads a text, or refuses it. */
  private interface Reading {
    Object read(String text) throws Exception;
  }

  private static final List<Reading> READINGS =
      List.of(
          new Measures(Units.METRIC)::pressures,
          new Measures(Units.named("us"))::pressures,
          new Measures(Units.METRIC)::leftTread,
          new Measures(Units.named("us"))::rightTread,
          new UnitsOption.Words()::convert,
          new Decimal()::convert,
          new RunFacts.FeelWord()::convert,
          new RunPlace.Date()::convert,
          new RunSituation.Pair()::convert);

  private TypedWords() {}

  /** What those say that refuse a text; whatever else is thrown is a fault. */
  public static List<Exception> refusals(String text) {
    List<Exception> refusals = new ArrayList<>();
    for (Reading reading : READINGS) {
      try {
        reading.read(text);
      } catch (NumberFormatException e) {
        throw e;
      } catch (TypeConversionException | IllegalArgumentException e) {
        refusals.add(e);
      } catch (RuntimeException e) {
        throw e;
      } catch (Exception e) {
        throw new AssertionError("a refusal that nobody announced", e);
      }
    }
    Numbers.of(text, 12);
    return refusals;
  }
}
