package insidelift.rules.fact;

/**
 * A lever that could be moved, or is.
 *
 * @param lever a lever's id
 * @param direction which way
 * @param from where it stands, as in {@link Setting}
 * @param to where it is to stand; null where it moves by one position
 * @param by what names that place: {@code before}, {@code baseline}, {@code start}, {@code
 *     one-back} or {@code one}
 * @param now whether it is moved now
 */
public record Step(String lever, String direction, int from, Integer to, String by, boolean now) {

  /** A step to a known place. */
  public static Step to(String lever, int from, int to, String by) {
    return new Step(lever, to > from ? "more" : "less", from, to, by, false);
  }

  /** A step by one position. */
  public static Step one(String lever, String direction, String by) {
    return new Step(lever, direction, 0, null, by, false);
  }

  /** The same step, made now. */
  public Step made() {
    return new Step(lever, direction, from, to, by, true);
  }

  /** How far it goes, in hundredths of a position; half a degree of camber counts as one. */
  public int positions() {
    int far = to == null ? 100 : Math.abs(to - from);
    return lever.equals("camber") && to != null ? far * 2 : far;
  }
}
