package insidelift.console.page;

import insidelift.engine.notes.Note;
import insidelift.engine.notes.NoteBook;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The trade's notes as one page.
 *
 * @param kinds the notes by kind, both in alphabetical order
 * @param bibliography the sources, by id
 */
public record NotesPage(Map<String, List<Note>> kinds, Map<String, String> bibliography) {

  /** All notes of a book. */
  public static NotesPage of(NoteBook book) {
    return new NotesPage(
        book.ids().stream()
            .sorted()
            .map(book::note)
            .collect(Collectors.groupingBy(Note::kind, TreeMap::new, Collectors.toList())),
        book.bibliography());
  }

  /** A source in full: its id, and what the bibliography says of it. */
  public String source(String id) {
    String full = bibliography.getOrDefault(id, "");
    return full.isEmpty() ? id : id + ": " + full;
  }
}
