package insidelift.rules.fact;

/**
 * A setting that was driven before, as in {@link Setting}.
 *
 * @param camber hundredths of a degree from zero
 * @param caster hundredths of a position from the user's neutral
 * @param condition {@code dry} or {@code wet}: the track it was driven on
 */
public record Visit(int camber, int caster, String condition) implements Told {

  /** Less than half a position: the same setting. */
  private static final int SAME = 20;

  /** Whether one position that way, from where the kart stands, comes back to it. */
  public boolean next(
      String lever, String direction, int size, int camberStands, int casterStands) {
    int way = direction.equals("more") ? size : -size;
    int toCamber = camberStands + (lever.equals("camber") ? way : 0);
    int toCaster = casterStands + (lever.equals("caster") ? way : 0);
    return Math.abs(toCamber - camber) < SAME && Math.abs(toCaster - caster) < SAME;
  }
}
