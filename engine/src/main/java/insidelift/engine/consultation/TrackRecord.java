package insidelift.engine.consultation;

import insidelift.shared.Direction;
import insidelift.shared.Lever;

/**
 * How advice has done before. It can only change which of two corrections goes first, and only
 * where no rule of rank decides but the phase of the corner: it never moves a lever, never turns a
 * direction, and no fault and no limit is weighed against it.
 */
@FunctionalInterface
public interface TrackRecord {

  /** Nothing is known of any advice. */
  TrackRecord NONE = (claim, lever, direction) -> 0;

  /**
   * The evidence that this advice works, in decibans: 10 log10 of the odds; 0 where nothing is
   * known.
   *
   * @param claim the note that the advice stands on
   * @param lever the lever
   * @param direction which way
   */
  double decibans(String claim, Lever lever, Direction direction);
}
