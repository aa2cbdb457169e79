package insidelift.console.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The short dates are those of Unicode CLDR, as the platform ships them. */
class TypedDateTest {

  private static LocalDate read(String tag, String typed) {
    return new TypedDate(Locale.forLanguageTag(tag)).read(typed);
  }

  @ParameterizedTest
  @CsvSource({
    "en-US, 2026-11-25", "de-DE, 25.11.2026", "en-US, 11/25/2026", "en-GB, 25/11/2026",
    "nl-NL, 25-11-2026", "hu-HU, 2026. 11. 25.", "ja-JP, 2026/11/25", "de-DE, 25. 11. 2026",
    "und, 25.11.2026", "und, 11/25/2026", "en-US, 25/11/2026", "en-US, 25.11.2026"
  })
  void aDateIsReadTheWayItsCountryWritesIt(String tag, String typed) {
    assertThat(read(tag, typed)).isEqualTo("2026-11-25");
  }

  @ParameterizedTest
  @CsvSource({
    "en-US, 2026-12-11, 2026-12-11", "en-US, 12/11/2026, 2026-12-11",
    "en-GB, 12/11/2026, 2026-11-12", "de-AT, 12.11.2026, 2026-11-12",
    "und, 11/11/2026, 2026-11-11"
  })
  void theCountryDecidesWhatIsTheDay(String tag, String typed, LocalDate date) {
    assertThat(read(tag, typed)).isEqualTo(date);
  }

  @ParameterizedTest
  @CsvSource({
    "und, 12/11/2026",
    "en, 12/11/2026",
    "en-US, 12.11.2026",
    "de-DE, 12/11/2026",
    "en-CA, 12/11/2026",
    "ja-JP, 12/11/2026"
  })
  void whatMayBeTwoDaysIsRefusedNotGuessed(String tag, String typed) {
    assertThatThrownBy(() -> read(tag, typed))
        .hasMessage("\"%s\" may be two days: write 2026-11-12 or 2026-12-11".formatted(typed));
  }

  @ParameterizedTest
  @CsvSource({"en-US, 11/25/26", "de-DE, 25.11.26"})
  void aYearOfTwoDigitsIsRefused(String tag, String typed) {
    assertThatThrownBy(() -> read(tag, typed))
        .hasMessage("\"%s\": write the year with four digits, as in 2026-04-12".formatted(typed));
  }

  @ParameterizedTest
  @CsvSource({
    "en-US, today",
    "en-US, 31/31/2026",
    "de-DE, 31.2.2026",
    "und, 2026-02-30",
    "und, 2026-13-01",
    "de-DE, 25.11/2026",
    "und, 20261125",
    "und, 25 November 2026"
  })
  void anythingElseIsNoDate(String tag, String typed) {
    assertThatThrownBy(() -> read(tag, typed))
        .hasMessage("\"%s\" is not a date such as 2026-04-12".formatted(typed));
  }
}
