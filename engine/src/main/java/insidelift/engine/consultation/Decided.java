package insidelift.engine.consultation;

import insidelift.shared.Contribution;
import insidelift.shared.Contribution.Evidence;
import insidelift.shared.Lever;
import insidelift.shared.Status;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A decided situation, before it is put into words.
 *
 * @param status what it comes to
 * @param ledger everything the rules recorded, by rule name
 * @param evidence the evidence that counted, by finding
 * @param verdicts what becomes of each lever
 * @param first the levers to be moved now
 */
public record Decided(
    Status status,
    List<Contribution> ledger,
    Map<String, List<Evidence>> evidence,
    List<Verdict> verdicts,
    Set<Lever> first) {

  /** The entries of one type. */
  public <T extends Contribution> List<T> entries(Class<T> type) {
    return ledger.stream().filter(type::isInstance).map(type::cast).toList();
  }
}
