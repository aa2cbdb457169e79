package insidelift.console.asking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.engine.logbook.entry.Pressures;
import insidelift.engine.units.Units;
import insidelift.shared.situation.EdgeTemperatures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasuresTest {

  private static final Measures METRIC = new Measures(Units.METRIC);
  private static final Measures US = new Measures(Units.named("us"));

  @Test
  void oneNumberStandsForAllTyresAndAUnitWins() {
    assertThat(METRIC.pressures("0,75")).isEqualTo(new Pressures(0.75, 0.75, 0.75, 0.75));
    assertThat(US.pressures("11.5")).isEqualTo(new Pressures(0.7929, 0.7929, 0.7929, 0.7929));
    assertThat(METRIC.pressures("11.5psi")).isEqualTo(US.pressures("11.5"));
    assertThat(US.pressures("0.8 bar")).isEqualTo(METRIC.pressures("0.8"));
    assertThat(METRIC.pressures("75kPa")).isEqualTo(METRIC.pressures("0.75"));
  }

  @Test
  void aUnitBehindTheLastNumberCountsForThoseWithoutOne() {
    assertThat(METRIC.pressures("11/0.8bar/11/12psi"))
        .isEqualTo(new Pressures(0.7584, 0.8, 0.7584, 0.8274));
    assertThat(METRIC.leftTread("142/136/131F")).isEqualTo(new EdgeTemperatures(61.11, 57.78, 55));
    assertThat(US.rightTread("142/136/131")).isEqualTo(METRIC.leftTread("142/136/131F"));
    assertThat(US.rightTread("61/58/55C")).isEqualTo(new EdgeTemperatures(61, 58, 55));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.7/0.8 | \"0.7/0.8\" is not a number such as 0.75, or front left/front right/rear"
            + " left/rear right such as 0.75/0.75/0.8/0.8",
        "soft    | \"soft\" is not a number such as 0.75, or front left/front right/rear"
            + " left/rear right such as 0.75/0.75/0.8/0.8",
        "60F     | \"60F\" is not a number such as 0.75, or front left/front right/rear"
            + " left/rear right such as 0.75/0.75/0.8/0.8",
        "12      | pressure front left: 12 is not from 0.2 to 3 bar",
        "60psi   | pressure front left: 4.1369 is not from 0.2 to 3 bar (\"60psi\" was read as psi)"
      })
  void aWrongPressureSaysWhy(String typed, String why) {
    assertThatThrownBy(() -> METRIC.pressures(typed)).hasMessage(why);
  }

  @Test
  void examplesAreInTheUnitsOfTheReader() {
    assertThatThrownBy(() -> US.pressures("soft"))
        .hasMessage(
            "\"soft\" is not a number such as 11psi, or front left/front right/rear left/rear"
                + " right such as 11/11/11.5/11.5psi");
    assertThatThrownBy(() -> US.leftTread("142"))
        .hasMessage(
            "\"142\" is not edge nearest the seat/middle/edge away from the seat such as"
                + " 142/136/131");
    assertThatThrownBy(() -> METRIC.leftTread("61/58"))
        .hasMessage(
            "\"61/58\" is not edge nearest the seat/middle/edge away from the seat such as"
                + " 61/58/55");
    assertThatThrownBy(() -> US.leftTread("500/136/131"))
        .hasMessage(
            "temperature front left inner: 260 is not from -20 to 200 degrees Celsius"
                + " (\"500/136/131\" was read as °F)");
  }
}
