package insidelift.engine.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import insidelift.engine.notes.NoteBook;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Band;
import insidelift.shared.Vocabulary.Question;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitsTest {

  private static final Units US = Units.named("us");

  /** From NIST SP 811 (2008), appendix B.8: factors as printed there, to all printed digits. */
  @ParameterizedTest
  @CsvSource({
    "PSI, KILOPASCAL, 6.894757, 1e-6",
    "BAR, KILOPASCAL, 100, 0",
    "HORSEPOWER, KILOWATT, 0.7456999, 1e-7",
    "METRIC_HORSEPOWER, KILOWATT, 0.7354988, 1e-7",
  })
  void unitsConvertByThePublishedFactors(
      KnownUnit from, KnownUnit to, double factor, double rounding) {
    assertThat(Conversions.convert(from, to, 1)).isCloseTo(factor, within(rounding));
  }

  /** The exact values: 1 psi is 6894.757 293 168 Pa, 75 kgf m/s are 735.498 75 W. */
  @Test
  void definitionsHoldBeyondThePrintedDigits() {
    assertThat(Conversions.convert(KnownUnit.PSI, KnownUnit.BAR, 1))
        .isCloseTo(0.06894757293168, within(1e-14));
    assertThat(Conversions.convert(KnownUnit.METRIC_HORSEPOWER, KnownUnit.KILOWATT, 1))
        .isCloseTo(0.73549875, within(1e-14));
    assertThat(Conversions.convert(KnownUnit.HORSEPOWER, KnownUnit.KILOWATT, 1))
        .isCloseTo(0.745699871582, within(1e-12));
  }

  /** Ice, steam and where both scales meet; NIST SP 811, appendix B.8: t/°C = (t/°F − 32)/1.8. */
  @ParameterizedTest
  @CsvSource({"0, 32", "100, 212", "-40, -40", "37, 98.6", "-17.78, 0"})
  void temperaturesConvertWithTheirNought(double celsius, double fahrenheit) {
    assertThat(KnownUnit.CELSIUS.to(KnownUnit.FAHRENHEIT, celsius))
        .isCloseTo(fahrenheit, within(0.005));
    assertThat(KnownUnit.FAHRENHEIT.to(KnownUnit.CELSIUS, fahrenheit))
        .isCloseTo(celsius, within(0.005));
  }

  @ParameterizedTest
  @CsvSource({"5, 9", "0, 0", "-10, -18", "100, 180"})
  void aDifferenceOfTemperaturesConvertsWithoutIt(double celsius, double fahrenheit) {
    assertThat(KnownUnit.CELSIUS.differenceTo(KnownUnit.FAHRENHEIT, celsius)).isEqualTo(fahrenheit);
    assertThat(KnownUnit.FAHRENHEIT.differenceTo(KnownUnit.CELSIUS, fahrenheit)).isEqualTo(celsius);
  }

  @ParameterizedTest
  @EnumSource(KnownUnit.class)
  void whatIsStoredReadsBackAsItWasTyped(KnownUnit unit) {
    double step = Math.pow(10, -unit.decimals());
    for (int steps = 5; steps < 600; steps += 7) {
      double typed = steps * step;
      double stored = unit.to(unit.quantity().stored(), typed);
      double back = unit.quantity().stored().to(unit, stored);
      assertThat(KnownUnit.text(back, unit.decimals()))
          .as(typed + " " + unit.symbol())
          .isEqualTo(KnownUnit.text(typed, unit.decimals()));
    }
  }

  @Test
  void unitsOfDifferentThingsAreNeverMixed() {
    assertThatThrownBy(() -> KnownUnit.PSI.to(KnownUnit.CELSIUS, 11))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("measure different things");
  }

  @ParameterizedTest
  @CsvSource({
    "11.5psi, 11.5, PSI",
    "'0,8 bar', 0.8, BAR",
    "165F, 165, FAHRENHEIT",
    "165 °F, 165, FAHRENHEIT",
    "-3c, -3, CELSIUS",
    "75 kPa, 75, KILOPASCAL",
    "28HP, 28, HORSEPOWER",
    "28 PS, 28, METRIC_HORSEPOWER",
    "30cv, 30, METRIC_HORSEPOWER",
    ".5bar, 0.5, BAR",
  })
  void aNumberMayCarryItsUnit(String typed, double number, KnownUnit unit) {
    Amount amount = Amount.of(typed).orElseThrow();
    assertThat(amount.number()).isEqualTo(number);
    assertThat(amount.unit()).contains(unit);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "psi", "1.2.3", "1,2,3", "1e3", "0x1p3", "NaN", "11 lbs", "11psipsi", "1 2"})
  void anythingElseIsNoAmount(String typed) {
    assertThat(Amount.of(typed)).isEmpty();
  }

  @Test
  void theUnitThatIsTypedWinsOverTheUsualOne() {
    assertThat(Amount.of("11.5").orElseThrow().in(KnownUnit.BAR, KnownUnit.PSI)).isEqualTo(0.7929);
    assertThat(Amount.of("0.8bar").orElseThrow().in(KnownUnit.BAR, KnownUnit.PSI)).isEqualTo(0.8);
  }

  @ParameterizedTest
  @CsvSource({
    "metric, BAR, CELSIUS, KILOWATT",
    "us, PSI, FAHRENHEIT, HORSEPOWER",
    "UK, PSI, CELSIUS, HORSEPOWER",
    "psi, PSI, CELSIUS, KILOWATT",
    "'uk,F', PSI, FAHRENHEIT, HORSEPOWER",
    "'us, bar', BAR, FAHRENHEIT, HORSEPOWER",
  })
  void wordsNameUnits(String words, KnownUnit pressure, KnownUnit temperature, KnownUnit power) {
    assertThat(Units.named(words)).isEqualTo(new Units(pressure, temperature, power));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "imperial", "us,", "psi F"})
  void anUnknownWordIsRefused(String words) {
    assertThatThrownBy(() -> Units.named(words))
        .hasMessage("use metric, us or uk, or units such as psi,F,hp");
  }

  /** The rows of Unicode CLDR that units-by-region.properties has, and near misses. */
  @ParameterizedTest
  @CsvSource({
    "US, us",
    "GB, uk",
    "BS, F",
    "KY, F",
    "CA, metric",
    "IE, metric",
    "DE, metric",
    "'', metric",
    "us, metric"
  })
  void aCountryHasItsUnits(String region, String words) {
    assertThat(Units.ofRegion(region)).isEqualTo(Units.named(words));
  }

  @Test
  void proseIsSaidInTheUnitsOfItsReader() {
    assertThat(US.prose("1.0 bar on the gauge at 10 °C becomes 1.28 bar at 50 °C."))
        .isEqualTo("14.5 psi on the gauge at 50 °F becomes 18.6 psi at 122 °F.");
    assertThat(Units.named("uk").prose("Move 0.05 bar at 20 °C."))
        .isEqualTo("Move 0.7 psi at 20 °C.");
    assertThat(US.prose("5 °C counts as a difference, not 5 °C."))
        .isEqualTo("9 °F counts as a difference, not 41 °F.");
    assertThat(US.prose("2 barrels, a bar of 3 mm, 20°"))
        .isEqualTo("2 barrels, a bar of 3 mm, 20°");
  }

  /** Whoever names one more pressure or temperature in a note says here how it reads elsewhere. */
  @Test
  void everyPressureAndTemperatureOfTheNotesReadsRight() {
    Map<String, String> said = new TreeMap<>();
    NoteBook metric = NoteBook.open();
    NoteBook us = NoteBook.open(US);
    Pattern measure = Pattern.compile("[\\d.]+ (?:bar|psi|°[CF])\\b(?: counts)?");
    for (String id : metric.ids()) {
      List<String> before = found(measure, metric.note(id).sections().values().toString());
      List<String> after = found(measure, us.note(id).sections().values().toString());
      if (!before.isEmpty()) {
        said.put(id, before + " " + after);
      }
      assertThat(us.note(id).sources()).isEqualTo(metric.note(id).sources());
    }
    assertThat(said)
        .containsExactlyInAnyOrderEntriesOf(
            Map.of(
                "check-pressure-rising",
                "[1.0 bar, 10 °C, 1.28 bar, 50 °C] [14.5 psi, 50 °F, 18.6 psi, 122 °F]",
                "front-temps",
                "[5 °C counts] [9 °F counts]",
                "lever-pressures",
                "[0.05 bar] [0.7 psi]",
                "lever-pressure-higher",
                "[0.05 bar] [0.7 psi]",
                "lever-pressure-lower",
                "[0.05 bar] [0.7 psi]",
                "lever-rear-pressure",
                "[0.05 bar] [0.7 psi]"));
  }

  private static List<String> found(Pattern pattern, String text) {
    List<String> found = new ArrayList<>();
    for (Matcher matcher = pattern.matcher(text); matcher.find(); ) {
      found.add(matcher.group());
    }
    return found;
  }

  @Test
  void theQuestionOfPowerNamesItsLimitsInBothUnits() {
    Question power = Vocabulary.load().question("power").orElseThrow();
    List<String> words = power.values().stream().map(value -> value.words()).toList();
    for (Band band : power.number().bands()) {
      if (band.below() != null) {
        long hp = Math.round(KnownUnit.KILOWATT.to(KnownUnit.HORSEPOWER, band.below()));
        long ps = Math.round(KnownUnit.KILOWATT.to(KnownUnit.METRIC_HORSEPOWER, band.below()));
        assertThat(ps - hp).as("one word serves both").isBetween(0L, 1L);
        assertThat(
                words.stream().filter(one -> one.contains(hp + " hp") || one.contains(hp + " to")))
            .as(band.below() + " kW")
            .hasSize(2)
            .allMatch(one -> one.contains("kW"));
      }
    }
  }
}
