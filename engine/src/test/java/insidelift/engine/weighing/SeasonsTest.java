package insidelift.engine.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.weighing.Season.Outcome;
import insidelift.rules.RuleBase;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Told round after round, the advice settles. Each world is a kart with a best camber and caster
 * that nobody outside can see, in one of ten of them with camber, in one of ten with caster the
 * other way round than the trade believes; its driver reports what it does, sometimes wrongly. What
 * counts is what is true at the end of twelve runs, not what was reached on the way.
 *
 * <p>{@code -Dseasons=100000} plays more worlds.
 */
class SeasonsTest {

  private static final int WORLDS = Integer.getInteger("seasons", 2000);

  private static final RuleBase RULES = RuleBase.load();
  private static List<Outcome> truthful;
  private static List<Outcome> oneInTen;

  @BeforeAll
  static void play() {
    truthful = play("rules", world -> new ByRules(RULES), 0);
    oneInTen = play("rules", world -> new ByRules(RULES), 0.1);
  }

  private static List<Outcome> play(String name, IntFunction<Crew> crew, double wrong) {
    List<Outcome> outcomes = new ArrayList<>();
    for (int i = 0; i < WORLDS; i++) {
      World world = World.random(mixed(2L * i));
      Random chance = mixed(2L * i + 1);
      Season season = new Season(world, crew.apply(i), chance, wrong);
      boolean water = chance.nextInt(3) == 0;
      outcomes.add(season.stretch(water, chance.nextInt(5) == 0));
      if (chance.nextBoolean()) {
        outcomes.add(season.stretch(!water, false));
      }
    }
    List<Outcome> curable = curable(outcomes);
    int[] rounds = curable.stream().mapToInt(o -> o.roundsToGood).sorted().toArray();
    System.out.printf(
        "%s, %.0f %% of reports wrong: %d stretches, %.1f %% good at the end, reached in 8 runs %.1f"
            + " %%, median %d, worst %d, third visits %.2f %%%n",
        name,
        100 * wrong,
        curable.size(),
        good(outcomes),
        share(curable, o -> o.roundsToGood <= 8),
        rounds[rounds.length / 2],
        rounds[rounds.length - 1],
        thirdVisits(outcomes));
    return outcomes;
  }

  /** Neighbouring seeds begin alike: they are stirred first, or the worlds would be too. */
  private static Random mixed(long seed) {
    return new Random(new SplittableRandom(seed).nextLong());
  }

  private static List<Outcome> curable(List<Outcome> outcomes) {
    return outcomes.stream().filter(outcome -> outcome.curable).toList();
  }

  /** Good at the end, in per cent of the stretches that these levers can cure. */
  private static double good(List<Outcome> outcomes) {
    return share(curable(outcomes), outcome -> outcome.goodAtEnd);
  }

  private static double share(List<Outcome> all, Predicate<Outcome> wanted) {
    return 100.0 * all.stream().filter(wanted).count() / all.size();
  }

  private static double thirdVisits(List<Outcome> outcomes) {
    double third = outcomes.stream().mapToInt(outcome -> outcome.thirdVisits).sum();
    return 100 * third / Math.max(1, outcomes.stream().mapToInt(outcome -> outcome.moves).sum());
  }

  @Test
  void toldTheTruthItSettles() {
    assertThat(good(truthful)).isGreaterThanOrEqualTo(98);
    assertThat(thirdVisits(truthful)).isLessThan(0.5);
  }

  @Test
  void withOneReportInTenWrongItSettlesToo() {
    assertThat(good(oneInTen)).isGreaterThanOrEqualTo(90);
    assertThat(thirdVisits(oneInTen)).isLessThan(0.5);
  }

  @Test
  void whatMadeItBetterIsNeverTurnedRound() {
    assertThat(truthful).allMatch(outcome -> outcome.betterReversed == 0);
    assertThat(oneInTen).allMatch(outcome -> outcome.betterReversed == 0);
  }

  @Test
  void anUndoGoesToTheExactReading() {
    assertThat(truthful).allMatch(outcome -> outcome.inexactUndos == 0);
    assertThat(oneInTen).allMatch(outcome -> outcome.inexactUndos == 0);
  }

  @Test
  void everyRoundKeepsToTheLimits() {
    assertThat(truthful).allMatch(outcome -> outcome.broken.isEmpty());
    assertThat(oneInTen).allMatch(outcome -> outcome.broken.isEmpty());
  }

  @Test
  void itBeatsAHandbookAndChance() {
    double handbook = good(play("handbook", world -> OtherCrews.handbook(), 0.1));
    double random = good(play("random", world -> OtherCrews.random(mixed(world)), 0.1));
    assertThat(good(oneInTen)).isGreaterThan(handbook + 5).isGreaterThan(random + 40);
  }

  /**
   * Without this, a program that never says anything would pass every test of what it never does.
   */
  @Test
  void aProgramThatStandsStillFails() {
    List<Outcome> still = play("standing still", world -> OtherCrews.still(), 0);
    assertThat(good(still)).isLessThan(20);
  }
}
