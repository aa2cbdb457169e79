package insidelift.rules;

import static insidelift.rules.Told.told;
import static org.assertj.core.api.Assertions.assertThat;

import insidelift.rules.fact.Spoken.By;
import insidelift.rules.fact.Spoken.Check;
import insidelift.rules.fact.Spoken.Overruled;
import insidelift.rules.fact.Told.Minutes;
import insidelift.rules.fact.Trial;
import insidelift.rules.fact.Visit;
import insidelift.shared.Answer;
import org.junit.jupiter.api.Test;

/** The order of choice, each rule with a near miss. */
class ChoosingTest {

  private static Trial trial(String lever, String way, String effect) {
    return new Trial(0, true, lever, way, effect, 1, "dry", false);
  }

  @Test
  void aFaultComesBeforeEverything() {
    Told pushing = told("water dry", "turn-in understeer");
    assertThat(pushing.done()).isEqualTo("move caster more");
    assertThat(pushing.and(new Check(new By("check-play", "check-play"), "stop")).done())
        .isEqualTo("fix");
  }

  @Test
  void whatMadeItWorseGoesBackToTheExactReading() {
    Told worse = told("water dry", "turn-in understeer").at(50, 110).setting("before", 50, 10);
    assertThat(worse.and(trial("caster", "more", "worse")).done())
        .isEqualTo("undo caster less to 10");
  }

  @Test
  void bothLeversGoBackWhereBothWereMoved() {
    Told worse = told("water dry", "turn-in understeer").at(0, 0).setting("before", 100, 200);
    assertThat(worse.and(trial("caster", "less", "worse")).done())
        .isEqualTo("undo camber more to 100 caster more to 200");
  }

  @Test
  void withoutTheReadingsBeforeItGoesOnePositionBack() {
    Told worse = told("water dry", "turn-in understeer").at(50, 100);
    assertThat(worse.and(trial("caster", "more", "worse")).done()).isEqualTo("undo caster less");
  }

  @Test
  void whatMadeItWorseIsUndoneALaterRunToo() {
    Told later = told("water dry", "turn-in understeer").at(50, 100);
    assertThat(later.and(new Trial(0, false, "caster", "more", "worse", 1, "dry", false)).done())
        .isEqualTo("undo caster less");
  }

  @Test
  void anUndoIsNotUndone() {
    Told worse = told("water dry", "turn-in understeer").at(0, 100).setting("before", 0, 0);
    assertThat(worse.and(new Trial(0, true, "caster", "more", "worse", 1, "dry", true)).done())
        .doesNotStartWith("undo");
  }

  @Test
  void aChangeMadeForAnotherTrackIsNotUndone() {
    Told worse = told("water dry", "turn-in understeer", "setup-for dry").at(0, 100);
    assertThat(worse.and(new Trial(0, true, "caster", "more", "worse", 1, "wet", false)).done())
        .doesNotStartWith("undo");
  }

  @Test
  void anUndoIsNotMadeWhereTheSteeringForbidsIt() {
    Told worse =
        told("water dry", "turn-in understeer", "steering-weight heavy")
            .at(0, 0)
            .setting("before", 0, 100);
    assertThat(worse.and(trial("caster", "less", "worse")).done()).doesNotContain("caster more");
  }

  @Test
  void aGoodKartIsLeftAloneEvenWithTheRainSettingOn() {
    assertThat(
            told("water dry", "turn-in good", "mid-corner good", "exit good", "setup-for wet")
                .at(100, 200)
                .done())
        .isEqualTo("keep");
  }

  @Test
  void goodMustBeKnownInBothPartsOfTheCorner() {
    assertThat(told("water dry", "turn-in good", "setup-for dry").at(50, 0).done())
        .isNotEqualTo("keep");
    assertThat(
            told("water dry", "turn-in good", "mid-corner good", "exit understeer", "setup-for dry")
                .done())
        .isNotEqualTo("keep");
  }

  @Test
  void theRainSettingComesOffInEveryClass() {
    for (String power : new String[] {"low", "mid", "high"}) {
      assertThat(told("water dry", "power " + power, "setup-for wet").at(200, 300).done())
          .isEqualTo("restore camber less to 0 caster less to 0");
    }
  }

  @Test
  void theKartsOwnBaselineComesBeforeTheStartingPoint() {
    assertThat(told("water dry", "setup-for wet").at(100, 200).setting("dry", 50, -100).done())
        .isEqualTo("restore camber less to 50 caster less to -100");
  }

  @Test
  void theStartInTheWetGoesByWaterTrendStrengthAndPower() {
    assertThat(told("water wet", "setup-for dry").at(0, 0).done())
        .isEqualTo("restore camber more to 100 caster more to 200");
    assertThat(told("water wet", "trend raining", "setup-for dry").at(0, 0).done())
        .isEqualTo("restore camber more to 200 caster more to 300");
    assertThat(told("water wet", "trend drying", "setup-for dry").at(0, 0).done())
        .isEqualTo("restore camber more to 50 caster more to 100");
    assertThat(told("water wet", "driver-strength limited", "setup-for dry").at(0, 0).done())
        .isEqualTo("restore camber more to 100 caster more to 100");
    assertThat(told("water standing", "power low", "setup-for dry").at(0, 0).done())
        .isEqualTo("restore camber more to 200 caster more to 200");
    assertThat(told("water damp", "trend drying", "setup-for wet").at(50, 100).done())
        .isEqualTo("restore camber less to 0 caster less to 0");
  }

  @Test
  void noRainSettingAddsBiteWhileTheRearSlides() {
    assertThat(told("water damp", "turn-in oversteer", "setup-for dry").at(0, 0).done())
        .startsWith("move")
        .doesNotContain("more");
  }

  @Test
  void timeForOneJobTakesTheLeverThatHasFarthestToGo() {
    Told both = told("water standing", "setup-for dry").at(100, 0);
    assertThat(both.and(new Minutes(39)).done()).isEqualTo("restore caster more to 300");
    assertThat(told("water standing", "setup-for dry").at(100, 0).and(new Minutes(40)).done())
        .isEqualTo("restore camber more to 200 caster more to 300");
    assertThat(told("water standing", "setup-for dry").at(0, 200).and(new Minutes(21)).done())
        .isEqualTo("restore camber more to 200");
  }

  @Test
  void onWaterASetUpOfUnknownPurposeIsTakenForADryOne() {
    assertThat(told("water wet").at(0, 0).done()).startsWith("restore");
    assertThat(
            told("water wet", "turn-in understeer")
                .at(0, 0)
                .and(new Trial(0, true, "caster", "more", "better", 1, "wet", false))
                .done())
        .isEqualTo("move caster more");
  }

  @Test
  void inTheDryOnlyAReadingWithoutAComplaintSaysSo() {
    assertThat(told("water dry").at(100, 200).done())
        .isEqualTo("restore camber less to 0 caster less to 0");
    assertThat(told("water dry").done()).isEqualTo("wait");
    assertThat(told("water dry", "turn-in understeer").at(100, 200).done())
        .doesNotStartWith("restore");
  }

  @Test
  void whatWasGoodInTheLastReportIsDrivenAgain() {
    assertThat(told("water dry", "turn-in understeer", "good-before yes").at(0, 0).done())
        .isEqualTo("again");
    assertThat(
            told("water dry", "turn-in good", "good-before yes", "steering-weight heavy")
                .at(0, 100)
                .done())
        .isEqualTo("move caster less");
  }

  @Test
  void whatMadeItBetterIsCarriedOnAndNeverTurnedRound() {
    Told better = told("water wet", "turn-in understeer", "setup-for wet").at(100, 200);
    assertThat(better.and(new Trial(0, true, "caster", "more", "better", 1, "wet", false)).done())
        .isEqualTo("move caster more");
    Told over = told("water dry", "turn-in oversteer", "setup-for dry").at(0, 100);
    assertThat(over.and(new Trial(0, true, "caster", "more", "better", 1, "dry", false)).done())
        .doesNotContain("caster less");
  }

  @Test
  void whatMadeNoDifferenceRestsForOneRun() {
    Told same = told("water dry", "turn-in understeer", "setup-for dry").at(0, 100);
    assertThat(same.and(trial("caster", "more", "same")).done()).doesNotContain("caster more");
    Told later = told("water dry", "turn-in understeer", "setup-for dry").at(0, 100);
    assertThat(later.and(new Trial(0, false, "caster", "more", "same", 1, "dry", false)).done())
        .isEqualTo("move caster more");
  }

  @Test
  void aSettingIsNotTriedAThirdTime() {
    Told twice = told("water dry", "turn-in understeer", "setup-for dry").at(0, 0);
    twice.and(new Visit(0, 100, "dry"));
    assertThat(twice.done()).isEqualTo("move caster more");
    assertThat(twice.and(new Visit(0, 105, "dry")).done()).doesNotContain("caster more");
  }

  @Test
  void nothingThatGainsEnoughIsWaited() {
    assertThat(told("water dry", "exit understeer", "setup-for dry").done()).isEqualTo("wait");
  }

  @Test
  void whatIsSlightIsDrivenAgainUnlessItWasToldBefore() {
    String[] slight = {"water dry", "turn-in understeer", "severity slight", "setup-for dry"};
    assertThat(told(slight).done()).isEqualTo("again");
    assertThat(told(slight).and(new Answer("told-before", "yes", false)).done())
        .isEqualTo("move caster more");
    assertThat(told("water dry", "turn-in understeer", "setup-for dry").done())
        .isEqualTo("move caster more");
  }

  @Test
  void whereNothingWasToldNothingIsSaid() {
    assertThat(told().done()).isEqualTo("not-enough");
    assertThat(told("power low", "severity severe").done()).isEqualTo("not-enough");
    assertThat(told("water dry").done()).isEqualTo("wait");
  }

  @Test
  void aClaimThatAShopOverrulesIsNotWeighed() {
    Told push = told("water dry", "turn-in understeer", "mid-corner good", "setup-for dry");
    int gain = push.gain("caster", "more");
    push.and(new Overruled(new By("own-x.overrules", "own-x"), "caster-entry-push"));
    assertThat(push.gain("caster", "more")).isEqualTo(gain - 54);
    Told wet = told("water wet", "setup-for dry").at(0, 0);
    assertThat(wet.done()).isEqualTo("restore camber more to 100 caster more to 200");
    wet.and(new Overruled(new By("own-x.overrules", "own-x"), "caster-wet-more"));
    assertThat(wet.done()).isEqualTo("restore camber more to 100");
  }
}
