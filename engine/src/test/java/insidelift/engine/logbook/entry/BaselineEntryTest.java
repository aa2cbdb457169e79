package insidelift.engine.logbook.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.Entries;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.LogbookWriter;
import insidelift.engine.logbook.use.GoodRun;
import insidelift.engine.logbook.use.OwnLog;
import insidelift.engine.logbook.use.WrittenText;
import insidelift.shared.Vocabulary;
import insidelift.shared.situation.Baseline;
import insidelift.shared.situation.Baseline.Measured;
import insidelift.shared.situation.Baseline.Toe;
import insidelift.shared.situation.FrontEnd;
import insidelift.shared.situation.KartRecord;
import insidelift.shared.situation.Situation;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A kart's own good settings in the logbook. */
class BaselineEntryTest {

  private static final Vocabulary VOCABULARY = Vocabulary.load();

  @TempDir private Path folder;

  private static Baseline kept(double camber, String hubs) {
    return new Baseline(
        new Measured(
            new FrontEnd(
                Optional.of(Entries.both(camber)), Optional.empty(), false, Optional.empty()),
            Optional.of(new Toe(0.8, 0.8, Optional.of(280.0)))),
        Measured.UNKNOWN,
        Map.of("hubs", hubs),
        Map.of("by", "Ada \"the spanner\""));
  }

  private static BaselineEntry dry(double camber, String hubs) {
    return new BaselineEntry(Entries.KART_RECORD, "dry", Optional.of(6), kept(camber, hubs));
  }

  private Logbook log(Entry... entries) throws LogbookProblem {
    try (LogbookWriter writer = LogbookWriter.open(folder)) {
      if (writer.logbook().isEmpty()) {
        writer.append(Entries.before());
        writer.append(Entries.full(1));
      }
      writer.append(List.of(entries));
    }
    return Logbook.read(folder);
  }

  @Test
  void aSettingIsReadAsItWasWritten() throws Exception {
    Logbook book = log(dry(0.5, "long"));

    assertThat(book.notices()).isEmpty();
    assertThat(book.entry(7, BaselineEntry.class)).contains(dry(0.5, "long"));
    assertThat(book.baselines(Entries.KART_RECORD)).isEqualTo(Map.of("dry", kept(0.5, "long")));
  }

  @Test
  void theNewestCountsAndTheOlderOneStays() throws Exception {
    Logbook book = log(dry(0.5, "long"), dry(1, "short"));

    assertThat(book.baselines(Entries.KART_RECORD)).isEqualTo(Map.of("dry", kept(1, "short")));
    assertThat(book.entry(7, BaselineEntry.class)).contains(dry(0.5, "long"));

    Logbook withdrawn = log(Correction.withdrawn(8, "read at the wrong kart"));

    assertThat(withdrawn.baselines(Entries.KART_RECORD))
        .isEqualTo(Map.of("dry", kept(0.5, "long")));
  }

  @Test
  void whatItRefersToCannotBeWithdrawn() throws Exception {
    log(dry(0.5, "long"));

    assertThatThrownBy(() -> log(Correction.withdrawn(6, "no run")))
        .hasMessageContaining("record 6 cannot be withdrawn while record 7 refers to it");
    assertThatThrownBy(() -> log(new BaselineEntry(3, "dry", Optional.empty(), kept(0, "long"))))
        .hasMessageContaining("record 3 is no kart");
    assertThatThrownBy(() -> log(new BaselineEntry(2, "dry", Optional.of(5), kept(0, "long"))))
        .hasMessageContaining("record 5 is no run");
  }

  @Test
  void onlyDryAndWetHaveASetting() {
    assertThatThrownBy(() -> new BaselineEntry(2, "damp", Optional.empty(), kept(0, "long")))
        .isInstanceOf(RefusedEntryException.class)
        .hasMessage("condition: it must be dry or wet");
  }

  @Test
  void theLogFillsInWhatACaseDoesNotTell() throws Exception {
    Logbook book = log(dry(0.5, "long"));
    OwnLog own = OwnLog.ofLastRun(folder, book).orElseThrow();

    Situation filled = own.fill(Situation.UNKNOWN, VOCABULARY);

    assertThat(filled.kart().past().baseline()).isEqualTo(Map.of("dry", kept(0.5, "long")));
    assertThat(own.lines(Situation.UNKNOWN, VOCABULARY))
        .contains("This kart's own setting for the dry is record 7.");

    Situation told =
        Situation.UNKNOWN.with(
            Situation.UNKNOWN.kart().with(KartRecord.NONE.keeping("dry", Baseline.UNKNOWN)));

    assertThat(own.fill(told, VOCABULARY).kart().past().baseline())
        .isEqualTo(Map.of("dry", Baseline.UNKNOWN));
    assertThat(own.lines(told, VOCABULARY)).noneMatch(line -> line.contains("record 7"));
  }

  @Test
  void aLeverThatIsNotKnownHereIsLeftOut() throws Exception {
    Baseline odd = new Baseline(Measured.UNKNOWN, Measured.UNKNOWN, Map.of("wing", "up"), Map.of());
    Logbook book = log(new BaselineEntry(2, "wet", Optional.empty(), odd));

    assertThat(
            OwnLog.ofLastRun(folder, book)
                .orElseThrow()
                .fill(Situation.UNKNOWN, VOCABULARY)
                .kart()
                .past()
                .baseline())
        .isEqualTo(Map.of("wet", Baseline.UNKNOWN));
  }

  @Test
  void aGoodRunTellsItsReadingsItsSettingsAndItsDay() throws Exception {
    Logbook book = log();
    RunEntry run = book.run(6).orElseThrow().entry();

    Baseline good = GoodRun.baseline(book, run, VOCABULARY);

    assertThat(GoodRun.condition(run)).contains("wet");
    assertThat(good.front()).isEqualTo(run.situation().kart().front());
    assertThat(good.toe()).isEmpty();
    assertThat(good.levers()).isEqualTo(Map.of("front-width", "1 position in"));
    assertThat(good.noted())
        .isEqualTo(
            Map.of(
                "cold", "front 0.75, rear 0.8 bar",
                "hot", "front 0.95/0.94, rear 1/1.01 bar",
                "date", "2026-04-12",
                "track", "Larkmoor Bowl"));
  }

  @Test
  void whatWasWrittenIsSaid() throws Exception {
    Logbook book = log(dry(0.5, "long"));

    assertThat(String.join(" ", WrittenText.added(book, Path.of("data"), 7)))
        .isEqualTo("The dry setting of Heron 7 (record 7) is on disk (data/logbook.jsonl).");
  }
}
