package insidelift.engine.consultation.explanation;

import insidelift.shared.advice.Advice;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What other answers would change, tried on a copy.
 *
 * @param answers the answers tried
 * @param before the advice as things stand
 * @param after the advice with those answers
 * @param gone what is there now and would not be, in words
 * @param come what would be there and is not, in words
 */
public record WhatIf(
    Map<String, String> answers,
    Advice before,
    Advice after,
    List<String> gone,
    List<String> come) {

  /** Whether anything would change. */
  public boolean changes() {
    return !gone.isEmpty() || !come.isEmpty();
  }

  /** The difference as lines of at most 80 columns: - for what goes, + for what comes. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    List<String> tried = new ArrayList<>();
    answers.forEach((question, value) -> tried.add(question + "=" + value));
    Said.wrap("What if " + String.join(", ", tried) + ":", "", lines);
    gone.forEach(one -> Said.wrap(one, "  - ", lines));
    come.forEach(one -> Said.wrap(one, "  + ", lines));
    if (!changes()) {
      lines.add("  Nothing would change.");
    }
    return lines;
  }
}
