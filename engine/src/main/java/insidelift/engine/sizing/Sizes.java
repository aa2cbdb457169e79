package insidelift.engine.sizing;

import insidelift.shared.Degrees;

/**
 * The numbers of the trade, in one typed table. All are provisional unless another source stands
 * beside them: nobody publishes sizes that hold for every kart, so they are small, and relative to
 * the user's own neutral.
 */
public final class Sizes {

  /** One correction of camber where the kart's own position is not measured. Provisional. */
  public static final Degrees CAMBER_STEP = Degrees.of(0.5);

  /**
   * What one position moves the caster where it is not measured. Provisional: published positions
   * lie between a fraction of a degree and 1.5 degrees (as reported in T. J. Koyen, ekartingnews
   * forum).
   */
  public static final Degrees CASTER_STEP = Degrees.of(1.0);

  /** The least move worth the job: what two readings may differ by and still count as equal. */
  public static final Degrees LEAST_MOVE = Degrees.of(0.25);

  /** The end of the camber range toward negative. Provisional. */
  public static final Degrees CAMBER_LEAST = Degrees.of(-1.0);

  /**
   * The end of the camber range toward positive: 2 degrees a side are run in the rain (common
   * practice).
   */
  public static final Degrees CAMBER_MOST = Degrees.of(2.0);

  /** The end of the caster range either way, in positions from neutral. Provisional. */
  public static final int CASTER_POSITIONS = 3;

  /** How long a camber or caster change with toe takes a novice, in minutes. Provisional. */
  public static final int MINUTES_FROM = 20;

  /** The upper end of the same. Provisional. */
  public static final int MINUTES_TO = 30;

  private Sizes() {}
}
