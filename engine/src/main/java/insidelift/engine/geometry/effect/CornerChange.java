package insidelift.engine.geometry.effect;

import insidelift.engine.geometry.kart.Corner;
import insidelift.engine.geometry.kart.CornerState;
import insidelift.engine.geometry.kart.KartGeometry;
import insidelift.engine.geometry.kart.LoadModel;
import insidelift.engine.geometry.plausible.ChangeBands;
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
 * @param bands the differences over the plausible karts
 */
public record CornerChange(
    Corner corner,
    CornerState before,
    CornerState after,
    OptionalDouble liftOffBefore,
    OptionalDouble liftOffAfter,
    ChangeBands bands) {

  static CornerChange of(
      Corner corner, KartGeometry before, KartGeometry after, ChangeBands bands) {
    return new CornerChange(
        corner,
        corner.state(before),
        corner.state(after),
        LoadModel.liftOffG(before, corner.steerDeg(), corner.longitudinalG()),
        LoadModel.liftOffG(after, corner.steerDeg(), corner.longitudinalG()),
        bands);
  }
}
