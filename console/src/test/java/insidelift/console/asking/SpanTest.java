package insidelift.console.asking;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.units.KnownUnit;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpanTest {

  private static final Span CELSIUS = Span.of(-20, 200, KnownUnit.CELSIUS);
  private static final Span FAHRENHEIT = Span.of(-20, 200, KnownUnit.FAHRENHEIT);
  private static final Span CAMBER = new Span(-10, 10, "degrees");

  private final Question power = Vocabulary.load().question("power").orElseThrow();

  @Test
  void aRangeIsSaidInTheUnitThatIsAskedFor() {
    assertThat(CELSIUS.words()).isEqualTo("-20 to 200 degrees Celsius");
    assertThat(FAHRENHEIT.words()).isEqualTo("-4 to 392 degrees Fahrenheit");
  }

  @ParameterizedTest
  @CsvSource({
    "60, CELSIUS, 60", "'60,5', CELSIUS, 60.5", "140F, CELSIUS, 60", "140, FAHRENHEIT, 60",
    "60C, FAHRENHEIT, 60", "60 °c, FAHRENHEIT, 60", "392, FAHRENHEIT, 200", "-4, FAHRENHEIT, -20"
  })
  void aNumberCountsInTheUnitOfFiles(String typed, KnownUnit asked, double celsius) {
    assertThat(Span.of(-20, 200, asked).read(typed)).isEqualTo(new Reply.Measured(celsius));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "11psi | \"11psi\" is a pressure; it takes -20 to 200 degrees Celsius.",
        "28 hp | \"28 hp\" is a power; it takes -20 to 200 degrees Celsius.",
        "hot   | \"hot\" is not a number; it takes -20 to 200 degrees Celsius.",
        "60K   | \"60K\" is not a number; it takes -20 to 200 degrees Celsius.",
        "201   | It takes -20 to 200 degrees Celsius.",
        "400F  | It takes -20 to 200 degrees Celsius.",
      })
  void everyOtherInputSaysWhatIsTaken(String typed, String why) {
    assertThat(CELSIUS.read(typed)).isEqualTo(new Reply.Unclear(why));
  }

  @Test
  void aPlainNumberTakesNoUnit() {
    assertThat(CAMBER.read("3C"))
        .isEqualTo(new Reply.Unclear("\"3C\" is not a number; it takes -10 to 10 degrees."));
    assertThat(CAMBER.read("-,5")).isEqualTo(new Reply.Measured(-0.5));
  }

  @Test
  void whatIsTypedIsShownWithItsUnit() {
    assertThat(FAHRENHEIT.check("140")).isEqualTo("140 degrees Fahrenheit: in range");
    assertThat(FAHRENHEIT.check("60C")).isEqualTo("60C: in range");
    assertThat(FAHRENHEIT.check("14psi")).startsWith("\"14psi\" is a pressure;");
  }

  @ParameterizedTest
  @CsvSource({"21kW, 21", "28 hp, 20.88", "28ps, 20.594"})
  void aPowerMayBeTypedInPlaceOfAChoice(String typed, double kilowatts) {
    Choices choices = Choices.of(power, "", List.of());
    assertThat(choices.read(typed)).isEqualTo(new Reply.Measured(kilowatts));
  }

  @Test
  void withoutAUnitItIsANumberOfTheList() {
    Choices choices = Choices.of(power, "", List.of());
    assertThat(choices.read("2")).isEqualTo(new Reply.Chosen("mid"));
    assertThat(choices.read("28"))
        .isEqualTo(new Reply.Unclear("There are choices 1 to 3; u means not known."));
    assertThat(choices.read("90hp")).isEqualTo(new Reply.Unclear("It takes 1 to 60 kilowatts."));
    assertThat(choices.read("11psi"))
        .isEqualTo(new Reply.Unclear("\"11psi\" is a pressure; it takes 1 to 60 kilowatts."));
  }
}
