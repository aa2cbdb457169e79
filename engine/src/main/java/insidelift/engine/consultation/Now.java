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
