package insidelift.engine.consultation.decision;

import insidelift.rules.fact.Spoken.By;
import insidelift.rules.fact.Spoken.Check;
import insidelift.shared.Direction;
import insidelift.shared.Kind;
import insidelift.shared.Lever;
import insidelift.shared.Status;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What to do now, and nothing else: two situations with the same one need no question that tells
 * them apart.
 *
 * @param status what the advice comes to
 * @param checks the notes of the blocking checks
 * @param moves the levers to be moved now
 * @param another whether another lever is worth a try where nothing moves
 */
public record ToDo(Status status, Set<String> checks, Set<FirstMove> moves, boolean another) {

  /** One lever moved now. */
  public record FirstMove(Lever lever, Direction direction, Kind kind, double degrees) {}

  /**
   * The same without the checks beside a fault: once one stands, the kart comes in, all faults on
   * it are put right, and what the driver felt is asked anew after the next run. So what else is
   * known to be wrong changes nothing in what to do now.
   */
  public ToDo brief() {
    return status == Status.FIX_FIRST ? new ToDo(status, Set.of(), Set.of(), false) : this;
  }

  /** What to do now by a decision. */
  public static ToDo of(Decided decided) {
    return new ToDo(
        decided.status(),
        decided
            .reasoned()
            .all(Check.class)
            .filter(Check::stops)
            .map(Check::by)
            .map(By::note)
            .collect(Collectors.toSet()),
        decided.now().stream()
            .map(
                verdict ->
                    new FirstMove(
                        verdict.lever(),
                        verdict.sized().direction(),
                        verdict.kind(),
                        verdict.sized().degrees().value()))
            .collect(Collectors.toSet()),
        decided.now().isEmpty() && !decided.beside().isEmpty());
  }
}
