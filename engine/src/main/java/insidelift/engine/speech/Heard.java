package insidelift.engine.speech;

import java.util.List;
import java.util.Map;

/**
 * What was understood of a sentence. Nothing of it counts until the user has confirmed it.
 *
 * @param proposed the answers it gives
 * @param numbers what it measures, by name: {@code minutes}, {@code power-kw}, {@code age} (years),
 *     {@code camber}, {@code camber-left}, {@code camber-right}, {@code caster} (degrees), {@code
 *     front-temps} (three, in the order in which they were said)
 * @param leftOut parts nothing is concluded from, with the reason
 * @param asks what it leaves open: questions' ids, or {@code phase} for the part of the corner
 * @param tells whether it tells of the kart, the driver or the track at all, counted or not
 */
public record Heard(
    List<Proposal> proposed,
    Map<String, List<Double>> numbers,
    List<LeftOut> leftOut,
    List<String> asks,
    boolean tells) {

  /** What is asked where a behaviour is told and the part of the corner is not. */
  public static final String PHASE = "phase";

  private static final class Holder {
    private static final Grammar GRAMMAR = new Grammar();
  }

  /**
   * An answer to be confirmed.
   *
   * @param question the question's id
   * @param value the value's id
   * @param words the words it came from
   */
  public record Proposal(String question, String value, String words) {}

  /**
   * A part that is left to be asked.
   *
   * @param words the part
   * @param why why nothing is concluded from it, and what to say instead
   */
  public record LeftOut(String words, String why) {}

  /** What a sentence says, in the words of this build. */
  public static Heard hear(String sentence) {
    return new Hearing(Holder.GRAMMAR).hear(sentence);
  }
}
