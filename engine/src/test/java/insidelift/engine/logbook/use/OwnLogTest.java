package insidelift.engine.logbook.use;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.Entries;
import insidelift.engine.logbook.entry.Correction;
import insidelift.engine.logbook.entry.Entry;
import insidelift.engine.logbook.entry.KartEntry;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.LogbookWriter;
import insidelift.engine.logbook.learning.LearningSwitch;
import insidelift.shared.Degrees;
import insidelift.shared.Direction;
import insidelift.shared.Kind;
import insidelift.shared.Lever;
import insidelift.shared.Status;
import insidelift.shared.Vocabulary;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Situation;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the user's own log does to the next consultation. */
class OwnLogTest {

  private static final Vocabulary VOCABULARY = Vocabulary.load();
  private static final Situation PUSHES =
      Situation.of(Map.of("water", "dry", "turn-in", "understeer", "mid-corner", "understeer"));

  @TempDir private Path folder;

  private OwnLog log(Entry... runs) throws LogbookProblem {
    return log(List.of(runs));
  }

  private OwnLog log(List<Entry> runs) throws LogbookProblem {
    try (LogbookWriter writer = LogbookWriter.open(folder)) {
      if (writer.logbook().isEmpty()) {
        writer.append(Entries.before());
      }
      writer.append(runs);
    }
    return OwnLog.ofLastRun(folder, Logbook.read(folder)).orElseThrow();
  }

  private static RunEntry run(int runOfDay, double camber, double seconds) {
    double[] around = {0.03, -0.04, 0.01, 0.05, -0.02, -0.05, 0.04, 0.0, -0.03, 0.02, -0.01};
    return Entries.run(
        runOfDay,
        camber,
        1,
        DoubleStream.concat(
                DoubleStream.of(seconds + 9), DoubleStream.of(around).map(off -> seconds + off))
            .toArray());
  }

  @Test
  void a_folder_without_runs_has_nothing_to_say() throws Exception {
    assertThat(OwnLog.ofLastRun(folder, Logbook.read(folder))).isEmpty();
  }

  @Test
  void whose_log_it_is_is_said_in_printable_names() throws Exception {
    Entry kart = new KartEntry("Heron \u202e7", Map.of(), "");
    OwnLog own = log(List.of(run(1, 0, 62), Correction.of(2, kart, "a mark in the name")));
    assertThat(own.about()).isEqualTo("Heron \\u{202e}7 with Ada Quill at Larkmoor Bowl");
  }

  @Test
  void it_fills_in_what_is_always_so_the_last_change_and_the_setup() throws Exception {
    OwnLog own = log(run(1, 0, 62), run(2, -0.5, 62.6));
    Situation filled = own.fill(PUSHES, VOCABULARY);

    assertThat(filled.answers())
        .containsAllEntriesOf(PUSHES.answers())
        .containsAllEntriesOf(
            Map.of(
                "power", "mid",
                "adjustable", "both",
                "driver-strength", "limited",
                "last-change", "camber-less",
                "last-effect", "worse"));
    assertThat(filled.kart().camber()).contains(Entries.both(-0.5));
    assertThat(own.lines(PUSHES, VOCABULARY))
        .containsExactly(
            "From your own log, 12 April (run 7): the last change was camber less, and the",
            "  laps were slower.",
            "Taken from your own log: driver-strength limited, power mid, adjustable both.",
            "The set-up is that of run 7.");
  }

  @Test
  void what_the_user_says_stands_against_the_log() throws Exception {
    OwnLog own = log(run(1, 0, 62), run(2, -0.5, 62.6));
    Situation said =
        PUSHES
            .with("power", "low")
            .with("driver-strength", "strong")
            .with("last-change", "camber-more")
            .with(Kart.UNKNOWN.with(Entries.both(1), null));
    Situation filled = own.fill(said, VOCABULARY);

    assertThat(filled.answers())
        .containsAllEntriesOf(said.answers())
        .doesNotContainKey("last-effect");
    assertThat(filled.kart()).isEqualTo(said.kart());
    assertThat(own.fill(said.with("last-change", "camber-less"), VOCABULARY).answer("last-effect"))
        .contains("worse");
  }

  @Test
  void a_word_of_another_time_is_left_out() throws Exception {
    Entry kart = new KartEntry(Entries.KART.name(), Map.of("power", "steam", "mood", "good"), "");
    OwnLog own = log(run(1, 0, 62), Correction.of(Entries.KART_RECORD, kart, "test"));
    assertThat(own.fill(PUSHES, VOCABULARY).answers()).doesNotContainKeys("power", "mood");
  }

  @Test
  void a_change_that_hurt_is_undone_and_one_that_did_nothing_is_not_repeated() throws Exception {
    Advisor advisor = Advisor.load();
    Advice undo = advice(advisor, log(run(1, 0, 62), run(2, 0.5, 62.6)));
    assertThat(first(undo).lever()).isEqualTo(Lever.CAMBER);
    assertThat(first(undo).direction()).isEqualTo(Direction.LESS);
    assertThat(first(undo).reasons()).extracting(Advice.Reason::note).contains("undo-worse");

    Advice other = advice(advisor, log(run(3, 0, 62), run(4, -0.5, 62.0)));
    assertThat(other.suggestions())
        .noneMatch(s -> s.lever() == Lever.CAMBER && s.direction() == Direction.LESS);
  }

  @Test
  void a_fault_comes_before_anything_the_log_says() throws Exception {
    OwnLog own = log(run(1, 0, 62), run(2, 0.5, 62.6));
    Situation fault = own.fill(PUSHES.with("play", "some"), VOCABULARY);
    Advice advice = Advisor.load().advise(fault);
    assertThat(advice.status()).isEqualTo(Status.FIX_FIRST);
    assertThat(advice.suggestions()).noneMatch(Suggestion::moves);
  }

  @Test
  void the_runs_before_and_the_reading_before_come_from_the_log() throws Exception {
    OwnLog own = log(run(1, 0, 62), run(2, 0.5, 62.6));
    Situation filled = own.fill(PUSHES, VOCABULARY);
    assertThat(filled.history())
        .singleElement()
        .satisfies(run -> assertThat(run.camber().orElseThrow().same(Degrees.ZERO)).isTrue());
    assertThat(filled.kart().past().before().orElseThrow().camber()).contains(Entries.both(0));
    Suggestion undo = first(Advisor.load().advise(filled));
    assertThat(undo.kind()).isEqualTo(Kind.UNDO);
    assertThat(undo.target().left()).isZero();

    Situation told = PUSHES.after(filled.history());
    assertThat(own.fill(told, VOCABULARY).history()).isEqualTo(filled.history());

    LearningSwitch.set(folder, false);
    OwnLog off = OwnLog.ofLastRun(folder, Logbook.read(folder)).orElseThrow();
    assertThat(off.lines(PUSHES, VOCABULARY)).contains("Learning from the log is switched off.");
    assertThat(off.fill(PUSHES, VOCABULARY).history()).isEmpty();
    assertThat(off.fill(PUSHES, VOCABULARY).answers())
        .containsEntry("driver-strength", "limited")
        .doesNotContainKey("last-change");
  }

  private static Advice advice(Advisor advisor, OwnLog own) {
    return advisor.advise(own.fill(PUSHES, VOCABULARY));
  }

  private static Suggestion first(Advice advice) {
    return advice.suggestions().stream().filter(Suggestion::first).findFirst().orElseThrow();
  }
}
