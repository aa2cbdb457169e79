package insidelift.rules.fact;

import org.kie.api.definition.rule.Rule;

/**
 * What one camp of the trade says a move does.
 *
 * @param by the line of the table
 * @param lever a lever's id
 * @param direction {@code more} (toward positive camber, more caster) or {@code less}
 * @param on what it does it to: a finding, or the front's bite at {@code entry}, {@code mid} or
 *     {@code exit}
 * @param strength 1 slightly, 2 clearly, 3 strongly; negative takes away
 * @param credence how far that camp is believed, in per cent
 * @param camp the camp of a dispute, or the word none where nobody disputes it
 * @param mirrored {@code one} where it says nothing of the other direction, {@code both} where it
 *     says the opposite of it, or the id of the note that says the opposite in its own words
 */
public record Claim(
    By by,
    String lever,
    String direction,
    String on,
    int strength,
    int credence,
    String camp,
    String mirrored)
    implements Spoken {

  private static final String ONE_SIDED = "one";
  private static final String BY_THE_SAME_NOTE = "both";

  /** A claim by a rule that speaks. */
  public Claim(
      Rule rule,
      String lever,
      String direction,
      String on,
      int strength,
      int credence,
      String camp,
      String mirrored) {
    this(By.of(rule), lever, direction, on, strength, credence, camp, mirrored);
  }

  /** Whether some camp contradicts it. */
  public boolean disputed() {
    return !camp.equals("none");
  }

  /**
   * What it says of a move that way: its strength times its credence, turned round for the other.
   */
  public int says(String way) {
    int all = strength * credence;
    if (direction.equals(way)) {
      return all;
    }
    return mirrored.equals(ONE_SIDED) ? 0 : -all;
  }

  /** What it adds to the sum of a move that way. */
  public Part part(String way, Found found) {
    int sign = found.wants() == 0 ? 1 : found.wants();
    int points = Part.hundredth(found.weight() * says(way) * sign);
    return new Part(behind(way), lever, way, found.finding(), points, disputed());
  }

  /** The line, on the note that speaks of a move that way: what to feel is another thing. */
  private By behind(String way) {
    boolean same = direction.equals(way) || mirrored.equals(BY_THE_SAME_NOTE);
    return same ? by : new By(by.rule(), mirrored);
  }
}
