package insidelift.engine.training.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The algorithm SM-2 as published: P. A. Wozniak, "Optimization of learning", University of
 * Technology in Poznan, 1990, section 3.2. The expected numbers are worked out by hand from its
 * formulas.
 */
class RepetitionTest {

  private static final LocalDate FIRST = LocalDate.of(2026, 3, 1);

  /** Answers each time on the day it is due. */
  private static List<Integer> intervals(int... qualities) {
    Repetition card = Repetition.NEW;
    LocalDate day = FIRST;
    List<Integer> intervals = new ArrayList<>();
    for (int quality : qualities) {
      card = card.after(quality, day);
      intervals.add(card.interval());
      day = day.plusDays(card.interval());
    }
    return intervals;
  }

  @Test
  void withQualityFourTheFactorStaysAndIntervalsAreThosePublished() {
    // 1, 6, then times 2.5: 15, 37.5 rounded up, 95.
    assertThat(intervals(4, 4, 4, 4, 4)).containsExactly(1, 6, 15, 38, 95);
  }

  @Test
  void withQualityFiveTheFactorGrowsByATenthEachTime() {
    // Factors 2.6, 2.7, 2.8, 2.9: 1, 6, 6 x 2.8 = 16.8, 17 x 2.9 = 49.3.
    assertThat(intervals(5, 5, 5, 5)).containsExactly(1, 6, 17, 50);
  }

  @Test
  void withQualityThreeTheFactorFallsToItsLeast() {
    // 2.36, 2.22, 2.08, 1.94: 1, 6, 6 x 2.08 = 12.48, 13 x 1.94 = 25.22.
    assertThat(intervals(3, 3, 3, 3)).containsExactly(1, 6, 13, 26);
    Repetition card = Repetition.NEW;
    LocalDate day = FIRST;
    for (int i = 0; i < 12; i++) {
      card = card.after(3, day);
      day = day.plusDays(card.interval());
    }
    assertThat(card.easiness()).isEqualTo(1.3);
  }

  @ParameterizedTest
  @CsvSource({"5, 2.60", "4, 2.50", "3, 2.36"})
  void theFactorChangesByThePublishedAmounts(int quality, double easiness) {
    assertThat(Repetition.NEW.after(quality, FIRST).easiness()).isCloseTo(easiness, within(1e-9));
  }

  @Test
  void aLapseBeginsAgainWithTheFactorItHad() {
    Repetition known = Repetition.NEW.after(5, FIRST).after(5, FIRST.plusDays(1));
    Repetition lapsed = known.after(2, FIRST.plusDays(7));
    assertThat(lapsed.interval()).isEqualTo(1);
    assertThat(lapsed.successes()).isZero();
    assertThat(lapsed.easiness()).isEqualTo(known.easiness());
    assertThat(lapsed.after(4, FIRST.plusDays(8)).interval()).isEqualTo(1);
    assertThat(lapsed.after(4, FIRST.plusDays(8)).after(4, FIRST.plusDays(9)).interval())
        .isEqualTo(6);
  }

  @Test
  void anAnswerBelowFourComesBackTheSameDayUntilItIsNot() {
    Repetition unsure = Repetition.NEW.after(3, FIRST);
    assertThat(unsure.due()).isEqualTo(FIRST);
    assertThat(unsure.after(3, FIRST).due()).isEqualTo(FIRST);
    Repetition sure = unsure.after(4, FIRST);
    assertThat(sure.due()).isEqualTo(FIRST.plusDays(1));
    assertThat(sure.easiness()).isEqualTo(unsure.easiness());
  }

  @Test
  void aSuccessBeforeItsDayChangesNothing() {
    Repetition known = Repetition.NEW.after(4, FIRST).after(4, FIRST.plusDays(1));
    assertThat(known.after(5, FIRST.plusDays(3))).isEqualTo(known);
    assertThat(known.after(1, FIRST.plusDays(3)).interval()).isEqualTo(1);
  }

  @Test
  void noSuccessEverShortensAnIntervalAndNoLapseLengthensOne() {
    Random random = new Random(7);
    for (int run = 0; run < 2000; run++) {
      Repetition card = Repetition.NEW;
      LocalDate day = FIRST;
      for (int i = 0; i < 30; i++) {
        int quality = random.nextInt(6);
        Repetition after = card.after(quality, day);
        if (quality >= Repetition.PASSED) {
          assertThat(after.interval()).isGreaterThanOrEqualTo(card.interval());
        } else if (!card.isNew()) {
          assertThat(after.interval()).isLessThanOrEqualTo(card.interval());
        }
        assertThat(after.easiness()).isGreaterThanOrEqualTo(Repetition.LEAST_EASINESS);
        card = after;
        day = day.plusDays(random.nextInt(2 * card.interval() + 1));
      }
    }
  }

  @Test
  void aQualityThatIsNoneIsRefusedAndANewCardIsDueOnNoDay() {
    assertThatThrownBy(() -> Repetition.NEW.after(6, FIRST))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("quality 6 is not from 0 to 5");
    assertThatThrownBy(() -> Repetition.NEW.after(-1, FIRST)).hasMessageContaining("quality -1");
    assertThatThrownBy(Repetition.NEW::due).hasMessage("a new card is due on no day");
  }
}
