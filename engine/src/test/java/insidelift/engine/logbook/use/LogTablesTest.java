package insidelift.engine.logbook.use;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.Entries;
import insidelift.engine.logbook.entry.Correction;
import insidelift.engine.logbook.entry.DriverEntry;
import insidelift.engine.logbook.entry.Entry;
import insidelift.engine.logbook.entry.KartEntry;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.LogbookWriter;
import insidelift.engine.proof.Feel;
import insidelift.engine.units.Units;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LogTablesTest {

  @TempDir private Path folder;

  private Logbook book(Entry... entries) throws LogbookProblem {
    try (LogbookWriter writer = LogbookWriter.open(folder)) {
      writer.append(Entries.before());
      for (Entry entry : entries) {
        writer.append(entry);
      }
      return writer.logbook();
    }
  }

  @Test
  void the_runs_of_a_day() throws Exception {
    Logbook book =
        book(Entries.run(2), Entries.run(1, -0.5, 1, 70.1, 62.344, 62.1, 62.5), Entries.full(3));

    assertThat(LogTables.day(book, 5))
        .containsExactly(
            "12 April 2026, Larkmoor Bowl: practice",
            "run  rec kart         driver       water    camber caster laps    best  middle",
            "  1    7 Heron 7      Ada Quill    dry       -0.50   1.00    4   62.10   62.34",
            "  2    6 Heron 7      Ada Quill    -             -      -    0       -       -",
            "  3    8 Heron 7      Ada Quill    damp      -0.38  12.00    3   62.10   62.22");
    assertThat(LogTables.days(book))
        .containsExactly(
            "record  date        runs  track                 note",
            "     5  2026-04-12     3  Larkmoor Bowl         practice");
  }

  @Test
  void one_run() throws Exception {
    assertThat(LogTables.run(book(Entries.full(1)), 6, Units.METRIC))
        .containsExactly(
            "Run 6: run 1 of 12 April 2026, Larkmoor Bowl; Heron 7, driven by Ada Quill",
            "Camber: left -0.5°, right -0.25°",
            "Caster: left +12.0°, right +12.0°",
            "Settings: front width 1 position in",
            "Answers: time-left short, trend drying, water damp",
            "Advice: caster more by 0.75 degrees (caster-wet-more), taken",
            "Advice: camber less by 0.50 degrees (camber-front-weak), declined: no time",
            "Laps: 1) 75.125  2) 62.345  3) 62.100",
            "Best 62.10, middle 62.22 without the first lap, in seconds",
            "Cold pressures: front 0.75 0.75, rear 0.80 0.80 bar",
            "Hot pressures: front 0.95 0.94, rear 1.00 1.01 bar",
            "Front left tread: nearest the seat 61, middle 59, outer 55 °C",
            "Front right tread: nearest the seat 60, middle 58, outer 54 °C",
            "The driver felt: better",
            "The driver said: bites at last, \"too much\" in the hairpin; föhn");
  }

  @Test
  void a_corrected_run_says_so() throws Exception {
    Logbook book = book(Entries.run(1), Correction.of(6, Entries.run(2), "x"));
    assertThat(LogTables.run(book, 6, Units.METRIC).get(0))
        .startsWith("Run 6 (corrected): run 2 of 12 April");
  }

  @Test
  void hostile_text_moves_no_cursor_and_breaks_no_column() throws Exception {
    String evil = "\u202E" + "x".repeat(79);
    String said = "y".repeat(500) + "\n\tz \u2028\u200B";
    Logbook book =
        book(
            KartEntry.named(evil),
            new DriverEntry("../../etc", Map.of("driver-strength", "\u202E"), ""),
            RunEntry.started(5, 6, 7, 1)
                .withSettings(Map.of(evil.substring(0, 60), "\u00AD"))
                .felt(Feel.WORSE, said));
    List<String> all =
        List.of(LogTables.days(book), LogTables.day(book, 5), LogTables.run(book, 8, Units.METRIC))
            .stream()
            .flatMap(List::stream)
            .toList();

    assertThat(all).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
    assertThat(all).allMatch(line -> line.codePoints().noneMatch(LogTablesTest::unsafe));
    assertThat(LogTables.day(book, 5).get(2))
        .isEqualTo(
            "  1    8 \\u{202e}xxx~ ../../etc    -             -      -    0       -       -");
  }

  private static boolean unsafe(int point) {
    int type = Character.getType(point);
    return type == Character.CONTROL
        || type == Character.FORMAT
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR;
  }

  @Test
  void a_record_of_another_kind_is_no_run_and_no_day() throws Exception {
    Logbook book = book();
    assertThatThrownBy(() -> LogTables.run(book, 5, Units.METRIC))
        .hasMessage("record 5 is not a run");
    assertThatThrownBy(() -> LogTables.day(book, 4))
        .hasMessage("record 4 is not what was asked for");
  }

  @Test
  void the_trend_shows_laps_days_water_and_changes() throws Exception {
    Logbook book =
        book(
            Entries.run(1, 0, 1, 70, 62, 62.5, 63),
            Entries.run(2, -0.5, 1, 70, 61, 61.5, 62),
            Entries.full(3));

    assertThat(TrendPlot.lines(book.runs()))
        .containsExactly(
            "   62.50 |o",
            "   62.36 |",
            "   62.23 |    w",
            "   62.09 |    .",
            "   61.95 |.",
            "   61.82 |",
            "   61.68 |",
            "   61.55 |  o",
            "   61.41 |",
            "   61.27 |",
            "   61.14 |",
            "   61.00 |  .",
            "     day |d",
            "  change |  c",
            "Runs 6 to 8, seconds: o middle lap, w on water, . best lap; d a new day;",
            "changed: c camber less, C camber more, k caster less, K caster more, * other.");
  }

  @Test
  void the_trend_of_a_long_season_is_plain_ascii_of_eighty_columns() throws Exception {
    Entry[] runs = new Entry[120];
    for (int i = 0; i < runs.length; i++) {
      runs[i] = Entries.run(i + 1, 0, i % 3, 70, 60 + i % 7, 61 + i % 7);
    }
    List<String> plot = TrendPlot.lines(book(runs).runs());

    assertThat(plot).hasSize(16).allMatch(line -> line.length() <= 80);
    assertThat(StandardCharsets.US_ASCII.newEncoder().canEncode(String.join("", plot))).isTrue();
    assertThat(plot.get(14)).startsWith("Runs 56 to 125,");
  }

  @Test
  void no_laps_make_no_plot() throws Exception {
    assertThat(TrendPlot.lines(book(Entries.run(1)).runs()))
        .containsExactly("(no runs with lap times)");
  }
}
