package insidelift.engine.proof;

/**
 * What would tell: laps still to be driven, if they are like those so far.
 *
 * @param laps how many in all; 0 where the verdict is in
 * @param inEachRun how many of them in each run there is
 * @param returnRun how many of them in a return run on the old setting
 * @param enough whether they would tell with a chance of 80 %; false where they are only the least
 *     without which nothing can be said, or the most that one would ask for
 */
public record MoreLaps(int laps, int inEachRun, int returnRun, boolean enough) {

  static final MoreLaps NONE = new MoreLaps(0, 0, 0, true);
}
