package insidelift.rules.fact;

import insidelift.rules.fact.Spoken.By;
import insidelift.rules.fact.Spoken.Option;

/**
 * One term of the sum of a move.
 *
 * @param by the claim's line, or {@code minutes}, {@code good}, {@code own-record}
 * @param lever a lever's id
 * @param direction which way
 * @param finding what it is about
 * @param points what it adds, or takes off where negative
 * @param disputed whether a camp of the trade contradicts it
 */
public record Part(
    By by, String lever, String direction, String finding, int points, boolean disputed) {

  private static final By GOOD = new By("good", "all-well");
  private static final By RECORDED = new By("own-record", "last-better");
  private static final By MINUTES = new By("minutes", "limit-time");

  /** How strongly the kart's own record speaks, as a claim's strength times its credence. */
  private static final int RECORD = 3 * 80;

  /** How many runs of it count at most. */
  private static final int RUNS = 3;

  /** What it costs that a move changes a part of the corner that is good. */
  public static Part changing(String lever, String direction, Found good, int net) {
    int cost = hundredth(good.weight() * Math.abs(net));
    return new Part(GOOD, lever, direction, good.finding(), -cost, false);
  }

  /** What a job takes: a quarter of a point a minute. */
  public static Part taking(Option move) {
    return new Part(MINUTES, move.lever(), move.direction(), "minutes", -move.minutes() / 4, false);
  }

  /** What the kart's own record says of a move. */
  public static Part recorded(Option move, Found found, int votes) {
    int counted = Math.max(-RUNS, Math.min(RUNS, votes));
    int says = RECORD * counted * found.wants() * move.sign();
    return new Part(
        RECORDED,
        move.lever(),
        move.direction(),
        found.finding(),
        hundredth(found.weight() * says),
        false);
  }

  /** A hundredth, rounded away from nothing so that a turned sign gives the same size. */
  static int hundredth(int number) {
    return Integer.signum(number) * ((Math.abs(number) + 50) / 100);
  }
}
