package insidelift.shared.advice;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import insidelift.shared.CheckKind;
import insidelift.shared.Direction;
import insidelift.shared.Kind;
import insidelift.shared.Lever;
import insidelift.shared.Status;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a consultation ends in: what to do now, why, with what care, and what else could be. The
 * record's shape is the shape of its JSON.
 *
 * @param schema the version of the shape
 * @param status what it comes to
 * @param firstChecks what comes before any lever, the blocking ones first
 * @param findings what the answers say about the front end, with the evidence
 * @param suggestions at most one entry for each lever
 * @param decisions who outranked whom, each in a sentence
 * @param alternatives other levers worth a look
 * @param changeover what else is changed over when the track goes from dry to wet, or back; left
 *     out unless it does
 * @param unexplained answers that nothing here explains
 * @param wouldHelp questions still open, the most useful first
 * @param assumed what was taken for granted because it was not told
 * @param minutes how long everything takes that is to be done now; left out if nothing is
 * @param baseline the setting to keep as this kart's own; left out if there is none
 */
@JsonInclude(value = JsonInclude.Include.NON_NULL)
public record Advice(
    int schema,
    Status status,
    List<Check> firstChecks,
    List<FoundOut> findings,
    List<Suggestion> suggestions,
    List<Decision> decisions,
    List<OtherLever> alternatives,
    Changeover changeover,
    List<Observation> unexplained,
    List<Open> wouldHelp,
    List<String> assumed,
    Minutes minutes,
    Kept baseline) {

  /** The version of the advice's shape that this build writes. */
  public static final int SCHEMA = 1;

  /** The other lever that comes first. */
  public Optional<OtherLever> lead() {
    return alternatives.stream().filter(OtherLever::leads).findFirst();
  }

  /** What to beware of with everything that is to be done now, each once. */
  public List<String> cautions() {
    return Stream.of(
            suggestions.stream().flatMap(suggestion -> suggestion.cautions().stream()),
            lead().stream().flatMap(lead -> lead.cautions().stream()),
            Stream.ofNullable(changeover).flatMap(over -> over.cautions().stream()))
        .flatMap(cautions -> cautions)
        .distinct()
        .toList();
  }

  /**
   * What is changed over beside camber and caster.
   *
   * @param condition the condition it is changed over to: {@code dry} or {@code wet}
   * @param sheet how the front end stands by the kart's own record for it; left out without one
   * @param jobs the jobs, the quickest first
   * @param steps how to go about it
   * @param cautions what to beware of
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Changeover(
      String condition, String sheet, List<Job> jobs, List<String> steps, List<String> cautions) {

    /**
     * One job.
     *
     * @param lever the lever's id
     * @param what what is done
     * @param minutes how long it takes
     * @param total how long it takes with all before it
     * @param who may do it
     */
    public record Job(String lever, String what, int minutes, int total, String who) {}
  }

  /**
   * Something to put right or to look at first.
   *
   * @param id the note's id
   * @param kind how much it stops
   * @param question the safety question it is about, where nobody has answered it
   * @param what the matter in a few words
   * @param why why it comes first
   * @param action what to do
   * @param sources the published sources, or common practice
   */
  @JsonInclude(JsonInclude.Include.NON_EMPTY)
  public record Check(
      String id,
      CheckKind kind,
      String question,
      String what,
      String why,
      String action,
      List<String> sources) {}

  /**
   * A finding with its evidence.
   *
   * @param id its word
   * @param words the finding in plain words
   * @param strength how sure, in words
   * @param weight the summed evidence in decibans
   * @param ledger the evidence that counted
   */
  public record FoundOut(
      String id, String words, String strength, int weight, List<Weighed> ledger) {}

  /**
   * One piece of evidence.
   *
   * @param rule the rule that gave it
   * @param weight its weight in decibans, negative against
   * @param because the answers it rests on
   * @param note the note it stands on
   */
  public record Weighed(String rule, int weight, List<String> because, String note) {}

  /**
   * What to do with one lever.
   *
   * @param lever the lever
   * @param direction which way
   * @param kind why
   * @param first whether it is to be done now
   * @param degrees how far, without sign
   * @param target where each side ends
   * @param positions how far in positions of the eccentric
   * @param strength how sure, in words
   * @param summary the whole in one sentence of under 140 characters
   * @param heldBy the note that keeps the lever where it is; left out if it moves
   * @param reasons why, each with note and source
   * @param disputes what the trade does not agree on
   * @param cautions what to beware of
   * @param steps the job, step by step
   * @param minutes how long the job takes
   * @param confirm what the driver should feel if it worked
   * @param undo when to take it back
   * @param effect what the change does to this kart's wheels; left out if the lever stays
   * @param washers where to turn the kart's own eccentrics; left out unless they are described
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Suggestion(
      Lever lever,
      Direction direction,
      Kind kind,
      boolean first,
      double degrees,
      Settings target,
      double positions,
      String strength,
      String summary,
      String heldBy,
      List<Reason> reasons,
      List<Dispute> disputes,
      List<String> cautions,
      List<String> steps,
      Minutes minutes,
      List<String> confirm,
      List<String> undo,
      Effect effect,
      Effect washers) {

    /** Whether the lever moves. */
    public boolean moves() {
      return direction != Direction.HOLD;
    }
  }

  /**
   * A computed picture of a change.
   *
   * @param figures the numbers, before and after
   * @param sentence the picture in one sentence, or empty
   * @param lines the numbers as a small table for a screen of 80 columns
   * @param drawing a drawing in characters, for the same screen
   */
  public record Effect(
      JsonNode figures,
      @JsonInclude(JsonInclude.Include.NON_EMPTY) String sentence,
      @JsonIgnore List<String> lines,
      @JsonIgnore List<String> drawing) {}

  /** Where each side ends, in degrees, and what zero means there. */
  public record Settings(double left, double right, String reference) {}

  /** How long the job takes, from and to, in minutes. */
  public record Minutes(int from, int to) {}

  /**
   * A setting that proved good.
   *
   * @param condition what it is good for: {@code dry} or {@code wet}
   * @param camber the camber, if measured
   * @param caster the caster, if measured
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Kept(String condition, Settings camber, Settings caster) {}

  /**
   * A link of the chain from answers to a change.
   *
   * @param note the note's id
   * @param rule the rule that spoke
   * @param because the answers and findings it rests on
   * @param text the claim
   * @param why the mechanism or experience behind it
   * @param sources the published sources, or common practice
   */
  public record Reason(
      String note,
      String rule,
      List<String> because,
      String text,
      String why,
      List<String> sources) {}

  /** What the trade does not agree on: the note, and the sides and the decider as it has them. */
  public record Dispute(String note, List<String> sides) {}

  /** Who decided: the note, what it says, and the claims that had to give way. */
  public record Decision(String note, String text, List<String> over) {}

  /**
   * Another lever than camber and caster.
   *
   * @param lever its id
   * @param direction which way
   * @param what one step that way, in words
   * @param minutes how long the step takes, about
   * @param who may do it: {@code novice}, {@code mechanic} or {@code expert}
   * @param leads whether it comes first: before the move of the front end, or where none is made
   * @param disputed whether the trade splits on what it does here
   * @param helps what it helps, all in all
   * @param costs what it costs, all in all
   * @param action how it is done
   * @param why what is behind it
   * @param cautions what to beware of
   */
  public record OtherLever(
      String lever,
      Direction direction,
      String what,
      int minutes,
      String who,
      boolean leads,
      boolean disputed,
      List<String> helps,
      List<String> costs,
      String action,
      String why,
      List<String> cautions) {

    /** The lever and which way, as one word. */
    public String move() {
      return lever + " " + direction.id();
    }
  }

  /** An answer in plain words. */
  public record Observation(String question, String value, String words) {}

  /**
   * A question that is still open.
   *
   * @param question its id
   * @param ask the question in plain words
   * @param why why it is asked, in a few words
   * @param leads whether the advice stands on it: to be told before a lever is moved
   */
  public record Open(String question, String ask, String why, boolean leads) {}
}
