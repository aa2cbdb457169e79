package insidelift.engine.training.drill;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.foresight.NextQuestion;
import insidelift.engine.training.drill.Judgement.Safety;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.function.ToIntFunction;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The scores tell who knows from who guesses. {@code -Dtraining.cases=1000} plays that many cases,
 * from {@code -Dtraining.first} on; an ordinary run plays few.
 */
class PlayersTest {

  private static final int FIRST = Integer.getInteger("training.first", 1);
  private static final int CASES = Integer.getInteger("training.cases", 12);

  /** Cases for those who do not ask: they are judged in no time. */
  private static final int GUESSED = 150;

  private static final Advisor ADVISOR = Advisor.load();
  private static final NextQuestion NEXT = new NextQuestion(ADVISOR.decider());
  private static final List<DrillCase> DRAWN = new ArrayList<>();
  private final Players players = new Players(ADVISOR, NEXT);

  @BeforeAll
  static void draw() {
    Imagined imagined = new Imagined(ADVISOR.decider());
    for (int number = FIRST; number < FIRST + Math.max(CASES, GUESSED); number++) {
      DRAWN.add(new DrillCase(Integer.toString(number), imagined.whole(number)));
    }
    // What the engine has worked out for a kart serves all cases of the same kart.
    DRAWN.sort(Comparator.comparing(one -> one.hidden().kart().toString()));
  }

  @Test
  void theEngineScoresFullMarksInItsOwnDrill() {
    long start = System.nanoTime();
    for (DrillCase hidden : DRAWN.subList(0, CASES)) {
      Judgement judged = players.engine(hidden);
      String name = "case %s: %s".formatted(hidden.source(), judged.drill().moves());
      assertThat(judged.economy()).as(name).isEqualTo(100);
      assertThat(judged.conclusion()).as("%s for %s", name, judged.drill().right()).isEqualTo(100);
      assertThat(judged.reason()).as(name).isEqualTo(100);
      assertThat(judged.safety()).as(name).isEqualTo(Safety.SAFE);
      assertThat(Feedback.on(ADVISOR, judged)).as(name).isEmpty();
    }
    System.out.printf(
        "the engine: full marks on %d cases in %.0f s%n", CASES, (System.nanoTime() - start) / 1e9);
  }

  @Test
  void whoGuessesIsNearChance() {
    Random random = new Random(20261125);
    List<Judgement> all = DRAWN.stream().map(hidden -> players.guess(hidden, random)).toList();
    double chance =
        all.stream()
            .mapToDouble(one -> 1.0 / Answers.offered(Answers.of(one.drill().right())).size())
            .average()
            .orElseThrow();
    double right = all.stream().filter(Judgement::rightDecision).count() / (double) all.size();
    double spread = 3 * Math.sqrt(chance * (1 - chance) / all.size());

    System.out.printf(
        "guessing, %d cases: right %.3f, chance %.3f +- %.3f; economy %.0f, reason %.0f%n",
        all.size(),
        right,
        chance,
        spread,
        mean(few(all), Judgement::economy),
        mean(all, Judgement::reason));
    assertThat(right).isBetween(chance - spread, chance + spread);
    assertThat(mean(few(all), Judgement::economy)).isLessThan(40);
    assertThat(mean(all, Judgement::reason)).isBetween(10.0, 40.0);
  }

  @Test
  void whoAlwaysSaysTheSameIsExposed() {
    List<Judgement> all = DRAWN.stream().map(players::oneTrick).toList();
    double right = all.stream().filter(Judgement::rightDecision).count() / (double) all.size();

    System.out.printf(
        "always more caster, %d cases: right %.3f, economy %.0f, conclusion %.0f, reason %.0f, safety"
            + " %.0f%n",
        all.size(),
        right,
        mean(few(all), Judgement::economy),
        mean(all, Judgement::conclusion),
        mean(all, Judgement::reason),
        mean(all, one -> one.safety().points()));
    assertThat(right).isLessThan(0.25);
    assertThat(mean(few(all), Judgement::economy)).isLessThan(5);
    assertThat(mean(all, one -> one.safety().points())).isLessThan(50);
    assertThat(all).anyMatch(one -> one.safety() == Safety.MISSED);
    assertThat(all).anyMatch(one -> one.safety() == Safety.FORBIDDEN);
  }

  /** Judging the questions of a bad player takes the longest: some are enough. */
  private static List<Judgement> few(List<Judgement> all) {
    return all.subList(0, Math.min(8, all.size()));
  }

  private static double mean(List<Judgement> all, ToIntFunction<Judgement> points) {
    return all.stream().mapToInt(points).average().orElseThrow();
  }
}
