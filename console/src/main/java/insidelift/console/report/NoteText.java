package insidelift.console.report;

import insidelift.engine.notes.Note;
import insidelift.engine.notes.NoteBook;
import java.util.List;

/** A note as text. */
public final class NoteText {

  private NoteText() {}

  public static void write(Note note, NoteBook notes, Text text) {
    body(note, text);
    sources(note.sources(), notes, text);
    if (note.disputed()) {
      text.blank().paragraph("Disputed: the trade does not agree on this.");
    }
  }

  /** What was computed, then the notes that explain it, and all their sources at the end. */
  public static List<String> after(List<String> computed, List<Note> notes, NoteBook book) {
    Text text = new Text(Text.WIDTH);
    computed.forEach(text::line);
    notes.forEach(note -> body(note, text));
    sources(
        notes.stream().flatMap(note -> note.sources().stream()).distinct().toList(), book, text);
    return text.lines();
  }

  private static void body(Note note, Text text) {
    text.heading(note.title());
    note.sections()
        .forEach(
            (heading, blocks) -> {
              boolean only = note.sections().size() == 1;
              if (!only && !heading.equals("Claim")) {
                text.blank().line(heading);
              }
              section(heading, blocks, text);
              if (heading.equals(Note.DRAWING)) {
                text.drawing(note.drawing());
              }
            });
  }

  private static void sources(List<String> sources, NoteBook notes, Text text) {
    text.blank().line("Sources");
    sources.forEach(
        source -> text.item("  " + source + ": ", notes.bibliography().getOrDefault(source, "")));
  }

  /** One section without its heading. */
  public static void section(String heading, List<String> blocks, Text text) {
    int number = 1;
    for (String block : blocks) {
      String mark = heading.equals("Steps") ? "%2d. ".formatted(number++) : "  ";
      text.item(mark, block);
    }
  }
}
