package insidelift.engine.logbook.use;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.engine.logbook.entry.RefusedEntryException;
import insidelift.engine.proof.laps.LapColumns;
import insidelift.engine.proof.laps.LapTimes;
import insidelift.engine.proof.laps.LapTimes.Lap;
import insidelift.engine.proof.laps.UnreadableLapTimes;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LapImportTest {

  private static LapTimes times(double... seconds) {
    return LapTimes.of("typed times", seconds);
  }

  @Test
  void a_file_with_columns_that_the_user_names(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("run.csv");
    Files.writeString(file, "No;Kart;Rundenzeit\n3;7;1:02,345\n4;7;62,100\n");

    assertThat(LapImport.file(file, new LapColumns("no", "rundenzeit")).laps())
        .containsExactly(new Lap(3, 62.345), new Lap(4, 62.1));
  }

  @Test
  void times_typed_one_after_the_other() throws Exception {
    assertThat(LapImport.typed(" 75.1 62.345  1:02.1\n62\r\n"))
        .isEqualTo(LapImport.pasted(" 75.1 62.345  1:02.1\n62\r\n"))
        .isEqualTo(times(75.1, 62.345, 62.1, 62));
  }

  @Test
  void typed_times_are_never_lap_numbers() throws Exception {
    assertThat(LapImport.typed("51,41 52,44 53,39 54,36"))
        .isEqualTo(times(51.41, 52.44, 53.39, 54.36));
    assertThat(LapImport.typed("51,4")).isEqualTo(times(51.4));
    assertThat(LapImport.typed("51.4,52.3, 52.1;52,2; 53,"))
        .isEqualTo(times(51.4, 52.3, 52.1, 52.2, 53));
    assertThat(LapImport.typed("1:01,41 52.44")).isEqualTo(times(61.41, 52.44));
  }

  @Test
  void typed_times_that_may_be_two_things_are_refused_with_both() {
    assertThatThrownBy(() -> LapImport.typed("51,41,52,44"))
        .isInstanceOf(UnreadableLapTimes.class)
        .hasMessage(
            "typed times: \"51,41,52,44\" may be the times 51.41, 52.44 or the times 51, 41, 52,"
                + " 44; put spaces between them.");
  }

  @Test
  void a_typed_time_that_is_none_is_named_with_its_place() {
    assertThatThrownBy(() -> LapImport.typed("62,3 fast"))
        .isInstanceOf(UnreadableLapTimes.class)
        .hasMessage(
            "typed times: time 2, \"fast\", is not a lap time such as 62.345 or 62,345 or"
                + " 1:02.345.");
    assertThatThrownBy(() -> LapImport.typed("4,75.1"))
        .isInstanceOf(UnreadableLapTimes.class)
        .hasMessage(
            "typed times: time 1, \"4\", is out of range: a lap takes from 10 s to 3600 s.");
    assertThatThrownBy(() -> LapImport.typed(" "))
        .isInstanceOf(UnreadableLapTimes.class)
        .hasMessage("typed times: there are no lap times in them.");
    assertThatThrownBy(() -> LapImport.typed("62 ".repeat(501)))
        .isInstanceOf(UnreadableLapTimes.class)
        .hasMessage("typed times: a run has at most 500 laps.");
  }

  @Test
  void a_decimal_comma_with_thousandths() throws Exception {
    assertThat(LapImport.pasted("1:15,125 62,345\n63,120")).isEqualTo(times(75.125, 62.345, 63.12));
  }

  @Test
  void lap_numbers_and_times_stay_what_they_are() throws Exception {
    assertThat(LapImport.pasted("4,75.1\n5,62.3\n").laps())
        .containsExactly(new Lap(4, 75.1), new Lap(5, 62.3));
    assertThat(LapImport.pasted("1,75\n2,62\n").laps())
        .containsExactly(new Lap(1, 75), new Lap(2, 62));
    assertThat(LapImport.pasted("lap;time\n1;75,1\n").laps()).containsExactly(new Lap(1, 75.1));
  }

  @Test
  void what_is_no_lap_time_is_refused_by_its_line() {
    assertThatThrownBy(() -> LapImport.pasted("62.3\nfast\n"))
        .isInstanceOf(UnreadableLapTimes.class)
        .hasMessage("pasted text, line 2: \"fast\" is not a lap time such as 62.345 or 1:02.345.");
    assertThatThrownBy(() -> LapImport.pasted("  "))
        .isInstanceOf(UnreadableLapTimes.class)
        .hasMessage("pasted text: there are no lap times in it.");
  }

  @Test
  void more_than_anybody_pastes_is_refused() {
    assertThatThrownBy(() -> LapImport.pasted("62.3 ".repeat(5_000)))
        .isInstanceOf(RefusedEntryException.class)
        .hasMessage("pasted text: 25000 characters are too many; the most is 20000");
  }
}
