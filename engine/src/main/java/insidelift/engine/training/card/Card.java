package insidelift.engine.training.card;

import insidelift.shared.situation.Situation;
import java.util.List;

/** One thing to be asked again and again until it is known. */
public sealed interface Card {

  /** Its id, by which the log of answers knows it. */
  String id();

  /** The topic it belongs to, in words. */
  String topic();

  /** What a card of choices asks. */
  enum Kind {
    /** Which finding the answers speak for. */
    FINDING,
    /** What to do now. */
    DECISION,
    /** Which other lever comes first. */
    LEAD
  }

  /**
   * A card whose answer is a part of a note; the trainee judges how well it came.
   *
   * @param id its id
   * @param topic its topic
   * @param ask what is asked, in paragraphs
   * @param note the note
   * @param section the section that answers it
   */
  record Recall(String id, String topic, List<String> ask, String note, String section)
      implements Card {}

  /**
   * A card whose answer the rules give when it is asked for.
   *
   * @param id its id
   * @param topic its topic
   * @param kind what is asked
   * @param told what is known
   */
  record Choice(String id, String topic, Kind kind, Situation told) implements Card {}

  /**
   * Something that can be answered.
   *
   * @param id its id
   * @param words its words
   */
  record Option(String id, String words) {}
}
