package insidelift.engine.audit;

/**
 * How far the audit goes.
 *
 * @param slice the most situations of one slice that are visited one by one
 * @param strength of how many questions every combination is visited
 * @param random how many situations are drawn at random
 * @param every one situation in so many is compared with its like
 */
public record Effort(int slice, int strength, int random, int every) {

  /** Seconds: what the ordinary build and a knowledge editor wait for. */
  public static final Effort QUICK = new Effort(700, 2, 200, 400);

  /** Half a minute: what the ordinary build runs. */
  public static final Effort ORDINARY = new Effort(10_000, 3, 500, 400);

  /** Many minutes: before a release. */
  public static final Effort THOROUGH = new Effort(300_000, 4, 100_000, 500);
}
