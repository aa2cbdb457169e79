package insidelift.engine.training.card;

import insidelift.engine.notes.Note;
import insidelift.engine.notes.NoteBook;
import insidelift.shared.situation.Situation;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** The first hour of somebody who has never set up a kart: eleven short lessons. */
public final class Lessons {

  /** The section with the check on one's own kart. */
  public static final String HANDS_ON = "Hands on";

  /** The section with what is told in the question: answers, one an item. */
  public static final String ASK = "Ask";

  /** The same where the question is what comes before camber and caster. */
  public static final String ASK_FIRST = "Ask first";

  /**
   * One lesson.
   *
   * @param number its place, from 1
   * @param note its note
   * @param question its question
   */
  public record Lesson(int number, Note note, Card.Choice question) {}

  private Lessons() {}

  /** All lessons, in their order. */
  public static List<Lesson> of(NoteBook notes) {
    List<Note> lessons =
        notes.ids().stream().map(notes::note).filter(n -> n.kind().equals("lesson")).toList();
    return IntStream.range(0, lessons.size())
        .mapToObj(i -> new Lesson(i + 1, lessons.get(i), question(lessons.get(i))))
        .toList();
  }

  private static Card.Choice question(Note note) {
    boolean first = note.sections().containsKey(ASK_FIRST);
    Map<String, String> told = new LinkedHashMap<>();
    for (String item : note.section(first ? ASK_FIRST : ASK)) {
      int colon = item.indexOf(": ");
      told.put(item.substring(0, colon), item.substring(colon + 2));
    }
    return new Card.Choice(
        "lesson:" + note.id(),
        Topics.LESSONS,
        first ? Card.Kind.LEAD : Card.Kind.DECISION,
        Situation.of(told));
  }
}
