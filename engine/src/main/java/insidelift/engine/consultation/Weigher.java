package insidelift.engine.consultation;

import insidelift.shared.Contribution;
import insidelift.shared.Contribution.Evidence;
import insidelift.shared.Finding;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Sums evidence. Weights of evidence are integers in decibans and add (I. J. Good, Probability and
 * the Weighing of Evidence, 1950), so the order in which rules speak cannot change a sum. What
 * rests on the same observation counts once, with the strongest weight: otherwise one remark would
 * convince by being repeated.
 */
final class Weigher {

  /** Slight evidence, in decibans. */
  static final int SLIGHT = 2;

  /** Clear evidence, in decibans. */
  static final int CLEAR = 5;

  /** Strong evidence, in decibans. */
  static final int STRONG = 10;

  private Weigher() {}

  /** The evidence that counts, by finding: one piece for each observation. */
  static Map<String, List<Evidence>> counted(List<Contribution> ledger) {
    Map<String, Map<String, Evidence>> strongest = new LinkedHashMap<>();
    for (Contribution entry : ledger) {
      if (entry instanceof Evidence evidence) {
        strongest
            .computeIfAbsent(evidence.finding(), key -> new LinkedHashMap<>())
            .merge(evidence.observation(), evidence, Weigher::stronger);
      }
    }
    Map<String, List<Evidence>> counted = new LinkedHashMap<>();
    strongest.forEach((finding, byQuestion) -> counted.put(finding, sorted(byQuestion.values())));
    return counted;
  }

  /** The findings with their sums. */
  static List<Finding> findings(Map<String, List<Evidence>> counted) {
    return counted.entrySet().stream()
        .map(
            entry ->
                new Finding(
                    entry.getKey(), entry.getValue().stream().mapToInt(Evidence::weight).sum()))
        .toList();
  }

  /** The word for a sum. */
  static String word(int weight) {
    if (weight >= STRONG) {
      return "strong";
    }
    if (weight >= CLEAR) {
      return "clear";
    }
    return weight >= SLIGHT ? "slight" : "none";
  }

  private static Evidence stronger(Evidence one, Evidence other) {
    int size = Math.abs(one.weight()) - Math.abs(other.weight());
    // Equal weights are told apart by the rule's name, so that order of firing shows nowhere.
    return size > 0 || (size == 0 && one.by().rule().compareTo(other.by().rule()) <= 0)
        ? one
        : other;
  }

  private static List<Evidence> sorted(Collection<Evidence> evidence) {
    return evidence.stream()
        .sorted((one, other) -> one.by().rule().compareTo(other.by().rule()))
        .toList();
  }
}
