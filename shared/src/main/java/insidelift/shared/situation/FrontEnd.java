package insidelift.shared.situation;

import insidelift.shared.Degrees;
import java.util.Optional;

/**
 * How a front end stands or stood.
 *
 * @param camber the camber of both sides, if measured
 * @param caster the caster of both sides, if measured
 * @param absolute whether the caster is absolute rather than relative to the user's own neutral
 * @param neutral the absolute caster of the neutral position, if the caster is absolute and it is
 *     known
 */
public record FrontEnd(
    Optional<Sides> camber, Optional<Sides> caster, boolean absolute, Optional<Degrees> neutral) {

  /** A front end of which nothing is known. */
  public static final FrontEnd UNKNOWN =
      new FrontEnd(Optional.empty(), Optional.empty(), false, Optional.empty());

  /** The caster relative to neutral, if it can be told. */
  public Optional<Degrees> casterFromNeutral() {
    if (!absolute) {
      return caster.map(Sides::middle);
    }
    return caster.flatMap(sides -> neutral.map(zero -> sides.middle().minus(zero)));
  }
}
