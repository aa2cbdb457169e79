package insidelift.console.page;

import insidelift.shared.advice.Advice.Check;
import insidelift.shared.advice.Advice.Decision;
import insidelift.shared.advice.Advice.OtherLever;
import insidelift.shared.advice.Advice.Suggestion;
import java.util.List;

/**
 * What stands on a pit card. The first page says what to do, the second why. A part that the advice
 * has nothing for is empty and left out.
 *
 * @param subject whom and what it is for, in the user's own words; empty if nobody said
 * @param day the day it was made, ISO 8601
 * @param headline what the advice comes to
 * @param explained what that means where nothing is changed; else empty
 * @param blocking what has to be put right before any lever is touched
 * @param leading what is said before the moves
 * @param moves what is changed now, lever by lever
 * @param changeover the rest of a changeover, each job with the minutes it takes with those before
 * @param washers where to turn the kart's own washers, as lines of a table
 * @param steps the job that all moves share, in order
 * @param cautions what to beware of
 * @param looks what nobody has looked at yet
 * @param later what comes after the next run at the earliest
 * @param held levers that stay, and why
 * @param others other levers worth a look
 * @param effect what the change does to the wheels, in a sentence
 * @param pictures drawings and plots of it
 * @param why each lever with its reasons and disputes
 * @param decisions who outranked whom
 * @param unexplained answers that nothing here explains
 * @param wouldHelp open questions
 * @param assumed what was taken for granted
 * @param sources every source that was used
 */
public record PitCard(
    String subject,
    String day,
    String headline,
    String explained,
    List<Check> blocking,
    List<String> leading,
    List<Move> moves,
    List<String> changeover,
    List<String> washers,
    List<String> steps,
    List<String> cautions,
    List<String> looks,
    List<String> later,
    List<String> held,
    List<OtherLever> others,
    String effect,
    List<Picture> pictures,
    List<Suggestion> why,
    List<Decision> decisions,
    List<String> unexplained,
    List<String> wouldHelp,
    List<String> assumed,
    List<String> sources) {

  /**
   * A lever that is changed now.
   *
   * @param lever its name
   * @param summary the whole in one sentence
   * @param sureness how sure, and how long the job takes
   * @param reference what zero means at the gauge
   * @param sides left, then right
   * @param whichWay how to turn the eccentric
   * @param confirm what the driver should feel if it worked
   * @param undo when to take it back
   */
  public record Move(
      String lever,
      String summary,
      String sureness,
      String reference,
      List<SideSetting> sides,
      List<String> whichWay,
      List<String> confirm,
      List<String> undo) {}

  /**
   * One side of the kart.
   *
   * @param side left or right
   * @param now what it stands at, or that nobody said
   * @param target what the gauge should read afterwards
   * @param turn how many positions of the eccentric, and which way
   */
  public record SideSetting(String side, String now, String target, String turn) {}
}
