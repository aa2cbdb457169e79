package insidelift.engine.consultation.decision;

import insidelift.rules.Reasoned;
import insidelift.rules.fact.Beside;
import insidelift.rules.fact.Beside.Lead;
import insidelift.shared.Lever;
import insidelift.shared.Status;
import insidelift.shared.situation.Situation;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A decided situation, before it is put into words.
 *
 * @param situation what was known
 * @param status what it comes to
 * @param reasoned everything that the rules made of it
 * @param verdicts what becomes of each lever that there is anything to say of
 */
public record Decided(
    Situation situation, Status status, Reasoned reasoned, List<LeverOutcome> verdicts) {

  /** Takes a copy of the verdicts. */
  public Decided {
    verdicts = List.copyOf(verdicts);
  }

  /** What is moved now. */
  public List<LeverOutcome> now() {
    return verdicts.stream().filter(LeverOutcome::first).toList();
  }

  /**
   * The other levers that gain enough, what comes first before the rest, then by what they gain.
   */
  public List<Beside> beside() {
    return reasoned
        .all(Beside.class)
        .sorted(Comparator.comparing((Beside one) -> !leads(one)).thenComparing(Beside.BY_GAIN))
        .toList();
  }

  /** Whether another lever comes before the move of the front end. */
  public boolean leads(Beside other) {
    return reasoned.all(Lead.class).anyMatch(new Lead(other.lever(), other.direction())::equals);
  }

  /** What becomes of a lever, if there is anything to say of it. */
  public Optional<LeverOutcome> of(Lever lever) {
    return verdicts.stream().filter(verdict -> verdict.lever() == lever).findFirst();
  }
}
