package insidelift.rules.weigh;

/**
 * A lever that is moved now.
 *
 * @param lever a lever's id
 * @param direction which way
 * @param from where it stands, as in {@link Setting}
 * @param to where it is to stand; null where it moves by one position
 * @param by what names that place: {@code before}, {@code baseline}, {@code start}, {@code
 *     one-back} or {@code one}
 */
public record Now(String lever, String direction, int from, Integer to, String by) {

  /** The step as it is made. */
  public Now(Step step) {
    this(step.lever(), step.direction(), step.from(), step.to(), step.by());
  }

  /** How far it goes, in hundredths of a position; half a degree of camber counts as one. */
  public int positions() {
    int far = to == null ? 100 : Math.abs(to - from);
    return lever.equals("camber") && to != null ? far * 2 : far;
  }
}
