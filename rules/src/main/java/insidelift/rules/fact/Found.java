package insidelift.rules.fact;

/**
 * What the answers come to on one finding.
 *
 * @param finding its id
 * @param weight the sum of what speaks for it, a quarter of a deciban each; above zero
 * @param on what a claim must be about to bear on it: itself, or a part of the corner
 * @param wants the front bite that it wants there: 1 more, -1 less, 0 neither
 * @param complaint whether it speaks against leaving the kart as it is
 */
public record Found(String finding, int weight, String on, int wants, boolean complaint) {

  /** What a part of the corner that nobody spoke of is worth, in case it is good. Provisional. */
  private static final int OPEN = 2;

  /** A part of the corner that nobody spoke of. */
  public static Found open(String on) {
    return new Found(on + "-open", OPEN, on, 0, false);
  }
}
