package insidelift.engine.audit.check;

import insidelift.engine.notes.Note;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.index.Premise;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.Verb;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What every change and every claim must come with. */
public final class Completeness {

  private final Knowledge knowledge;

  public Completeness(Knowledge knowledge) {
    this.knowledge = knowledge;
  }

  /**
   * Changes that lack what to beware of, what to feel, when to take them back, or how to do them.
   */
  public List<Remark> changes() {
    List<Remark> remarks = new ArrayList<>();
    Set<String> seen = new LinkedHashSet<>();
    for (IndexedRule rule : knowledge.rules()) {
      Note note = knowledge.notes().find(rule.note()).orElse(null);
      if (helps(rule) && note != null && seen.add(note.id())) {
        lacks(rule, note, "clause for the summary", note.because().isBlank(), remarks);
        lacks(rule, note, "reason (section Why)", note.text("Why").isBlank(), remarks);
        lacks(rule, note, "confirmation (section Feel)", note.text("Feel").isBlank(), remarks);
        lacks(rule, note, "undo (section Undo)", note.text("Undo").isBlank(), remarks);
      }
    }
    for (Lever lever : Lever.values()) {
      for (Direction way : List.of(Direction.MORE, Direction.LESS)) {
        goesWith(lever, way, Verb.CARE, "Caution", remarks);
        goesWith(lever, way, Verb.JOB, "Steps", remarks);
      }
    }
    return remarks;
  }

  /** Whether a rule can speak for a move of the front end, and not only against one. */
  private static boolean helps(IndexedRule rule) {
    return rule.acts(Verb.START).findAny().isPresent()
        || rule.acts(Verb.CLAIM)
            .filter(act -> Lever.isOne(act.word(0)))
            .anyMatch(act -> act.number(3) > 0 || !act.word(6).equals("one"));
  }

  private static void lacks(
      IndexedRule rule, Note note, String what, boolean lacking, List<Remark> remarks) {
    if (lacking) {
      remarks.add(
          Remark.of(
              rule,
              note.id() + " " + what,
              Severity.ERROR,
              "the note \"%s\" asks for a change and has no %s".formatted(note.id(), what)));
    }
  }

  /** Whether some rule gives every move that way what goes with it, whatever else is known. */
  private void goesWith(
      Lever lever, Direction way, Verb verb, String section, List<Remark> remarks) {
    boolean there =
        knowledge.rules().stream()
            .filter(rule -> rule.acts(verb).findAny().isPresent())
            .filter(
                rule -> rule.premises().stream().allMatch(premise -> about(premise, lever, way)))
            .anyMatch(
                rule ->
                    knowledge
                        .notes()
                        .find(rule.note())
                        .filter(note -> !note.text(section).isBlank())
                        .isPresent());
    if (!there) {
      remarks.add(
          Remark.of(
              lever.id() + " " + way.id() + " " + verb.id(),
              Severity.ERROR,
              "a move of %s to %s has no %s".formatted(lever.id(), way.id(), verb.id())));
    }
  }

  private static boolean about(Premise premise, Lever lever, Direction way) {
    return premise instanceof Premise.Moved moved
        && (moved.lever().isEmpty() || moved.lever().equals(lever.id()))
        && (moved.direction().isEmpty() || moved.direction().equals(way.id()));
  }

  /** Disputed claims that lack a side or what decides. */
  public List<Remark> disputes() {
    List<Remark> remarks = new ArrayList<>();
    for (Note note : notes()) {
      List<String> sides = note.section("Dispute");
      boolean both =
          sides.size() >= 3
              && sides.get(0).startsWith("One side: ")
              && sides.get(1).startsWith("Other side: ")
              && sides.get(2).startsWith("What decides: ");
      if (note.disputed() && !both) {
        remarks.add(
            Remark.ofNote(
                note.id(),
                Severity.ERROR,
                "the note \"%s\" is disputed and lacks a side or what decides"
                    .formatted(note.id())));
      } else if (!note.disputed() && !sides.isEmpty()) {
        remarks.add(
            Remark.ofNote(
                note.id(),
                Severity.ERROR,
                "the note \"%s\" tells a dispute and is not marked so".formatted(note.id())));
      }
    }
    return remarks;
  }

  /** Notes whose sources stand nowhere. */
  public List<Remark> sources() {
    List<Remark> remarks = new ArrayList<>();
    for (Note note : notes()) {
      if (note.sources().stream().allMatch(String::isBlank)) {
        remarks.add(
            Remark.ofNote(
                note.id(), Severity.ERROR, "the note \"%s\" has no source".formatted(note.id())));
      }
      for (String source : note.sources()) {
        if (!source.isBlank()
            && knowledge.notes().bibliography().getOrDefault(source, "").isBlank()) {
          remarks.add(
              Remark.ofNote(
                  note.id() + " " + source,
                  Severity.ERROR,
                  "the source \"%s\" of the note \"%s\" is not in the bibliography"
                      .formatted(source, note.id())));
        }
      }
    }
    return remarks;
  }

  /** Notes that should have been looked at again by now. */
  public List<Remark> reviews() {
    List<Remark> remarks = new ArrayList<>();
    for (Note note : notes()) {
      try {
        if (LocalDate.parse(note.review()).isBefore(knowledge.today())) {
          remarks.add(
              Remark.ofNote(
                  note.id(),
                  Severity.WARNING,
                  "the note \"%s\" was to be reviewed by %s".formatted(note.id(), note.review())));
        }
      } catch (DateTimeParseException e) {
        remarks.add(
            Remark.ofNote(
                note.id(),
                Severity.ERROR,
                "the review date of the note \"%s\" is no day".formatted(note.id())));
      }
    }
    return remarks;
  }

  private List<Note> notes() {
    return knowledge.notes().ids().stream().map(knowledge.notes()::note).toList();
  }
}
