package insidelift.rules.weigh;

/**
 * A lever that could be moved to a known place.
 *
 * @param lever a lever's id
 * @param direction which way
 * @param from where it stands, as in {@link Setting}
 * @param to where it is to stand; null where it moves by one position
 * @param by what names that place: {@code before}, {@code baseline}, {@code start}, {@code
 *     one-back} or {@code one}
 */
public record Step(String lever, String direction, int from, Integer to, String by) {

  /** A step to a known place. */
  public static Step to(String lever, int from, int to, String by) {
    return new Step(lever, to > from ? "more" : "less", from, to, by);
  }

  /** A step by one position. */
  public static Step one(String lever, String direction, String by) {
    return new Step(lever, direction, 0, null, by);
  }
}
