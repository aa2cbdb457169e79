package insidelift.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import insidelift.engine.proof.laps.LapTimes;
import insidelift.engine.proof.laps.SetAside;
import insidelift.engine.proof.laps.SetAside.Kind;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ProofTest {

  /** An invented run of 12 flying laps with a spread of 0.15 s and neither drift nor pattern. */
  private static final double[] LAPS = {
    55.02, 54.86, 55.17, 54.95, 54.78, 55.10, 55.21, 54.90, 55.05, 54.82, 55.13, 54.98
  };

  private static LapTimes run(String name, double shift) {
    double[] seconds = new double[LAPS.length + 1];
    seconds[0] = 68.4;
    for (int i = 0; i < LAPS.length; i++) {
      // The second run in reverse, so that the runs are not copies.
      double lap = name.equals("after") ? LAPS[LAPS.length - 1 - i] : LAPS[i];
      seconds[i + 1] = Math.round((lap + shift) * 1000) / 1000.0;
    }
    return LapTimes.of(name, seconds);
  }

  private static LapTimes steady(String name, int laps, double seconds) {
    double[] all = new double[laps];
    Arrays.fill(all, seconds);
    return LapTimes.of(name, all);
  }

  @Test
  void clearlyQuickerIsKept() {
    Proof proof = Proof.of(run("before", 0), run("after", -0.4));
    assertThat(proof.verdict()).isEqualTo(Verdict.KEEP);
    assertThat(proof.shift().orElseThrow().seconds()).isCloseTo(-0.4, within(0.02));
    assertThat(proof.moreLaps()).isEqualTo(MoreLaps.NONE);
    assertThat(proof.sentence())
        .isEqualTo("keep: the laps are 0.40 s quicker (95 % sure of between 0.19 s and 0.61 s).");
  }

  @Test
  void clearlySlowerIsUndone() {
    Proof proof = Proof.of(run("before", 0), run("after", 0.4));
    assertThat(proof.verdict()).isEqualTo(Verdict.UNDO);
    assertThat(proof.sentence()).startsWith("undo: the laps are 0.40 s slower (95 % sure of");
  }

  @Test
  void noChangeCannotBeTold() {
    Proof proof = Proof.of(run("before", 0), run("after", 0));
    assertThat(proof.verdict()).isEqualTo(Verdict.CANNOT_TELL);
    assertThat(proof.moreLaps().laps()).isPositive();
    assertThat(proof.sentence()).matches("cannot tell: about \\d+ more laps like these would .*");
  }

  @Test
  void aReturnRunMakesTheIntervalNarrower() {
    LapTimes before = run("before", 0);
    LapTimes after = run("after", -0.15);
    Shift without = Proof.of(before, after).shift().orElseThrow();
    Shift with =
        Proof.of(before, after, Optional.of(run("again", 0)), Feel.UNKNOWN).shift().orElseThrow();
    assertThat(with.high() - with.low()).isLessThan(0.75 * (without.high() - without.low()));
  }

  @Test
  void aReturnRunTakesOutTheDriftOfTheDay() {
    // The track gives 0.3 s from run to run; the change itself costs 0.2 s.
    LapTimes again = run("again", -0.6);
    Proof proof = Proof.of(run("before", 0), run("after", -0.1), Optional.of(again), Feel.UNKNOWN);
    assertThat(proof.drift().orElseThrow().method()).isEqualTo(Drift.Method.RETURN_RUN);
    assertThat(proof.drift().orElseThrow().carriedSeconds()).isCloseTo(-0.3, within(0.02));
    assertThat(proof.shift().orElseThrow().seconds()).isCloseTo(0.2, within(0.03));
    assertThat(proof.verdict()).isNotEqualTo(Verdict.KEEP);
  }

  @Test
  void aTrackThatGetsQuickerWithinRunsIsNotCreditedToTheChange() {
    double[] before = new double[16];
    double[] after = new double[16];
    for (int i = 0; i < 16; i++) {
      before[i] = 55 - 0.02 * i + 0.02 * (i % 3);
      after[i] = 55 - 0.02 * (i + 16) + 0.02 * (i % 3);
    }
    Proof proof = Proof.of(LapTimes.of("a", before), LapTimes.of("b", after));
    assertThat(proof.drift().orElseThrow().secondsPerLap()).isCloseTo(-0.02, within(0.003));
    assertThat(proof.verdict()).isEqualTo(Verdict.CANNOT_TELL);
  }

  @Test
  void lapsAreSetAsideWithTheirReason() {
    LapTimes before =
        LapTimes.of("a", 70, 55.0, 55.1, 54.9, 57.5, 55.0, 55.1, 54.9, 31.0, 55.0, 61.2);
    Proof proof = Proof.of(before, steady("b", 8, 55.0));
    assertThat(proof.setAside())
        .extracting(SetAside::run, SetAside::lap, SetAside::kind, SetAside::reason)
        .containsExactly(
            tuple("before", 1, Kind.OUT_LAP, "the first lap starts in the pits"),
            tuple("before", 5, Kind.SLOW, "2.50 s slower than the middle lap, limit 0.52 s"),
            tuple(
                "before",
                9,
                Kind.TOO_QUICK,
                "24.00 s quicker than the middle lap, limit 1.65 s: hardly a whole lap"),
            tuple("before", 11, Kind.IN_LAP, "6.20 s slower than the middle lap, limit 0.52 s"),
            tuple("after", 1, Kind.OUT_LAP, "the first lap starts in the pits"));
  }

  @Test
  void tooFewLapsCannotTell() {
    Proof proof = Proof.of(steady("a", 4, 55), steady("b", 9, 54));
    assertThat(proof.verdict()).isEqualTo(Verdict.CANNOT_TELL);
    assertThat(proof.shift()).isEmpty();
    assertThat(proof.moreLaps().laps()).isEqualTo(2);
    assertThat(proof.sentence())
        .isEqualTo(
            "cannot tell: a run needs 5 laps that count, and run before has 3; at least 2 more laps"
                + " would be needed.");
    assertThat(proof.text()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void noLapsAtAllCannotTell() {
    Proof proof = Proof.of(steady("a", 0, 55), steady("b", 0, 54));
    assertThat(proof.verdict()).isEqualTo(Verdict.CANNOT_TELL);
    assertThat(proof.moreLaps().laps()).isEqualTo(10);
    assertThat(proof.stripPlot()).containsExactly("(no laps that count)");
    assertThat(proof.toJson()).contains("\"shiftSeconds\" : null");
  }

  @Test
  void identicalLapsCannotTell() {
    Proof proof = Proof.of(steady("a", 10, 55), steady("b", 10, 55));
    assertThat(proof.verdict()).isEqualTo(Verdict.CANNOT_TELL);
    assertThat(proof.shift().orElseThrow().seconds()).isZero();
    assertThat(proof.tests().orElseThrow().welch().t()).isNaN();
    assertThat(proof.toJson()).contains("\"t\" : null");
  }

  @Test
  void withoutAnyVarianceAClearShiftIsStillClear() {
    assertThat(Proof.of(steady("a", 10, 55), steady("b", 10, 54.5)).verdict())
        .isEqualTo(Verdict.KEEP);
    assertThat(Proof.of(steady("a", 10, 55), steady("b", 10, 55.5)).verdict())
        .isEqualTo(Verdict.UNDO);
  }

  @Test
  void mirroredLapsGiveTheMirroredVerdict() {
    Shift there = Proof.of(run("a", 0), run("after", 0.12)).shift().orElseThrow();
    Shift back = Proof.of(run("after", 0.12), run("a", 0)).shift().orElseThrow();
    assertThat(back.seconds()).isCloseTo(-there.seconds(), within(0.03));
  }

  @Test
  void theFeelStandsBesideTheClockAndWarns() {
    LapTimes before = run("before", 0);
    LapTimes quick = run("after", -0.5);
    LapTimes slow = run("after", 0.5);
    assertThat(Proof.of(before, quick, Optional.empty(), Feel.WORSE).warnings())
        .contains("the driver felt it worse, but the clock says quicker.");
    assertThat(Proof.of(before, slow, Optional.empty(), Feel.BETTER).warnings())
        .contains("the driver felt it better, but the clock says slower.");
    assertThat(Proof.of(before, quick, Optional.empty(), Feel.SAME).warnings())
        .contains("the driver felt no difference, but the clock shows one.");
    assertThat(Proof.of(before, quick, Optional.empty(), Feel.BETTER).warnings())
        .containsExactly(
            "without a return run on the old setting, track or tyres may have changed in the pause.");
    assertThat(Proof.of(before, slow, Optional.empty(), Feel.BETTER).verdict())
        .isEqualTo(Verdict.UNDO);
    assertThat(Feel.of("worse")).contains(Feel.WORSE);
    assertThat(Feel.of("fine")).isEmpty();
  }

  @Test
  void json() throws Exception {
    Proof proof = Proof.of(run("before", 0), run("after", -0.4), Optional.empty(), Feel.BETTER);
    JsonNode json = new ObjectMapper().readTree(proof.toJson());
    assertThat(json.fieldNames())
        .toIterable()
        .containsExactly(
            "schema",
            "verdict",
            "sentence",
            "shiftSeconds",
            "lowSeconds",
            "highSeconds",
            "confidence",
            "moreLaps",
            "moreLapsPlan",
            "setAside",
            "runs",
            "effectiveLaps",
            "autocorrelation",
            "autocorrelationUsed",
            "drift",
            "welch",
            "rankSum",
            "feel",
            "warnings");
    assertThat(json.get("verdict").asText()).isEqualTo("keep");
    assertThat(json.get("shiftSeconds").asDouble()).isNegative();
    assertThat(json.get("highSeconds").asDouble()).isNegative();
    assertThat(json.get("moreLaps").asInt()).isZero();
    assertThat(json.get("setAside")).hasSize(2);
    assertThat(json.get("feel").asText()).isEqualTo("better");
  }

  @Test
  void theWholeText() {
    Proof proof =
        Proof.of(
            run("before", 0),
            run("after", -0.05),
            Optional.of(LapTimes.of("again", 71.0, 55.0, 55.2, 54.9, 55.1, 54.8, 56.4, 58.0)),
            Feel.BETTER);
    assertThat(String.join("\n", proof.text()))
        .isEqualTo(
            """
            cannot tell: about 21 more laps like these would (7 in each run); so far
            anything from 0.19 s quicker to 0.09 s slower.
            Drift: the old setting would have been unchanged by the run after, as the return
              run shows.
            Laps that count: before 12 of 13, after 12 of 13, again 5 of 8; laps resemble
              their neighbours (autocorrelation -0.41, taken as 0.00), so all are worth 29.
            Set aside: before lap 1, 68.400 s, out-lap (the first lap starts in the pits).
            Set aside: after lap 1, 68.400 s, out-lap (the first lap starts in the pits).
            Set aside: again lap 1, 71.000 s, out-lap (the first lap starts in the pits).
            Set aside: again lap 7, 56.400 s, slow (1.30 s slower than the middle lap, limit
              1.04 s).
            Set aside: again lap 8, 58.000 s, in-lap (2.90 s slower than the middle lap,
              limit 1.04 s).
            For comparison, as if laps were independent: Welch's t -0.91, df 23.9, p 0.373;
              rank sum U 81.0, p 0.370.
            The driver felt: better.

                    54.72                           54.97                         55.22 s
            before |        o     o    o     o     o   o     o   o      o   o    o    o >|
                   |                                      ^                              |
            after  |  o    o    o     o      o   o    o   o      o   o    o     o       >|
                   |                               ^                                     |
            again  |           o             o            o             o            o  >|
                   |                                      ^                              |
            o lap  2-9 so many  x set aside  <> set aside, off the scale  ^ middle lap""");
  }

  @Test
  void theStripPlotIsPlainAndNarrow() {
    LapTimes before = LapTimes.of("a", 70, 55.0, 55.0, 55.1, 54.9, 57.5, 55.2, 54.8);
    LapTimes after = LapTimes.of("b", 70, 54.8, 54.9, 54.7, 54.8, 54.6, 54.8);
    List<String> plot = Proof.of(before, after).stripPlot();
    assertThat(plot)
        .containsExactly(
            "        54.59                           54.90                         55.22 s",
            "before |                       o          o          2          o         o >|",
            "       |                                             ^                       |",
            "after  |  o         o          3          o                                 >|",
            "       |                       ^                                             |",
            "o lap  2-9 so many  x set aside  <> set aside, off the scale  ^ middle lap");
    assertThat(String.join("", plot)).matches("\\p{ASCII}*");
    assertThat(plot).allMatch(line -> line.length() <= 80);
  }

  @Test
  void everyLineOfTheTextFitsTheScreen() {
    for (int seed = 0; seed < 200; seed++) {
      Proof proof =
          SimulatedDay.proof(
              seed, SimulatedDay.Sizes.REALISTIC, 6 + seed % 20, -0.1, seed % 2 == 0);
      assertThat(proof.text()).allMatch(line -> line.length() <= 80);
      assertThat(proof.text().get(0)).startsWith(proof.sentence().split(":", -1)[0]);
    }
  }
}
