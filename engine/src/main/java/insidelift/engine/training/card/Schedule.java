package insidelift.engine.training.card;

import insidelift.engine.logbook.entry.ReviewEntry;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What one trainee is to be asked on one day: a function of the log of answers and of that day, and
 * of nothing else.
 */
public final class Schedule {

  /** New cards a day: each comes back about five times in its first month. Provisional. */
  public static final int NEW_A_DAY = 10;

  private final LocalDate today;
  private final Map<String, Repetition> states = new HashMap<>();
  private final Map<String, LocalDate> firstSeen = new HashMap<>();

  /**
   * The schedule by what a trainee has answered.
   *
   * @param reviews the answers of that trainee, in any order; answers after the day do not count
   * @param today the day
   */
  public Schedule(List<ReviewEntry> reviews, LocalDate today) {
    this.today = today;
    reviews.stream()
        .filter(review -> !review.day().isAfter(today))
        .sorted(Comparator.comparing(ReviewEntry::day))
        .forEach(this::take);
  }

  private void take(ReviewEntry review) {
    firstSeen.putIfAbsent(review.card(), review.day());
    states.put(review.card(), state(review.card()).after(review.quality(), review.day()));
  }

  /** How well a card is known. */
  public Repetition state(String card) {
    return states.getOrDefault(card, Repetition.NEW);
  }

  /** The cards to be asked again by that day, the longest overdue first. */
  public List<Card> due(List<Card> cards) {
    return cards.stream()
        .filter(card -> !state(card.id()).isNew() && !state(card.id()).due().isAfter(today))
        .sorted(Comparator.comparing((Card card) -> state(card.id()).due()).thenComparing(Card::id))
        .toList();
  }

  /**
   * The new cards for that day: from topics never seen before from others, one topic after the
   * other, and no more a day than {@link #NEW_A_DAY}.
   */
  public List<Card> fresh(List<Card> cards) {
    long had = firstSeen.values().stream().filter(today::equals).count();
    Map<String, List<Card>> never = new LinkedHashMap<>();
    Map<String, List<Card>> some = new LinkedHashMap<>();
    Set<String> seen = new HashSet<>();
    cards.stream().filter(card -> !state(card.id()).isNew()).forEach(c -> seen.add(c.topic()));
    for (Card card : cards) {
      if (state(card.id()).isNew()) {
        (seen.contains(card.topic()) ? some : never)
            .computeIfAbsent(card.topic(), key -> new ArrayList<>())
            .add(card);
      }
    }
    List<Card> fresh = new ArrayList<>(inTurn(never));
    fresh.addAll(inTurn(some));
    return List.copyOf(
        fresh.subList(0, (int) Math.min(fresh.size(), Math.max(0, NEW_A_DAY - had))));
  }

  private static List<Card> inTurn(Map<String, List<Card>> topics) {
    List<Card> inTurn = new ArrayList<>();
    int most = topics.values().stream().mapToInt(List::size).max().orElse(0);
    for (int i = 0; i < most; i++) {
      for (List<Card> topic : topics.values()) {
        if (i < topic.size()) {
          inTurn.add(topic.get(i));
        }
      }
    }
    return inTurn;
  }
}
