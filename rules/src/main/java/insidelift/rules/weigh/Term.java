package insidelift.rules.weigh;

/**
 * A finding of the vocabulary.
 *
 * @param finding its id
 * @param on what a claim must be about to bear on it: itself, or a part of the corner
 * @param wants the front bite that it wants there: 1 more, -1 less, 0 neither
 * @param question the question that asks for that part of the corner, or {@code none}
 * @param complaint whether it speaks against leaving the kart as it is
 */
public record Term(String finding, String on, int wants, String question, boolean complaint) {

  /**
   * The finding as it is found.
   *
   * @param weight the sum of its evidence
   * @param percent how bad it is, for what is felt in the corner
   */
  public Found found(int weight, int percent) {
    return new Found(finding, wants == 0 ? weight : weight * percent / 100, on, wants, complaint);
  }
}
