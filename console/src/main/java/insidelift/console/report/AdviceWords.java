package insidelift.console.report;

import insidelift.console.picture.Figures;
import insidelift.shared.Degrees;
import insidelift.shared.Status;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Changeover;
import insidelift.shared.advice.Advice.Changeover.Job;
import insidelift.shared.advice.Advice.Kept;
import insidelift.shared.advice.Advice.Minutes;
import insidelift.shared.advice.Advice.OtherLever;
import insidelift.shared.advice.Advice.Suggestion;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.StringJoiner;

/** What the screen and the card say of an advice in the same words. */
public final class AdviceWords {

  /** What is said where an advice can say nothing. */
  public static final String NOTHING_KNOWN =
      "Nothing known so far asks for a change or rules one out.";

  /** What is said of a change on which the trade does not agree. */
  public static final String SPLIT = "Experts split: try it and measure.";

  /** How the notes open the step that differs from lever to lever. */
  private static final String WHICH_WAY = "For this change ";

  private AdviceWords() {}

  /** What stands over the jobs of a changeover. */
  public static final String CHANGEOVER =
      "Then the rest of the kart: both sides of a line or neither, and stop where the time ends";

  /** What it comes to. */
  public static String headline(Status status) {
    return switch (status) {
      case FIX_FIRST -> "Fix this first: no camber or caster change yet";
      case CHANGE -> "What to do now";
      case HOLD -> "Hold: leave camber and caster as they are";
      case NOT_ENOUGH -> "Not enough to go on yet";
    };
  }

  /** How sure a suggestion is, and how long the job takes. */
  public static String sureness(Suggestion suggestion) {
    String sure =
        suggestion.disputes().isEmpty() ? "How sure: " + suggestion.strength() + "." : SPLIT;
    return "%s Time: %d to %d minutes with toe."
        .formatted(sure, suggestion.minutes().from(), suggestion.minutes().to());
  }

  /** The other lever that comes first, and what comes after it. */
  public static String first(OtherLever lead, boolean moves) {
    return "%d minutes: %s%s. %s"
        .formatted(
            lead.minutes(),
            decapitalized(lead.what()),
            split(lead),
            moves ? "If that is not enough:" : "Drive, and tell again.");
  }

  /** One step of another lever, and how long it takes. */
  public static String step(OtherLever other) {
    String minutes = other.minutes() == 0 ? "" : " (%d minutes)".formatted(other.minutes());
    return "%s%s%s.".formatted(other.what(), split(other), minutes);
  }

  private static String split(OtherLever other) {
    return other.disputed() ? " (experts split: try it)" : "";
  }

  /** Another lever in full: the step, who may do it, what it does, and how. */
  public static String other(OtherLever other) {
    String who =
        switch (other.who()) {
          case "novice" -> "with care, anyone";
          case "mechanic" -> "someone who has done it before";
          default -> "an experienced tuner";
        };
    String minutes = other.minutes() == 0 ? "" : other.minutes() + " minutes, ";
    return "%s%s (%s%s).%s%s %s"
        .formatted(
            other.what(),
            split(other),
            minutes,
            who,
            list(" It helps", other.helps()),
            list(" It costs where", other.costs()),
            other.action());
  }

  private static String list(String title, List<String> findings) {
    return findings.isEmpty() ? "" : "%s: %s.".formatted(title, String.join("; ", findings));
  }

  private static String decapitalized(String text) {
    return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
  }

  /**
   * The whole of a changeover to the kart's own record in one line, with its minutes; empty where
   * there is no record, or where a lever of it stays as it is: then each move speaks for itself.
   */
  public static Optional<String> restore(Advice advice) {
    Changeover over = advice.changeover();
    Minutes front = advice.minutes();
    if (over == null
        || over.sheet() == null
        || !advice.suggestions().stream().allMatch(Suggestion::first)) {
      return Optional.empty();
    }
    List<Job> jobs = over.jobs();
    String rest =
        jobs.isEmpty() ? "" : ", the rest %d more".formatted(jobs.get(jobs.size() - 1).total());
    return Optional.of(
        "%s to this kart's own %s sheet: %s.%s"
            .formatted(
                over.condition().equals("dry") ? "Back" : "Over",
                over.condition(),
                over.sheet(),
                front == null
                    ? ""
                    : " Front end %d to %d minutes%s.".formatted(front.from(), front.to(), rest)));
  }

  /** What to write down where a kart is good and measured. */
  public static String keep(Kept kept) {
    StringJoiner settings = new StringJoiner(" and ");
    if (kept.camber() != null) {
      settings.add("camber " + Degrees.of(kept.camber().left()).signed());
    }
    if (kept.caster() != null) {
      boolean own = kept.caster().reference().equals("neutral");
      Degrees caster = Degrees.of(kept.caster().left());
      settings.add(own ? "caster " + caster.signed() + " from your neutral" : "caster " + caster);
    }
    return "Keep it as this kart's own for the %s: %s, both sides."
        .formatted(kept.condition(), settings);
  }

  /**
   * A step that says which way to turn, with how far.
   *
   * @param measured whether the user has measured what a position moves
   */
  public static String whichWay(Suggestion move, String step, boolean measured) {
    String turn = step.substring(WHICH_WAY.length());
    double positions = move.positions();
    if (positions <= 0) {
      return turn.substring(0, 1).toUpperCase(Locale.ROOT) + turn.substring(1);
    }
    return "%s%s position%s a side: %s"
        .formatted(measured ? "" : "About ", count(positions), positions == 1 ? "" : "s", turn);
  }

  /** So many positions, with no more digits than needed. */
  public static String count(double positions) {
    return Figures.fixed(positions, 1).replaceFirst("\\.0$", "");
  }

  /** Whether a step of the job is about this lever alone. */
  public static boolean saysWhichWay(String step) {
    return step.startsWith(WHICH_WAY);
  }
}
