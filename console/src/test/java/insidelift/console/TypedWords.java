package insidelift.console;

import insidelift.engine.logbook.RefusedEntryException;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Everything that turns a typed word into a value. */
public final class TypedWords {

  private static final List<ITypeConverter<?>> CONVERTERS =
      List.of(
          new RunFacts.Bar(),
          new RunFacts.Celsius(),
          new RunFacts.FeelWord(),
          new RunPlace.Date(),
          new RunSituation.Pair());

  private TypedWords() {}

  /** What those say that refuse a text; whatever else is thrown is a fault. */
  public static List<Exception> refusals(String text) {
    List<Exception> refusals = new ArrayList<>();
    for (ITypeConverter<?> converter : CONVERTERS) {
      try {
        converter.convert(text);
      } catch (TypeConversionException | RefusedEntryException e) {
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
