package insidelift.rules;

import static insidelift.rules.Told.told;
import static org.assertj.core.api.Assertions.assertThat;

import insidelift.rules.fact.Trial;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Findings and sums, written down from the weights before they were run. */
class SumsTest {

  @Test
  void severityScalesWhatIsFeltInTheCornerAndNothingElse() {
    assertThat(told("turn-in understeer").found("entry-push")).isEqualTo(20);
    assertThat(told("turn-in understeer", "severity slight").found("entry-push")).isEqualTo(12);
    assertThat(told("turn-in understeer", "severity severe").found("entry-push")).isEqualTo(32);
    assertThat(told("front-temps inner-hot", "severity severe").found("inner-edge")).isEqualTo(20);
  }

  @Test
  void thePartThatHurtsMostWeighsMore() {
    assertThat(told("turn-in understeer", "worst-phase turn-in").found("entry-push")).isEqualTo(36);
    assertThat(told("turn-in understeer", "worst-phase exit").found("entry-push")).isEqualTo(20);
  }

  @Test
  void whatSpeaksAgainstIsTakenOff() {
    assertThat(told("front-temps inner-hot", "front-wear inner-edge").found("inner-edge"))
        .isEqualTo(40);
    assertThat(told("front-temps inner-hot", "front-wear outer-edge").found("inner-edge")).isZero();
    assertThat(told("rubber rubbered", "exit-drive bogs").found("binding")).isEqualTo(20);
    assertThat(told("rubber normal", "exit-drive bogs").found("binding")).isZero();
    assertThat(told("rubber rubbered", "exit-drive bogs", "inside-rear lifts").found("binding"))
        .isZero();
  }

  /**
   * A clear push at turn-in, the rest good: 20 × 3 × 90 % = 54 for more caster; the good middle 5 ×
   * 1 × 80 % = 4 off; at the exit two camps cancel; 20 minutes take 5 off.
   */
  @Test
  void anEntryPushSumsToFortyFiveForMoreCaster() {
    assertThat(told("turn-in understeer", "mid-corner good", "exit good").gain("caster", "more"))
        .isEqualTo(45);
    assertThat(told("turn-in understeer", "mid-corner good", "exit good").gain("caster", "less"))
        .isEqualTo(-63);
  }

  /**
   * A clear push in mid-corner at zero camber, the rest good. Toward positive: one camp promises 20
   * × 3 × 70 % = 42; two camps deny 20 × 1 × 15 % = 3 and 20 × 2 × 15 % = 6, together no more than
   * 4; turn-in and exit change by 70 % of 1, 5 × 70 % = 3.5, said as 4, each; minutes 5: 42 - 4 - 8
   * - 5.
   */
  @Test
  void aDisputedTrialCostsNoMoreThanAnUndo() {
    Told push =
        told("water dry", "turn-in good", "mid-corner understeer", "exit good", "camber-now zero");
    assertThat(push.gain("camber", "more")).isEqualTo(25);
  }

  @Test
  void theCamberThatTheKartHasDecidesWhichCampsAgree() {
    String[] push = {"water dry", "turn-in good", "mid-corner understeer", "exit good"};
    Told negative = told(push).and(new insidelift.shared.Answer("camber-now", "negative", false));
    Told positive = told(push).and(new insidelift.shared.Answer("camber-now", "positive", false));
    assertThat(negative.gain("camber", "more")).isGreaterThan(positive.gain("camber", "more"));
  }

  @Test
  void beyondOneDegreeTheBelieversInPositiveCamberSayBack() {
    Told far =
        told("water dry", "turn-in good", "mid-corner understeer", "camber-now far-positive");
    assertThat(far.gain("camber", "more")).isNegative();
    assertThat(
            told("water wet", "turn-in good", "mid-corner understeer", "camber-now far-positive")
                .gain("camber", "more"))
        .isPositive();
  }

  @Test
  void theInsideRearThatLiftsTakesTheReasonForMoreCasterAway() {
    assertThat(told("turn-in understeer", "inside-rear lifts").gain("caster", "more")).isNegative();
    assertThat(told("turn-in understeer", "inside-rear stays-down").gain("caster", "more"))
        .isPositive();
  }

  @Test
  void onlyALowClassGivesCamberAwayForTheStraight() {
    Told low = told("water dry", "straight-speed down", "power low");
    Told middle = told("water dry", "straight-speed down", "power mid");
    assertThat(low.gain("camber", "less") - middle.gain("camber", "less")).isEqualTo(14);
  }

  /** 20 × 3 × 80 % = 48 for each run that proved it, up to three. */
  @Test
  void theKartsOwnRecordCountsForEachRunThatProvedIt() {
    Told none = told("water dry", "turn-in understeer");
    Told one = told("water dry", "turn-in understeer").and(vote(0, "worse"));
    Told two = told("water dry", "turn-in understeer").and(vote(0, "worse"), vote(1, "worse"));
    Told four =
        told("water dry", "turn-in understeer")
            .and(vote(0, "worse"), vote(1, "worse"), vote(2, "worse"), vote(3, "worse"));
    assertThat(one.gain("caster", "less") - none.gain("caster", "less")).isEqualTo(48);
    assertThat(two.gain("caster", "less") - none.gain("caster", "less")).isEqualTo(96);
    assertThat(four.gain("caster", "less") - none.gain("caster", "less")).isEqualTo(144);
    assertThat(one.gain("caster", "less")).isNegative();
    assertThat(two.gain("caster", "less")).isPositive();
  }

  @Test
  void theRecordOfTheWetSaysNothingOfTheDry() {
    Told none = told("water wet", "turn-in understeer");
    Told dry = told("water wet", "turn-in understeer").and(vote(0, "worse"));
    assertThat(dry.gain("caster", "less")).isEqualTo(none.gain("caster", "less"));
  }

  /**
   * The rear stepped out on the way in and the front pushed in the middle; less caster was worse.
   */
  @Test
  void theRecordCountsByThePartOfTheCorner() {
    Trial mixed =
        new Trial(0, false, "caster", "less", "worse", Map.of("entry", -1, "mid", 1), "dry", false);
    assertThat(mixed.vote("entry")).isEqualTo(-1);
    assertThat(mixed.vote("mid")).isEqualTo(1);
    assertThat(mixed.vote("exit")).isZero();
    int without = told("water dry", "turn-in oversteer").gain("caster", "more");
    assertThat(told("water dry", "turn-in oversteer").and(mixed).gain("caster", "more"))
        .isEqualTo(without + 48);
  }

  private static Trial vote(int age, String effect) {
    return new Trial(age, false, "caster", "more", effect, 1, "dry", false);
  }
}
