package insidelift.engine.proof.statistics;

/**
 * What the proof takes for granted: conventions, and judgements about karts that no lap-time file
 * can tell. The judgements are provisional (no published figures are known to us); the simulation
 * in the tests shows what they give, and what happens where a day is harsher than they are.
 */
public final class Assumptions {

  /** Two-sided confidence of the interval; convention. Half of the rest is a false keep. */
  public static final double CONFIDENCE = 0.95;

  /** The chance with which the laps asked for would show the shift; convention (Cohen 1988). */
  public static final double POWER = 0.80;

  /** Laps a run must keep; with fewer, the rank interval of two runs hardly exists at 95 %. */
  public static final int FEWEST_LAPS = 5;

  /** The smallest shift that laps are asked for, in seconds; judgement. */
  public static final double WORTH_SECONDS = 0.15;

  /** More laps than this are not asked for in one run: no outing is longer; judgement. */
  public static final int MOST_MORE_LAPS = 60;

  /** Standard deviation of the drift within runs, seconds a lap, around none; judgement. */
  public static final double SLOPE_SD = 0.008;

  /**
   * The mean share of a run's slowing that is still there in the next run: tyre pressure falls back
   * in the pause, worn rubber does not, so anything from 0 to 1; judgement.
   */
  static final double SLOWER_CARRY = 0.5;

  /** The standard deviation of that share. */
  static final double SLOWER_CARRY_SD = Math.sqrt(1.0 / 12.0);

  /**
   * The mean share of a run's getting quicker that shows in the next: driver and tyres warm up
   * anew, but a track that is cleaned keeps its gain and adds to it in the pause; judgement.
   */
  static final double QUICKER_CARRY = 0.75;

  /** The standard deviation of that share; judgement. */
  static final double QUICKER_CARRY_SD = 0.25;

  /**
   * Standard deviation, in seconds a lap, of a track's gain that no slope shows because the tyres
   * go off as fast within a run, and then recover; judgement.
   */
  public static final double HIDDEN_SLOPE_SD = 0.003;

  /**
   * Standard deviation in seconds of what track and driver do unseen in the pause between two runs
   * without a return run; judgement.
   */
  public static final double PAUSE_SD = 0.03;

  /** The same for a run between two others, where only what does not change steadily is left. */
  public static final double PAUSE_SD_WITH_RETURN = 0.02;

  /**
   * Standard deviation of the place in time of the middle run between the outer two, as a share of
   * the whole: laps tell it only roughly, since pauses differ; judgement.
   */
  public static final double PLACE_SD = 0.15;

  /** The autocorrelation of laps to be expected before any is measured; judgement. */
  public static final double RHO_MEAN = 0.2;

  /** Its standard deviation; judgement. */
  static final double RHO_SD = 0.15;

  private Assumptions() {}
}
