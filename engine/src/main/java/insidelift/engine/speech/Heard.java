package insidelift.engine.speech;

import java.util.List;

/**
 * What was understood of a sentence. Nothing of it counts until the user has confirmed it.
 *
 * @param proposed the answers it seems to give
 * @param refused parts that could mean the opposite of what their words say, with the reason
 * @param notUnderstood parts in which no known word was found
 */
public record Heard(List<Proposal> proposed, List<Refused> refused, List<String> notUnderstood) {

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
   * @param why why nothing is concluded from it
   */
  public record Refused(String words, String why) {}

  /** What a sentence says, in the words of this build. */
  public static Heard hear(String sentence) {
    return Ear.ofThisBuild().hear(sentence);
  }
}
