package insidelift.rules.fact;

import java.util.Map;

/**
 * A change that was made on this kart and driven.
 *
 * @param age 0 the last change, 1 the one before
 * @param fresh whether it was made before the run that is told of
 * @param lever a lever's id
 * @param direction which way it went
 * @param effect {@code better}, {@code same} or {@code worse}
 * @param wanted the front bite that was wanted before it, by the part of the corner: 1 more, -1
 *     less
 * @param condition {@code dry} or {@code wet}: the track it was driven on
 * @param undo whether it took back another
 */
public record Trial(
    int age,
    boolean fresh,
    String lever,
    String direction,
    String effect,
    Map<String, Integer> wanted,
    String condition,
    boolean undo)
    implements Told {

  /** Takes a copy of what was wanted. */
  public Trial {
    wanted = Map.copyOf(wanted);
  }

  /** A run before which the same was wanted everywhere. */
  public Trial(
      int age,
      boolean fresh,
      String lever,
      String direction,
      String effect,
      int wanted,
      String condition,
      boolean undo) {
    this(age, fresh, lever, direction, effect, Map.of("entry", wanted), condition, undo);
  }

  /**
   * One vote on what the lever does on this kart: 1 as the trade believes, -1 the other way. What
   * was wanted in that part of the corner counts; where nothing was, what was wanted in all.
   */
  public int vote(String on) {
    int way = up() ? 1 : -1;
    int came = effect.equals("better") ? 1 : effect.equals("worse") ? -1 : 0;
    int here = wanted.getOrDefault(on, 0);
    int all = Integer.signum(wanted.values().stream().mapToInt(Integer::intValue).sum());
    return way * came * (here == 0 ? all : here);
  }

  /** Whether it went toward more. */
  public boolean up() {
    return direction.equals("more");
  }

  /** The way back. */
  public String back() {
    return Barred.other(direction);
  }
}
