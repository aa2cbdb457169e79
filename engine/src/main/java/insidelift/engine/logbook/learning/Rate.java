package insidelift.engine.logbook.learning;

import insidelift.engine.logbook.entry.Plain;
import insidelift.shared.Direction;
import insidelift.shared.Lever;

/**
 * How often a piece of advice worked for a kart at a track, judged with care while it was seldom
 * tried: the mean of a Beta distribution that starts as if the advice had worked twice and failed
 * twice, (worked + 2) / (tried + 4). These are the two successes and two failures of Agresti &amp;
 * Coull (1998, The American Statistician 52:119); that a Beta prior is updated by counting is
 * textbook (Gelman et al., Bayesian Data Analysis, chapter 2). The start at one half says that
 * nothing is known; its weight of four runs is a judgement.
 *
 * @param claim the id of the note that the advice stands on
 * @param lever the lever
 * @param direction which way
 * @param worked how often the laps were quicker with it
 * @param tried how often the clock could tell
 * @param untold how often it was taken and the clock could not tell
 */
public record Rate(
    String claim, Lever lever, Direction direction, int worked, int tried, int untold) {

  private static final double PRIOR_WORKED = 2;
  private static final double PRIOR_FAILED = 2;

  /** The shrunken rate, between 0 and 1; one half where nothing is known. */
  public double value() {
    return (worked + PRIOR_WORKED) / (tried + PRIOR_WORKED + PRIOR_FAILED);
  }

  /** What it adds to an ordering: above 0 for what worked more often than not, within ±0.5. */
  public double weight() {
    return value() - 0.5;
  }

  /** The same in decibans, as all evidence is: 10 log10 of the odds of having worked. */
  public double decibans() {
    return 10 * Math.log10(value() / (1 - value()));
  }

  Rate with(DrivenChange.Effect effect) {
    return switch (effect) {
      case BETTER -> new Rate(claim, lever, direction, worked + 1, tried + 1, untold);
      case SAME, WORSE -> new Rate(claim, lever, direction, worked, tried + 1, untold);
      case UNTOLD -> new Rate(claim, lever, direction, worked, tried, untold + 1);
    };
  }

  public String line() {
    return "%s %s (%s): worked %d of %d times, counted as %s%s"
        .formatted(
            lever.id(),
            direction.id(),
            Plain.line(claim),
            worked,
            tried,
            Plain.fixed(value(), 2),
            untold == 0 ? "" : "; " + untold + " more could not be told");
  }
}
