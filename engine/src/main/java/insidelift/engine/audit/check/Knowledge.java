package insidelift.engine.audit.check;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.notes.NoteBook;
import insidelift.shared.Vocabulary;
import insidelift.shared.index.Premise.Told;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.Verb;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/**
 * What is audited: the words, the rules and the notes, on a day.
 *
 * @param advisor who reasons by them
 * @param today the day on which review dates are looked at
 */
public record Knowledge(Advisor advisor, LocalDate today) {

  public Vocabulary words() {
    return advisor.vocabulary();
  }

  public List<IndexedRule> rules() {
    return advisor.rules().index().rules();
  }

  public NoteBook notes() {
    return advisor.notes();
  }

  /**
   * An advisor on the same knowledge that matches the rules straight off the index: several times
   * as quick where nothing is compiled for one situation only.
   */
  public Advisor plain() {
    return advisor.with(advisor.rules().plain(), advisor.notes());
  }

  /** Whether a rule asks for a move of a lever. */
  static boolean asks(IndexedRule rule) {
    return rule.acts().stream()
        .anyMatch(act -> act.verb() == Verb.CLAIM || act.verb() == Verb.START);
  }

  /** The answers that a rule reads. */
  public static Stream<Told> told(IndexedRule rule) {
    return rule.premises().stream().filter(Told.class::isInstance).map(Told.class::cast);
  }
}
