package insidelift.engine.consultation;

import insidelift.engine.geometry.ChangeEffect;
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
    double camber = degrees(advice, Lever.CAMBER);
    double caster = degrees(advice, Lever.CASTER);
    return camber == 0 && caster == 0
        ? Optional.empty()
        : Optional.of(ChangeEffect.of(Effects.geometry(situation.kart()), camber, caster));
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
