package insidelift.engine.training.card;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How far a trainee has come in one topic.
 *
 * @param topic the topic, in words
 * @param cards how many cards it has
 * @param never how many of them nobody has asked yet
 * @param learning how many come back within three weeks
 * @param known how many come back later than that
 */
public record LearningProgress(String topic, int cards, int never, int learning, int known) {

  /** A card that comes back no sooner counts as known. Provisional. */
  private static final int KNOWN_DAYS = 21;

  /** The progress in every topic, the one with the most that was never seen first. */
  public static List<LearningProgress> of(List<Card> cards, Schedule schedule) {
    Map<String, LearningProgress> topics = new LinkedHashMap<>();
    for (Card card : cards) {
      Repetition state = schedule.state(card.id());
      boolean known = state.interval() >= KNOWN_DAYS;
      topics.merge(
          card.topic(),
          new LearningProgress(
              card.topic(),
              1,
              state.isNew() ? 1 : 0,
              state.isNew() || known ? 0 : 1,
              known ? 1 : 0),
          LearningProgress::plus);
    }
    return topics.values().stream()
        .sorted(
            Comparator.comparingDouble(
                (LearningProgress one) -> -one.never() / (double) one.cards()))
        .toList();
  }

  private LearningProgress plus(LearningProgress other) {
    return new LearningProgress(
        topic,
        cards + other.cards,
        never + other.never,
        learning + other.learning,
        known + other.known);
  }
}
