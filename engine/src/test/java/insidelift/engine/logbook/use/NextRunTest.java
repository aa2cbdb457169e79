package insidelift.engine.logbook.use;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.Entries;
import insidelift.engine.logbook.entry.Entry;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.LogbookWriter;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a new run takes from the one before, and what is said once it is on disk. */
class NextRunTest {

  @TempDir private Path folder;

  private Logbook book(Entry... runs) throws LogbookProblem {
    try (LogbookWriter writer = LogbookWriter.open(folder)) {
      writer.append(Entries.before());
      for (Entry run : runs) {
        writer.append(run);
      }
    }
    return Logbook.read(folder);
  }

  private static NextRun next(Logbook book) {
    return NextRun.of(
        book, Entries.DAY_RECORD, Entries.DAY.date(), Entries.KART_RECORD, Entries.DRIVER_RECORD);
  }

  @Test
  void the_first_run_of_a_kart_is_empty() throws Exception {
    assertThat(next(book())).isEqualTo(new NextRun(Entries.run(1), Optional.empty()));
  }

  @Test
  void setup_and_settings_stand_until_changed_and_nothing_else_does() throws Exception {
    RunEntry before = Entries.full(1);
    NextRun next = next(book(before));

    assertThat(next.setupFrom()).contains(6);
    assertThat(next.run().runOfDay()).isEqualTo(2);
    assertThat(next.run().situation().kart()).isEqualTo(before.situation().kart());
    assertThat(next.run().settings()).isEqualTo(before.settings());
    assertThat(next.run())
        .isEqualTo(Entries.run(2).with(next.run().situation()).withSettings(before.settings()));
    assertThat(next.run().situation().answers()).isEmpty();
  }

  @Test
  void a_run_that_is_written_down_late_takes_nothing_from_later_ones() throws Exception {
    Logbook book = book(Entries.full(1));
    assertThat(
            NextRun.of(
                    book,
                    9,
                    Entries.DAY.date().minusDays(1),
                    Entries.KART_RECORD,
                    Entries.DRIVER_RECORD)
                .setupFrom())
        .isEmpty();
  }

  @Test
  void what_is_on_disk_is_said_in_one_sentence_with_its_place() throws Exception {
    Logbook book = book(Entries.full(1), Entries.run(2));
    Path short1 = Path.of("d");
    assertThat(WrittenText.added(book, short1, 6, Optional.of(5)))
        .containsExactly(
            "Run 6, run 1 of 12 April 2026 at Larkmoor Bowl, Heron 7 driven by Ada Quill,",
            "  with 3 laps (best 62.100), is on disk; what was not told is as in run 5",
            "  (d/logbook.jsonl).");
    assertThat(WrittenText.added(book, short1, 7, Optional.empty()).get(1))
        .isEqualTo("  with no laps yet, is on disk (d/logbook.jsonl).");
    assertThat(WrittenText.added(book, short1, 2))
        .containsExactly("The kart Heron 7 (record 2) is on disk (d/logbook.jsonl).");
    assertThat(WrittenText.added(book, short1, 5))
        .containsExactly("Day 5, 12 April 2026 at Larkmoor Bowl, is on disk (d/logbook.jsonl).");
    assertThat(WrittenText.withdrawn(short1, 7))
        .containsExactly(
            "Record 7 is withdrawn on disk; what it said stays in the file (d/logbook.jsonl).");
  }
}
