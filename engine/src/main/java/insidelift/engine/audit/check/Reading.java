package insidelift.engine.audit.check;

import insidelift.shared.Vocabulary.Question;
import insidelift.shared.Vocabulary.Value;
import insidelift.shared.index.Lawful;
import insidelift.shared.index.Premise;
import insidelift.shared.index.Premise.Told;
import insidelift.shared.index.RuleIndex.IndexedRule;
import java.util.ArrayList;
import java.util.List;

/** What the rules read of the answers: nothing that cannot be answered, and all that can. */
public final class Reading {

  private final Knowledge knowledge;

  public Reading(Knowledge knowledge) {
    this.knowledge = knowledge;
  }

  /** Words in rules that the vocabulary does not have. */
  public List<Remark> illegal() {
    List<Remark> remarks = new ArrayList<>();
    Lawful lawful = new Lawful(knowledge.words());
    for (IndexedRule rule : knowledge.rules()) {
      try {
        // A rule that thinks may read what was derived, which is in no vocabulary.
        if (rule.plain()) {
          lawful.check(rule);
        }
      } catch (IllegalArgumentException e) {
        remarks.add(
            Remark.of(
                rule,
                rule.id(),
                Severity.ERROR,
                "rule \"%s\": %s".formatted(rule.id(), e.getMessage())));
      }
      if (knowledge.notes().find(rule.note()).isEmpty()) {
        remarks.add(
            Remark.of(
                rule,
                rule.id() + " " + rule.note(),
                Severity.ERROR,
                "rule \"%s\" stands on the note \"%s\", which is not there"
                    .formatted(rule.id(), rule.note())));
      }
    }
    return remarks;
  }

  /**
   * Answers that no rule reads. A fault or a complaint that nobody reads is an error; a question
   * that nobody reads is asked for nothing; that a sound value is not read by name is only noted,
   * since most rules read its absence.
   */
  public List<Remark> unread() {
    List<Remark> remarks = new ArrayList<>();
    for (Question question : knowledge.words().questions()) {
      List<String> silent = new ArrayList<>();
      for (Value value : question.values()) {
        if (!read(question, value, false)) {
          if (!read(question, value, true)) {
            silent.add(value.id());
          }
          if (value.fault() || value.complaint()) {
            remarks.add(
                Remark.of(
                    question.id() + " " + value.id(),
                    Severity.ERROR,
                    "no rule reads \"%s: %s\", which is a fault or a complaint"
                        .formatted(question.id(), value.id())));
          }
        }
      }
      if (silent.size() == question.values().size()) {
        remarks.add(
            Remark.of(
                question.id(),
                Severity.WARNING,
                "no rule reads the question \"%s\"".formatted(question.id())));
      } else if (!silent.isEmpty()) {
        remarks.add(
            Remark.of(
                question.id(),
                Severity.NOTE,
                "no rule reads \"%s\" as %s by name"
                    .formatted(question.id(), String.join(", ", silent))));
      }
    }
    return remarks;
  }

  private boolean read(Question question, Value value, boolean orAny) {
    return knowledge.rules().stream()
        .flatMap(rule -> rule.premises().stream())
        .anyMatch(premise -> reads(premise, question, value, orAny));
  }

  /**
   * Whether a premise reads that value by name; where any value will do, also whether it asks only
   * if the question is answered. A premise on any complaint reads no answer in particular.
   */
  private static boolean reads(Premise premise, Question question, Value value, boolean orAny) {
    return premise instanceof Told told
        && told.questions().contains(question.id())
        && (told.values().isEmpty() ? orAny : told.values().contains(value.id()));
  }
}
