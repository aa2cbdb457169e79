package insidelift.engine.geometry;

import java.util.OptionalDouble;

/**
 * What a change does in one corner.
 *
 * @param corner where
 * @param before the kart as it is
 * @param after the kart as changed
 * @param liftOffBefore lateral acceleration, g, at which the inside rear leaves the ground at this
 *     steer; empty if it never does
 * @param liftOffAfter the same after the change
 */
public record CornerChange(
    Corner corner,
    CornerState before,
    CornerState after,
    OptionalDouble liftOffBefore,
    OptionalDouble liftOffAfter) {

  static CornerChange of(Corner corner, KartGeometry before, KartGeometry after) {
    return new CornerChange(
        corner,
        CornerState.of(before, corner.steerDeg(), corner.lateralG()),
        CornerState.of(after, corner.steerDeg(), corner.lateralG()),
        LoadModel.liftOffG(before, corner.steerDeg()),
        LoadModel.liftOffG(after, corner.steerDeg()));
  }

  /** How much more moment the hands must hold, N·m. */
  public double effortChangeNm() {
    return after.effort().totalNm() - before.effort().totalNm();
  }
}
