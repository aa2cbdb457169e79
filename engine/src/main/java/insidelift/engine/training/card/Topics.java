package insidelift.engine.training.card;

import insidelift.engine.notes.Note;

/** The topics that progress is told by, in the order in which they are best learned. */
public final class Topics {

  static final String LESSONS = "first hour";

  private Topics() {}

  /** The topic of a note. */
  public static String of(Note note) {
    return switch (note.kind()) {
      case "check" -> "faults first";
      case "term" -> "words";
      case "lever" -> "other levers";
      case "caution", "job" -> "care and the job";
      case "decider" -> "what goes first";
      case "lesson" -> LESSONS;
      default ->
          switch (note.lever()) {
            case "both" -> "camber and caster";
            case "none" -> "other levers";
            default -> note.lever();
          };
    };
  }
}
