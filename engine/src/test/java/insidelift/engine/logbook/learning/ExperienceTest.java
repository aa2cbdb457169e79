package insidelift.engine.logbook.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.Entries;
import insidelift.engine.logbook.entry.AdviceTaken;
import insidelift.engine.logbook.entry.Correction;
import insidelift.engine.logbook.entry.DayEntry;
import insidelift.engine.logbook.entry.DriverEntry;
import insidelift.engine.logbook.entry.Entry;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.engine.logbook.entry.TrackEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.LogbookWriter;
import insidelift.engine.proof.Verdict;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExperienceTest {

  private static final int KART = Entries.KART_RECORD;
  private static final int DRIVER = Entries.DRIVER_RECORD;
  private static final int TRACK = Entries.TRACK_RECORD;

  @TempDir private Path folder;

  private Experience after(Entry... entries) throws LogbookProblem {
    try (LogbookWriter writer = LogbookWriter.open(folder)) {
      if (writer.logbook().isEmpty()) {
        writer.append(Entries.before());
      }
      for (Entry entry : entries) {
        writer.append(entry);
      }
      return Experience.of(writer.logbook());
    }
  }

  /** Twelve laps around so many seconds, a few hundredths up and down. */
  private static RunEntry run(int runOfDay, double camber, double caster, double seconds) {
    double[] around = {0.03, -0.04, 0.01, 0.05, -0.02, -0.05, 0.04, 0.0, -0.03, 0.02, -0.01};
    double[] laps =
        DoubleStream.concat(
                DoubleStream.of(seconds + 9), DoubleStream.of(around).map(off -> seconds + off))
            .toArray();
    return Entries.run(runOfDay, camber, caster, laps);
  }

  private static AdviceTaken advice(Lever lever, Direction direction, boolean taken) {
    return new AdviceTaken(lever, direction, 0.5, "camber-front-weak", taken, "tried");
  }

  private static final AdviceTaken CAMBER_LESS = advice(Lever.CAMBER, Direction.LESS, true);

  private LastChange last(Entry... entries) throws LogbookProblem {
    return after(entries).lastChange(KART, DRIVER, TRACK).orElseThrow();
  }

  @Test
  void a_change_that_made_the_laps_quicker_is_told_with_its_day() throws Exception {
    LastChange last = last(run(1, 0, 1, 62), run(2, -0.5, 1, 61.4));

    assertThat(last.answers())
        .isEqualTo(Map.of("last-change", "camber-less", "last-effect", "better"));
    assertThat(last.source()).isEqualTo("your own log, 12 April");
    assertThat(last.run()).isEqualTo(7);
    assertThat(last.proof().orElseThrow().verdict()).isEqualTo(Verdict.KEEP);
  }

  @Test
  void a_change_that_hurt_is_worse_and_taking_it_back_is_better() throws Exception {
    assertThat(last(run(1, 0, 1, 62), run(2, 0, 1.5, 62.6)).answers())
        .isEqualTo(Map.of("last-change", "caster-more", "last-effect", "worse"));
    assertThat(last(run(3, 0, 1, 62)).answers())
        .isEqualTo(Map.of("last-change", "caster-less", "last-effect", "better"));
  }

  @Test
  void a_return_run_settles_what_two_runs_leave_open() throws Exception {
    assertThat(last(run(1, 0, 1, 62), run(2, -0.5, 1, 62.01)).answers())
        .isEqualTo(Map.of("last-change", "camber-less", "last-effect", "same"));
    LastChange back = last(run(3, 0, 1, 62.01));
    assertThat(back.answers())
        .isEqualTo(Map.of("last-change", "camber-more", "last-effect", "same"));
    assertThat(back.proof().orElseThrow().runs()).hasSize(3);
  }

  @Test
  void the_change_still_counts_after_more_runs_on_it() throws Exception {
    LastChange last = last(run(1, 0, 1, 62), run(2, -0.5, 1, 61.4), run(3, -0.5, 1, 61.4));
    assertThat(last.answers())
        .isEqualTo(Map.of("last-change", "camber-less", "last-effect", "better"));
  }

  @Test
  void too_few_laps_leave_the_effect_open() throws Exception {
    LastChange last = last(run(1, 0, 1, 62), Entries.run(2, -0.5, 1, 70, 61.4, 61.4, 61.4));
    assertThat(last.answers()).isEqualTo(Map.of("last-change", "camber-less"));
  }

  @Test
  void a_track_that_changes_leaves_the_effect_open() throws Exception {
    RunEntry dry = run(1, 0, 1, 62);
    RunEntry quicker = run(2, -0.5, 1, 61);
    RunEntry damp = quicker.with(quicker.situation().with("water", "damp"));
    assertThat(last(dry, damp).answers()).isEqualTo(Map.of("last-change", "camber-less"));

    RunEntry drying = quicker.with(quicker.situation().with("trend", "drying"));
    assertThat(last(Correction.of(7, drying, "it dried")).answers())
        .isEqualTo(Map.of("last-change", "camber-less"));
    assertThat(last(Correction.of(7, quicker, "it did not")).effect()).contains("better");
  }

  @Test
  void nothing_changed_all_day_is_an_answer_too() throws Exception {
    assertThat(last(run(1, 0, 1, 62), run(2, 0, 1, 62)).answers())
        .isEqualTo(Map.of("last-change", "none"));
  }

  @Test
  void another_day_another_driver_or_another_track_is_not_compared() throws Exception {
    Experience experience =
        after(
            run(1, 0, 1, 62),
            new DayEntry(LocalDate.of(2026, 4, 13), TRACK, ""),
            RunEntry.started(7, KART, DRIVER, 1).with(run(1, -0.5, 1, 61).situation()),
            DriverEntry.named("Bo Farrow"),
            TrackEntry.named("Saltpan Ring"));

    assertThat(experience.lastChange(KART, DRIVER, TRACK)).isEmpty();
    assertThat(experience.lastChange(KART, 9, TRACK)).isEmpty();
    assertThat(experience.lastChange(KART, DRIVER, 10)).isEmpty();
  }

  @Test
  void advice_is_counted_by_what_the_clock_said() throws Exception {
    Experience experience =
        after(
            run(1, 0, 1, 62),
            run(2, -0.5, 1, 61.4).withAdvice(List.of(CAMBER_LESS)),
            run(3, -1.0, 1, 61.9).withAdvice(List.of(CAMBER_LESS)),
            run(4, -1.5, 1.5, 61.0).withAdvice(List.of(CAMBER_LESS)),
            run(5, -1.5, 1.0, 62.0)
                .withAdvice(List.of(advice(Lever.CASTER, Direction.LESS, false))));

    assertThat(experience.rates(KART, TRACK))
        .containsExactly(new Rate("camber-front-weak", Lever.CAMBER, Direction.LESS, 1, 2, 1));
    assertThat(experience.lines(KART, TRACK))
        .containsExactly(
            "What your own log says for Heron 7 at Larkmoor Bowl. It never leaves this",
            "machine, and only changes the order of remedies.",
            "  camber less (camber-front-weak): worked 1 of 2 times, counted as 0.50; 1 more",
            "    could not be told");
  }

  @Test
  void the_rate_is_that_of_two_more_successes_and_two_more_failures() {
    // The worked example in many courses: 13 of 20 becomes 15 of 24.
    assertThat(rate(13, 20).value()).isEqualTo(0.625, within(1e-12));
    assertThat(rate(0, 0).weight()).isZero();
    assertThat(rate(1, 1).value()).isEqualTo(0.6, within(1e-12));
    assertThat(rate(0, 1000).weight()).isBetween(-0.5, -0.49);
    assertThat(rate(1000, 1000).weight()).isBetween(0.49, 0.5);
  }

  private static Rate rate(int worked, int tried) {
    return new Rate("camber-front-weak", Lever.CAMBER, Direction.LESS, worked, tried, 0);
  }

  @Test
  void the_weight_of_advice_that_worked_is_above_nought_and_of_the_unknown_nought()
      throws Exception {
    Experience experience =
        after(run(1, 0, 1, 62), run(2, -0.5, 1, 61.4).withAdvice(List.of(CAMBER_LESS)));

    assertThat(weight(experience, "camber-front-weak")).isEqualTo(0.1, within(1e-12));
    assertThat(weight(experience, "camber-rear-loose")).isZero();
    assertThat(experience.weight(KART, TRACK, "camber-front-weak", Lever.CAMBER, Direction.MORE))
        .isZero();
  }

  private static double weight(Experience experience, String claim) {
    return experience.weight(KART, TRACK, claim, Lever.CAMBER, Direction.LESS);
  }

  @Test
  void switched_off_it_knows_nothing_and_says_so_until_it_is_switched_on_again() throws Exception {
    after(run(1, 0, 1, 62), run(2, -0.5, 1, 61.4).withAdvice(List.of(CAMBER_LESS)));
    Logbook book = Logbook.read(folder);

    LearningSwitch.set(folder, false);
    Experience off = Experience.of(folder, book);
    assertThat(off.isOn()).isFalse();
    assertThat(off.lastChange(KART, DRIVER, TRACK)).isEmpty();
    assertThat(off.rates(KART, TRACK)).isEmpty();
    assertThat(weight(off, "camber-front-weak")).isZero();
    assertThat(off.lines(KART, TRACK)).containsExactly("Learning from the log is switched off.");

    LearningSwitch.set(folder, true);
    assertThat(weight(Experience.of(folder, book), "camber-front-weak")).isPositive();
    assertThat(Logbook.read(folder).runs()).hasSize(2);
  }

  @Test
  void a_switch_that_cannot_be_set_is_named() throws Exception {
    Path inTheWay = Files.writeString(folder.resolve("in-the-way"), "x");
    assertThatThrownBy(() -> LearningSwitch.set(inTheWay, false))
        .isInstanceOf(LogbookProblem.class)
        .hasMessage(
            inTheWay.resolve("learning.off") + " cannot be changed (there is a file in its place)");
  }
}
