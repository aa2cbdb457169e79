package insidelift.rules.fact;

/** What is known beside the answers. */
public sealed interface Told
    permits Setting, End, Trial, Visit, Told.AtEnd, Told.HeavyAt, Told.Minutes {

  /**
   * A caster at which the steering was too heavy for the driver.
   *
   * @param caster as in {@link Setting}
   */
  record HeavyAt(int caster) implements Told {}

  /** A lever beside camber and caster that can go no further that way on this kart. */
  record AtEnd(String lever, String direction) implements Told {}

  /** The minutes left to the next run. */
  record Minutes(int left) implements Told {}

  /** A table of words that is entered at the beginning of every weighing. */
  record Begin(String of) {}
}
