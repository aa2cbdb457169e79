package insidelift.engine.proof.laps;

/**
 * What a lap-time file may hold, each limit with its reason; its size is in {@link
 * insidelift.shared.situation.InputLimits}.
 */
final class LapLimits {

  /** A run is one outing, some 10 to 30 laps; more than this is a season in one file. */
  static final int LAPS = 500;

  /** Shorter than a lap of any kart track: a split, or minutes where seconds were meant. */
  static final double SHORTEST_SECONDS = 10.0;

  /** An hour: an out-lap or in-lap may hold a long stop, but not a whole meeting. */
  static final double LONGEST_SECONDS = 3600.0;

  /** Lap numbers count laps of a day at most. */
  static final int LAP_NUMBER = 9_999;

  private LapLimits() {}
}
