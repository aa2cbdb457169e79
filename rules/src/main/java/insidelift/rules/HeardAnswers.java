package insidelift.rules;

import insidelift.rules.fact.Step;
import insidelift.shared.Answer;
import insidelift.shared.index.Known;
import insidelift.shared.index.Truth;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What was told, with nothing left open: what is not among the facts is not so. */
final class HeardAnswers implements Known {

  private final Map<String, String> values = new HashMap<>();
  private boolean complaint;
  private Collection<Step> moves = List.of();

  HeardAnswers(Collection<?> facts) {
    for (Object fact : facts) {
      if (fact instanceof Answer answer) {
        values.put(answer.question(), answer.value());
        complaint |= answer.complaint();
      }
    }
  }

  /** The answers, by question. */
  Map<String, String> values() {
    return values;
  }

  /** Takes note of what is moved now. */
  void moving(Collection<Step> now) {
    moves = now;
  }

  /** Whether a question is answered that way. */
  boolean is(String question, String value) {
    return value.equals(values.get(question));
  }

  /** Whether a question is answered at all. */
  boolean knows(String question) {
    return values.containsKey(question);
  }

  @Override
  public Truth answered(String question, List<String> wanted) {
    String value = values.get(question);
    return Truth.of(value != null && (wanted.isEmpty() || wanted.contains(value)));
  }

  @Override
  public Truth complaint() {
    return Truth.of(complaint);
  }

  @Override
  public Truth moved(String lever, String direction) {
    return Truth.of(
        moves.stream()
            .anyMatch(
                step ->
                    (lever.isEmpty() || lever.equals(step.lever()))
                        && (direction.isEmpty() || direction.equals(step.direction()))));
  }
}
