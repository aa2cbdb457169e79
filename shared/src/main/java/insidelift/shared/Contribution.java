package insidelift.shared;

import java.util.List;

/**
 * What one rule recorded: the only thing a rule ever does. HOW, WHY NOT, the audit and the advice
 * are all read off the list of these.
 */
public sealed interface Contribution {

  /** Which rule recorded it, on which note and on which facts. */
  Origin by();

  /**
   * Where a contribution comes from.
   *
   * @param rule the rule's id
   * @param note the note (claim) the rule stands on
   * @param premises the facts that matched; absences are in the rule index
   */
  record Origin(String rule, String note, List<Object> premises) {
    /** Takes a copy of the premises. */
    public Origin {
      premises = List.copyOf(premises);
    }
  }

  /** A fault, a stop, something to set or to look at before a lever is touched. */
  record FirstCheck(Origin by, CheckKind kind) implements Contribution {}

  /** A safety question that nobody has answered yet. */
  record Unseen(Origin by, String question) implements Contribution {}

  /** Evidence for (positive) or against (negative) a finding, in decibans. */
  record Evidence(Origin by, String finding, int weight, String observation)
      implements Contribution {}

  /** The track asks for a lever to stand where a column of the table of targets says. */
  record Target(Origin by, Lever lever, Column column) implements Contribution {}

  /** A symptom asks for a move; its strength is that of the finding. */
  record Correction(Origin by, Lever lever, Direction direction, String finding)
      implements Contribution {}

  /** The last change is to be taken back ({@code undo}) or carried on. */
  record History(Origin by, Lever lever, Direction direction, boolean undo)
      implements Contribution {}

  /** A limit forbids a move. */
  record Limit(Origin by, Lever lever, Direction direction, Scope scope) implements Contribution {}

  /** One position fewer for this driver. */
  record Fewer(Origin by, Lever lever) implements Contribution {}

  /** This claim does not move the lever past a mark. */
  record Cap(Origin by, Lever lever, Direction direction, Mark mark) implements Contribution {}

  /** Corrections by these claims take two positions. */
  record Doubles(Origin by, List<String> claims) implements Contribution {
    /** Takes a copy of the claims. */
    public Doubles {
      claims = List.copyOf(claims);
    }
  }

  /** The lever is left alone, which is an answer. */
  record Hold(Origin by, Lever lever) implements Contribution {}

  /** Nothing that was told speaks for this lever. */
  record Rest(Origin by, Lever lever) implements Contribution {}

  /** Proposals by these claims do not stand against this rule's claim. */
  record SetAside(Origin by, List<String> claims) implements Contribution {
    /** Takes a copy of the claims. */
    public SetAside {
      claims = List.copyOf(claims);
    }
  }

  /** A correction of this lever goes before the others, by this rank. */
  record Lead(Origin by, Lever lever, Rank rank) implements Contribution {}

  /** Another lever than camber and caster is worth a look; {@code lever} is the id of its note. */
  record Alternative(Origin by, String lever) implements Contribution {}

  /** A trade-off or decision to be said aloud. */
  record Decision(Origin by) implements Contribution {}

  /** A caution that goes with a move of this lever, or of any where it is null, and its place. */
  record Care(Origin by, Lever lever, int place) implements Contribution {}

  /** Steps of the job that makes the change, and their place in it. */
  record Job(Origin by, int place) implements Contribution {}
}
