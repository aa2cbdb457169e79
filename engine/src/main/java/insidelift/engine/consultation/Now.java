package insidelift.engine.consultation;

import insidelift.shared.CheckKind;
import insidelift.shared.Contribution.FirstCheck;
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
 */
record Now(Status status, Set<String> checks, Set<FirstMove> moves) {

  /** One lever moved now. */
  record FirstMove(Lever lever, Direction direction, Kind kind, double degrees) {}

  /**
   * The same without the checks beside a fault: once one stands, the kart comes in, all faults on
   * it are put right, and what the driver felt is asked anew after the next run. So what else is
   * known to be wrong changes nothing in what to do now.
   */
  Now toDo() {
    return status == Status.FIX_FIRST ? new Now(status, Set.of(), Set.of()) : this;
  }

  static Now of(Decided decided) {
    return new Now(
        decided.status(),
        decided.entries(FirstCheck.class).stream()
            .filter(check -> check.kind() != CheckKind.LOOK)
            .map(check -> check.by().note())
            .collect(Collectors.toSet()),
        decided.verdicts().stream()
            .filter(verdict -> decided.first().contains(verdict.lever()))
            .map(
                verdict ->
                    new FirstMove(
                        verdict.lever(),
                        verdict.sized().direction(),
                        verdict.kind(),
                        verdict.sized().degrees().value()))
            .collect(Collectors.toSet()));
  }
}
