package insidelift.engine.logbook.use;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import insidelift.engine.disk.AppendTarget;
import insidelift.engine.logbook.Entries;
import insidelift.engine.logbook.entry.Correction;
import insidelift.engine.logbook.entry.KartEntry;
import insidelift.engine.logbook.file.Line;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.LogbookWriter;
import insidelift.engine.logbook.json.EntryJson;
import insidelift.shared.casefile.JsonPlace;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LogExportTest {

  @TempDir private Path folder;
  private Logbook book;

  @BeforeEach
  void aBookWithOneOfEach() throws Exception {
    try (LogbookWriter writer = LogbookWriter.open(folder, AppendTarget::onDisk, Entries.CLOCK)) {
      writer.append(Entries.before());
      writer.append(Entries.full(1));
      writer.append(Entries.run(2));
      writer.append(Correction.of(7, Entries.run(3), "it was the third"));
      writer.append(new KartEntry("=HYPERLINK(\"x\")", Map.of(), "a, \"b\"\nc"));
      book = writer.logbook();
    }
  }

  @Test
  void json_holds_every_record_as_it_stands_and_as_it_was_written() throws Exception {
    JsonNode json = JsonMapper.builder().build().readTree(LogExport.json(book));

    assertThat(json.get("schema").intValue()).isEqualTo(1);
    assertThat(json.get("karts")).hasSize(2);
    assertThat(json.get("drivers").get(0).get("name").textValue()).isEqualTo("Ada Quill");
    assertThat(json.get("tracks")).hasSize(1);
    assertThat(json.get("days").get(0).get("date").textValue()).isEqualTo("2026-04-12");
    assertThat(json.get("runs")).hasSize(2);
    assertThat(json.get("runs").get(1).get("corrected").booleanValue()).isTrue();
    assertThat(json.get("notices")).isEmpty();
    List<Line> lines = book.lines();
    assertThat(json.get("asWritten")).hasSize(lines.size());
    for (int i = 0; i < lines.size(); i++) {
      JsonNode written = json.get("asWritten").get(i);
      assertThat(
              EntryJson.read(
                  written.get("kind").textValue(), JsonPlace.whole(written.get("entry"))))
          .isEqualTo(lines.get(i).entry());
    }
  }

  @Test
  void csv_has_a_table_for_each_kind() {
    Map<String, String> csv = LogExport.csv(book);

    assertThat(csv)
        .containsOnlyKeys(
            "karts.csv",
            "drivers.csv",
            "tracks.csv",
            "days.csv",
            "runs.csv",
            "baselines.csv",
            "laps.csv",
            "advice.csv",
            "corrections.csv");
    assertThat(csv.get("karts.csv"))
        .isEqualTo(
            lines(
                "kart,name,answers,note,corrected",
                "2,Heron 7,adjustable=both; power=mid,new axle,false",
                "9,\"'=HYPERLINK(\"\"x\"\")\",,\"a, \"\"b\"\"\nc\",false"));
    assertThat(csv.get("laps.csv"))
        .isEqualTo(lines("run,lap,seconds", "6,1,75.125", "6,2,62.345", "6,3,62.1"));
    assertThat(csv.get("advice.csv"))
        .isEqualTo(
            lines(
                "run,lever,direction,degrees,claim,taken,reason",
                "6,caster,more,0.75,caster-wet-more,true,",
                "6,camber,less,0.5,camber-front-weak,false,no time"));
    assertThat(csv.get("corrections.csv"))
        .isEqualTo(
            lines("correction,at,of,kind,reason", "8,2026-04-12T09:14:05Z,7,run,it was the third"));
  }

  private static String lines(String... lines) {
    return String.join("\r\n", lines) + "\r\n";
  }

  @Test
  void every_line_of_runs_has_as_many_cells_as_the_header_and_its_numbers_are_numbers() {
    String[] lines = LogExport.csv(book).get("runs.csv").split("\r\n", -1);

    assertThat(lines[2])
        .isEqualTo("7,5,2026-04-12,2,3,3,,,,,neutral,,,,,,,,,,,,,,,,,,,,,,,,,unknown,,true");
    assertThat(lines[2].split(",", -1)).hasSameSizeAs(lines[0].split(",", -1));
    assertThat(lines[1])
        .startsWith(
            "6,5,2026-04-12,2,3,1,-0.5,-0.25,12,12,absolute,10.5,0.5,0.75,"
                + "\"{\"\"throwMm\"\":2.5}\",\"{\"\"top\"\":3}\",\"{\"\"wheelbaseMm\"\":1045}\",")
        .contains(",time-left=12.0,rubber,front width=1 position in,")
        .contains(",0.75,0.75,0.8,0.8,0.95,0.94,1,1.01,61,58.5,55,60,58,54,better,");
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@x", " =1", "\t=1", "\n=1", "\uFF1D1", "\u2003=1"})
  void a_text_that_starts_a_formula_is_made_harmless(String text) {
    assertThat(Csv.harmless(text)).isEqualTo("'" + text);
  }

  @Test
  void marks_that_turn_the_reading_direction_are_spelt_out_in_csv_and_escaped_in_json()
      throws Exception {
    String name = "Heron \u202e7";
    try (LogbookWriter writer = LogbookWriter.open(folder, AppendTarget::onDisk, Entries.CLOCK)) {
      writer.append(new KartEntry(name, Map.of(), "two\nlines\tand a tab"));
      book = writer.logbook();
    }

    assertThat(LogExport.csv(book).get("karts.csv"))
        .contains("Heron \\u{202e}7,,\"two\nlines\tand a tab\",false")
        .doesNotContain("\u202e");
    String json = LogExport.json(book);
    assertThat(json).contains("Heron \\u202E7").doesNotContain("\u202e");
    JsonNode karts = JsonMapper.builder().build().readTree(json).get("karts");
    assertThat(karts.get(karts.size() - 1).get("name").textValue()).isEqualTo(name);
  }

  @Test
  void other_texts_and_negative_numbers_stay_as_they_are() {
    assertThat(Csv.harmless("a=1")).isEqualTo("a=1");
    Csv csv = new Csv("camber");
    csv.row(List.of(-0.5));
    assertThat(csv).hasToString("camber\r\n-0.5\r\n");
  }
}
