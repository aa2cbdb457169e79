package insidelift.engine.consultation.advice;

import insidelift.engine.notes.Note;
import insidelift.engine.notes.NoteBook;
import java.util.List;

/** The sources of a note, as the bibliography has them. */
public final class Sources {

  private Sources() {}

  public static List<String> of(Note note, NoteBook notes) {
    return note.sources().stream()
        .map(id -> id + ": " + notes.bibliography().getOrDefault(id, id))
        .toList();
  }
}
