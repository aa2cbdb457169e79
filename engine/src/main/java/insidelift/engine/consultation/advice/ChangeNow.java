package insidelift.engine.consultation.advice;

import insidelift.engine.geometry.effect.ChangeEffect;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.situation.Situation;
import java.util.Optional;

/** Everything that an advice changes now, as one change of this kart's geometry. */
public final class ChangeNow {

  private ChangeNow() {}

  /**
   * What the levers that move now do together; empty if none moves now.
   *
   * @param situation what the advice was given on
   * @throws insidelift.engine.geometry.RefusedInputException if the kart would leave the range
   *     accepted
   */
  public static Optional<ChangeEffect> of(Situation situation, Advice advice) {
    return advice.suggestions().stream().anyMatch(Suggestion::first)
        ? Optional.of(orNone(situation, advice))
        : Optional.empty();
  }

  /**
   * The same, with a change by nothing where no lever moves now: the kart as it is.
   *
   * @throws insidelift.engine.geometry.RefusedInputException if the kart would leave the range
   *     accepted
   */
  public static ChangeEffect orNone(Situation situation, Advice advice) {
    return ChangeEffect.of(
        Effects.geometry(situation.kart()),
        degrees(advice, Lever.CAMBER),
        degrees(advice, Lever.CASTER),
        Effects.corners(situation));
  }

  private static double degrees(Advice advice, Lever lever) {
    return advice.suggestions().stream()
        .filter(suggestion -> suggestion.first() && suggestion.lever() == lever)
        .mapToDouble(ChangeNow::signed)
        .sum();
  }

  private static double signed(Suggestion suggestion) {
    return suggestion.direction() == Direction.LESS ? -suggestion.degrees() : suggestion.degrees();
  }
}
