package insidelift.console.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HabitsTest {

  @ParameterizedTest
  @CsvSource({
    "en_US.UTF-8, en, US",
    "de_AT@euro, de, AT",
    "en_GB, en, GB",
    "eo, eo, ''",
    "C.UTF-8, '', ''",
    "POSIX, '', ''",
    "'!?', '', ''"
  })
  void aNameOfPosixNamesLanguageAndCountry(String name, String language, String region) {
    Locale locale = Habits.MEASURES.locale(Map.of("LANG", name));
    assertThat(locale.getLanguage()).isEqualTo(language);
    assertThat(locale.getCountry()).isEqualTo(region);
  }

  @Test
  void theStrongerVariableWins() {
    assertThat(
            Habits.MEASURES.locale(Map.of("LANG", "en_US.UTF-8", "LC_MEASUREMENT", "de_DE.UTF-8")))
        .isEqualTo(Locale.GERMANY);
    assertThat(Habits.DATES.locale(Map.of("LANG", "en_US.UTF-8", "LC_MEASUREMENT", "de_DE.UTF-8")))
        .isEqualTo(Locale.US);
    assertThat(
            Habits.DATES.locale(
                Map.of("LANG", "en_US", "LC_TIME", "de_DE", "LC_ALL", "fr_FR.UTF-8")))
        .isEqualTo(Locale.FRANCE);
    assertThat(Habits.DATES.locale(Map.of("LANG", "en_US", "LC_ALL", ""))).isEqualTo(Locale.US);
  }

  @Test
  void whereTheEnvironmentSaysNothingThePlatformDoes() {
    assertThat(Habits.DATES.locale(Map.of())).isEqualTo(Locale.getDefault(Locale.Category.FORMAT));
  }
}
