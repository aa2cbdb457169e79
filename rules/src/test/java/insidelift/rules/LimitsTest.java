package insidelift.rules;

import static insidelift.rules.Told.told;
import static org.assertj.core.api.Assertions.assertThat;

import insidelift.rules.fact.Told.AtEnd;
import insidelift.rules.fact.Told.HeavyAt;
import insidelift.rules.fact.Told.Minutes;
import insidelift.rules.fact.Trial;
import org.junit.jupiter.api.Test;

/** What must not be done, each limit with a near miss. */
class LimitsTest {

  @Test
  void tooHeavyASteeringGetsNoMoreCaster() {
    assertThat(told("steering-weight heavy").barred("limit.heavy", "caster", "more", "all"))
        .isTrue();
    assertThat(told("steering-weight heavy").barred("limit.heavy", "caster", "less", "all"))
        .isFalse();
    assertThat(told("steering-weight fine").barred("limit.heavy", "caster", "more", "all"))
        .isFalse();
  }

  @Test
  void aKartThatHopsGetsNoMoreBite() {
    for (String lever : new String[] {"camber", "caster"}) {
      assertThat(told("hop hops").barred("limit.hop", lever, "more", "all")).isTrue();
      assertThat(told("hop none").barred("limit.hop", lever, "more", "all")).isFalse();
      assertThat(told("hop hops").barred("limit.hop", lever, "less", "all")).isFalse();
    }
  }

  @Test
  void whatCannotBeAdjustedIsNotMoved() {
    assertThat(told("adjustable caster-only").barred("limit.no-camber", "camber", "less", "all"))
        .isTrue();
    assertThat(told("adjustable none").barred("limit.no-camber", "camber", "more", "all")).isTrue();
    assertThat(told("adjustable none").barred("limit.no-caster", "caster", "more", "all")).isTrue();
    assertThat(told("adjustable camber-only").barred("limit.no-caster", "caster", "less", "all"))
        .isTrue();
    assertThat(told("adjustable camber-only").barred("limit.no-camber", "camber", "less", "all"))
        .isFalse();
    assertThat(told("adjustable both").barred("limit.no-caster", "caster", "less", "all"))
        .isFalse();
  }

  @Test
  void aJobThatDoesNotFitIntoTheTimeIsNotBegun() {
    assertThat(told().and(new Minutes(19)).barred("limit.time", "camber", "more", "all")).isTrue();
    assertThat(told().and(new Minutes(20)).barred("limit.time", "camber", "more", "all")).isFalse();
  }

  @Test
  void aLeverAtItsEndGoesNoFurtherThatWay() {
    Told widest = told("turn-in understeer").and(new AtEnd("front-width", "more"));
    assertThat(widest.barred("limit.at-end", "front-width", "more", "all")).isTrue();
    assertThat(widest.barred("limit.at-end", "front-width", "less", "all")).isFalse();
    assertThat(told("turn-in understeer").barred("limit.at-end", "front-width", "more", "all"))
        .isFalse();
  }

  @Test
  void theRangeEndsSomewhere() {
    assertThat(told().at(200, 0).barred("limit.range-top", "camber", "more", "move")).isTrue();
    assertThat(told().at(199, 0).barred("limit.range-top", "camber", "more", "move")).isFalse();
    assertThat(told().at(0, -300).barred("limit.range-bottom", "caster", "less", "move")).isTrue();
    assertThat(told().at(0, -299).barred("limit.range-bottom", "caster", "less", "move")).isFalse();
  }

  @Test
  void betterIsNotTurnedRoundOnTheSameTrack() {
    Told same =
        told("water dry").and(new Trial(0, false, "caster", "more", "better", 1, "dry", false));
    Told other =
        told("water dry").and(new Trial(0, false, "caster", "more", "better", 1, "wet", false));
    assertThat(same.barred("limit.better-restore", "caster", "less", "restore")).isTrue();
    assertThat(other.barred("limit.better-restore", "caster", "less", "restore")).isFalse();
    assertThat(same.barred("limit.better", "caster", "less", "move")).isTrue();
    assertThat(other.barred("limit.better", "caster", "less", "move")).isFalse();
    assertThat(same.barred("limit.better", "caster", "more", "move")).isFalse();
  }

  @Test
  void aSlidingRearGetsNoRainSettingThatBites() {
    assertThat(told("turn-in oversteer").barred("limit.sliding", "caster", "more", "restore"))
        .isTrue();
    assertThat(told("exit oversteer").barred("limit.sliding", "caster", "more", "restore"))
        .isFalse();
  }

  @Test
  void casterThatWasTooHeavyIsNotBroughtBack() {
    assertThat(
            told()
                .at(0, 100)
                .and(new HeavyAt(200))
                .barred("limit.heavy-before", "caster", "more", "all"))
        .isTrue();
    assertThat(
            told()
                .at(0, 0)
                .and(new HeavyAt(200))
                .barred("limit.heavy-before", "caster", "more", "all"))
        .isFalse();
  }

  @Test
  void theHandsComeBeforeAGoodCorner() {
    Trial better = new Trial(0, true, "caster", "more", "better", 1, "dry", false);
    assertThat(
            told("steering-weight fine")
                .and(better)
                .barred("limit.better", "caster", "less", "move"))
        .isTrue();
    assertThat(
            told("steering-weight heavy")
                .and(better)
                .barred("limit.better", "caster", "less", "move"))
        .isFalse();
  }
}
