package insidelift.engine.training.card;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.logbook.entry.ReviewEntry;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ScheduleTest {

  private static final LocalDate DAY = LocalDate.of(2026, 3, 1);

  private static Card card(String id, String topic) {
    return new Card.Recall(id, topic, List.of("?"), "water", "Claim");
  }

  private static ReviewEntry review(String card, int quality, LocalDate day) {
    return new ReviewEntry("Ida Vento", card, quality, day);
  }

  @Test
  void whatIsDueComesTheLongestOverdueFirst() {
    List<Card> cards = List.of(card("a", "t"), card("b", "t"), card("c", "t"), card("new", "t"));
    List<ReviewEntry> log =
        List.of(
            review("a", 4, DAY.plusDays(1)), review("b", 4, DAY), review("c", 4, DAY.plusDays(4)));

    assertThat(new Schedule(log, DAY.plusDays(4)).due(cards))
        .extracting(Card::id)
        .containsExactly("b", "a");
    assertThat(new Schedule(log, DAY).due(cards)).isEmpty();
  }

  @Test
  void newCardsComeFromTopicsNeverSeenBeforeTheOthersAndTenADay() {
    List<Card> cards =
        new ArrayList<>(List.of(card("seen", "old"), card("o1", "old"), card("o2", "old")));
    IntStream.range(0, 6).forEach(i -> cards.add(card("x" + i, "x")));
    IntStream.range(0, 6).forEach(i -> cards.add(card("y" + i, "y")));
    List<ReviewEntry> log = List.of(review("seen", 5, DAY));

    List<Card> fresh = new Schedule(log, DAY.plusDays(1)).fresh(cards);
    assertThat(fresh).hasSize(Schedule.NEW_A_DAY);
    assertThat(fresh).extracting(Card::id).startsWith("x0", "y0", "x1", "y1");
    assertThat(fresh).extracting(Card::topic).doesNotContain("old");
    // One of the ten was had today.
    assertThat(new Schedule(log, DAY).fresh(cards)).hasSize(Schedule.NEW_A_DAY - 1);
  }

  @Test
  void itIsAFunctionOfTheLogAndTheDayAlone() {
    Random random = new Random(3);
    List<Card> cards = new ArrayList<>();
    List<ReviewEntry> log = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      cards.add(card("c" + i, "t" + i % 4));
      for (int n = 0; n < 5; n++) {
        log.add(review("c" + i, random.nextInt(6), DAY.plusDays(7L * n + i % 7)));
      }
    }
    List<ReviewEntry> shuffled = new ArrayList<>(log);
    Collections.shuffle(shuffled, random);
    for (int d = 0; d < 60; d++) {
      Schedule one = new Schedule(log, DAY.plusDays(d));
      Schedule other = new Schedule(shuffled, DAY.plusDays(d));
      assertThat(other.due(cards)).isEqualTo(one.due(cards));
      assertThat(other.fresh(cards)).isEqualTo(one.fresh(cards));
    }
  }

  @Test
  void answersAfterTheDayDoNotCount() {
    List<ReviewEntry> log = List.of(review("a", 4, DAY), review("a", 4, DAY.plusDays(1)));
    assertThat(new Schedule(log, DAY).state("a").interval()).isEqualTo(1);
    assertThat(new Schedule(log, DAY.plusDays(1)).state("a").interval()).isEqualTo(6);
    assertThat(new Schedule(log, DAY).state("b")).isEqualTo(Repetition.NEW);
  }
}
