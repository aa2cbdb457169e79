package insidelift.engine.consultation.foresight;

import insidelift.engine.consultation.decision.Facts;
import insidelift.shared.Answer;
import insidelift.shared.Vocabulary;
import insidelift.shared.index.Known;
import insidelift.shared.index.Truth;
import insidelift.shared.situation.Situation;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What is known while questions are still open: a premise that reads one of them is open too. */
public final class OpenAnswers implements Known {

  private final Vocabulary vocabulary;
  private final Map<String, Answer> known = new HashMap<>();
  private final Set<String> declined;

  /** What is known in a situation; what was answered with "unknown" stays unknown. */
  public OpenAnswers(Situation situation, Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
    this.declined = situation.declined();
    for (Object fact : Facts.of(situation, vocabulary)) {
      if (fact instanceof Answer answer) {
        known.put(answer.question(), answer);
      }
    }
  }

  /** Whether a question has an answer. */
  public boolean has(String question) {
    return known.containsKey(question);
  }

  /** The answer to a question that has one. */
  public String value(String question) {
    return known.get(question).value();
  }

  /** Whether a question can still be answered. */
  public boolean open(String question) {
    return !known.containsKey(question)
        && !declined.contains(question)
        && vocabulary.question(question).isPresent();
  }

  @Override
  public Truth answered(String question, List<String> values) {
    Answer answer = known.get(question);
    if (answer == null) {
      return open(question) ? Truth.OPEN : Truth.FALSE;
    }
    return Truth.of(values.isEmpty() || values.contains(answer.value()));
  }

  @Override
  public Truth complaint() {
    return known.values().stream().anyMatch(Answer::complaint) ? Truth.TRUE : Truth.OPEN;
  }

  @Override
  public Truth moved(String lever, String direction) {
    return Truth.OPEN;
  }
}
