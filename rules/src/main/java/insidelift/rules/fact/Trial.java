package insidelift.rules.fact;

/**
 * A change that was made on this kart and driven.
 *
 * @param age 0 the last change, 1 the one before
 * @param fresh whether it was made before the run that is told of
 * @param lever a lever's id
 * @param direction which way it went
 * @param effect {@code better}, {@code same} or {@code worse}
 * @param wanted the front bite that was wanted when it was made: 1 more, -1 less, 0 not known
 * @param condition {@code dry} or {@code wet}: the track it was driven on
 * @param undo whether it took back another
 */
public record Trial(
    int age,
    boolean fresh,
    String lever,
    String direction,
    String effect,
    int wanted,
    String condition,
    boolean undo)
    implements Told {

  /** One vote on what the lever does on this kart: 1 as the trade believes, -1 the other way. */
  public int vote() {
    int way = up() ? 1 : -1;
    int came = effect.equals("better") ? 1 : effect.equals("worse") ? -1 : 0;
    return way * came * wanted;
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
