package insidelift.engine.proof.laps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.engine.proof.laps.LapTimes.Lap;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LapTimesTest {

  private static LapTimes read(String text) throws UnreadableLapTimes, IOException {
    return read(text, LapColumns.STANDARD);
  }

  private static LapTimes read(String text, LapColumns columns)
      throws UnreadableLapTimes, IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return LapTimes.read("run.csv", new ByteArrayInputStream(bytes), columns);
  }

  private static void refused(String text, String message) {
    assertThatThrownBy(() -> read(text)).isInstanceOf(UnreadableLapTimes.class).hasMessage(message);
  }

  @Test
  void oneTimeALine() throws Exception {
    assertThat(read("75.1\n62.345\n1:02.345\n").laps())
        .containsExactly(new Lap(1, 75.1), new Lap(2, 62.345), new Lap(3, 62.345));
  }

  @Test
  void lapAndTimeWithAndWithoutHeader() throws Exception {
    assertThat(read("1,75.1\n2,62.3\n")).isEqualTo(read("Lap,Time\n1,75.1\n2,62.3\n"));
  }

  @Test
  void decimalCommaBesideASemicolonOrATab() throws Exception {
    assertThat(read("lap;time\n1;1:15,1\n2;62,345").laps())
        .containsExactly(new Lap(1, 75.1), new Lap(2, 62.345));
    assertThat(read("1\t75,1\r\n2\t62,345").laps())
        .containsExactly(new Lap(1, 75.1), new Lap(2, 62.345));
  }

  @Test
  void quotedFields() throws Exception {
    assertThat(read("\"lap\",\"time\"\n\"1\",\"75,1\"\n").laps()).containsExactly(new Lap(1, 75.1));
  }

  @Test
  void blankLinesCommentsAndByteOrderMark() throws Exception {
    assertThat(read("\uFEFF# invented\n\n75.1\n  \n# pit\n62.3\n").laps()).hasSize(2);
  }

  @Test
  void namedColumnsAmongOthers() throws Exception {
    LapColumns columns = new LapColumns("No", "Best Time");
    assertThat(read("no;kart;best time\n3;7;75,1\n5;7;62,3\n", columns).laps())
        .containsExactly(new Lap(3, 75.1), new Lap(5, 62.3));
  }

  @Test
  void aHeaderWithoutLapColumnCountsTheLaps() throws Exception {
    assertThat(read("time\n75.1\n62.3").laps()).extracting(Lap::number).containsExactly(1, 2);
  }

  @Test
  void everyRefusalNamesFileAndLine() {
    refused("", "run.csv: there are no lap times in it.");
    refused("# none\n", "run.csv: there are no lap times in it.");
    refused("lap,time\n", "run.csv: there are no lap times below the header.");
    refused(
        "75.1\nfast\n", "run.csv, line 2: \"fast\" is not a lap time such as 62.345 or 1:02.345.");
    refused(
        "1;75,1\n\n2;fast\n",
        "run.csv, line 3: \"fast\" is not a lap time such as 62.345 or 1:02.345 or 62,345.");
    refused(
        "75.1\n1:62.3\n",
        "run.csv, line 2: \"1:62.3\" is not a lap time such as 62.345 or 1:02.345.");
    refused(
        "75.1\n-62.3\n",
        "run.csv, line 2: \"-62.3\" is not a lap time such as 62.345 or 1:02.345.");
    refused(
        "75.1\n6.2\n",
        "run.csv, line 2: \"6.2\" is out of range: a lap takes from 10 s to 3600 s.");
    refused(
        "75.1\n4000\n",
        "run.csv, line 2: \"4000\" is out of range: a lap takes from 10 s to 3600 s.");
    refused("1,75.1\n2,\n", "run.csv, line 2: \"\" is not a lap time such as 62.345 or 1:02.345.");
    refused("1,75.1\nx,62.3\n", "run.csv, line 2: \"x\" is not a lap number from 0 to 9999.");
    refused("1,75.1\n2\n", "run.csv, line 2: there are too few columns: 1 where 2 are needed.");
    refused("75.1\n\"62.3\n", "run.csv, line 2: a quotation mark is not closed.");
    refused(
        "1,75.1,a\n",
        "run.csv, line 1: there are 3 columns and no header that says which is the" + " time.");
    refused(
        "1,75.1\n2,62.3,a\n",
        "run.csv, line 2: there are more columns than in the first line (a decimal comma needs ; or a tab between them).");
    refused(
        "lap,zeit\n1,75.1\n",
        "run.csv, line 1: there is no column \"time\"; the header is lap,zeit.");
  }

  @Test
  void oneColumnWithDecimalCommas() throws Exception {
    assertThat(read("62,345\n62,120\n")).isEqualTo(LapTimes.of("run.csv", 62.345, 62.12));
    assertThat(read("1:15,1\n62,3\n")).isEqualTo(LapTimes.of("run.csv", 75.1, 62.3));
    assertThat(read("75\n62,3\n61.9\n")).isEqualTo(LapTimes.of("run.csv", 75, 62.3, 61.9));
    assertThat(read("time\n62,345\n")).isEqualTo(LapTimes.of("run.csv", 62.345));
  }

  @Test
  void lapNumbersStayLapNumbers() throws Exception {
    assertThat(read("1,75\n2,62\n").laps()).containsExactly(new Lap(1, 75), new Lap(2, 62));
    assertThat(read("51,41.5\n52,44.1\n").laps())
        .containsExactly(new Lap(51, 41.5), new Lap(52, 44.1));
  }

  @Test
  void whatMayBeTwoThingsIsRefusedWithBoth() {
    refused(
        "51,41\n52,44\n53,39\n",
        "run.csv: \"51,41\" may be lap 51 in 41 s or a lap of 51.41 s; write the times with a"
            + " point, or put ; between lap and time.");
  }

  @Test
  void aDecimalCommaBelowColumnsDividedByCommasIsNotCutOff() {
    refused(
        "lap,time\n1,75,41\n",
        "run.csv, line 2: there are more columns than in the first line (a decimal comma needs ; or"
            + " a tab between them).");
  }

  @Test
  void namedColumnsNeedAHeader() {
    assertThatThrownBy(() -> read("1,75.1\n", new LapColumns("no", "best")))
        .hasMessage("run.csv, line 1: columns were named, but there is no header to find them in.");
  }

  @Test
  void limits() {
    refused("62.3\n".repeat(501), "run.csv, line 501: a run has at most 500 laps.");
    refused(
        "#".repeat(1_000_001),
        "run.csv: the file is larger than 1 MB, which is no list of lap times.");
    byte[] latin = {'6', '2', (byte) 0xE9};
    assertThatThrownBy(
            () -> LapTimes.read("run.csv", new ByteArrayInputStream(latin), LapColumns.STANDARD))
        .hasMessage("run.csv: this is not plain text (UTF-8).");
  }

  @Test
  void whatIsRepeatedHasNoControlCharactersAndIsCut() {
    refused(
        "75.1\n\u001b[31m\u202e" + "9".repeat(60),
        "run.csv, line 2: \"\\u{1b}[31m\\u{202e}"
            + "9".repeat(54)
            + "...\" is not a lap time such as 62.345 or"
            + " 1:02.345.");
  }

  @Test
  void whateverIsInAFileEndsInLapsOrInOneSentence() throws IOException {
    String letters = "0123456789:.,;\t\n\r\" #laptime-\u001b\u00e9";
    Random random = new Random(7);
    for (int file = 0; file < 5_000; file++) {
      StringBuilder text = new StringBuilder(random.nextBoolean() ? "lap,time\n1,62.3\n" : "");
      for (int i = random.nextInt(40); i > 0; i--) {
        text.append(letters.charAt(random.nextInt(letters.length())));
      }
      try {
        assertThat(read(text.toString()).laps()).isNotEmpty();
      } catch (UnreadableLapTimes e) {
        assertThat(e.getMessage()).matches("run\\.csv(, line \\d+)?: [^\\p{Cntrl}]+\\.");
      }
    }
  }

  @Test
  void aFile(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("morning.csv");
    Files.writeString(file, "lap,time\n1,75.1\n");
    assertThat(LapTimes.read(file)).isEqualTo(LapTimes.of("morning.csv", 75.1));
    assertThatThrownBy(() -> LapTimes.read(folder.resolve("none.csv")))
        .isInstanceOf(NoSuchFileException.class);
  }

  @Test
  void valuesGuardThemselves() {
    assertThatThrownBy(() -> LapTimes.of("run", 9.9))
        .hasMessage("a lap time must be from 10 to 3600 s: 9.9");
    assertThatThrownBy(() -> LapTimes.of("run", Double.NaN))
        .hasMessage("a lap time must be from 10 to 3600 s: NaN");
    assertThatThrownBy(() -> new Lap(-1, 60)).hasMessage("a lap number must be from 0 to 9999: -1");
    assertThatThrownBy(() -> new LapColumns(" ", "time")).hasMessage("a column needs a name");
    assertThatThrownBy(() -> new LapColumns("Time", "time"))
        .hasMessage("lap and time cannot be the same column");
  }
}
