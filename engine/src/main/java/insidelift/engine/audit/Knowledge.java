package insidelift.engine.audit;

import insidelift.engine.consultation.Advisor;
import insidelift.engine.notes.NoteBook;
import insidelift.rules.RuleBase;
import insidelift.shared.Vocabulary;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.RuleIndex.Premise;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What is audited: the words, the rules and the notes, on a day.
 *
 * @param advisor who reasons by them
 * @param today the day on which review dates are looked at
 */
record Knowledge(Advisor advisor, LocalDate today) {

  /** The acts that ask for a move of a lever. */
  static final Set<String> ASKING = Set.of("target", "correction", "undo", "carryOn");

  Vocabulary words() {
    return advisor.vocabulary();
  }

  List<IndexedRule> rules() {
    return advisor.rules().index().rules();
  }

  NoteBook notes() {
    return advisor.notes();
  }

  /**
   * An advisor on the same knowledge that matches the rules straight off the index: several times
   * as quick where nothing is compiled for one situation only.
   */
  Advisor plain() {
    return advisor.with(RuleBase.plain(advisor.rules().index()), advisor.notes());
  }

  static boolean asks(IndexedRule rule) {
    return acts(rule, ASKING).findAny().isPresent();
  }

  static Stream<Act> acts(IndexedRule rule, Set<String> verbs) {
    return rule.acts().stream().filter(act -> verbs.contains(act.verb()));
  }

  static List<String> values(Premise premise, String field) {
    return premise.field(field).map(constraint -> constraint.values()).orElse(List.of());
  }

  /** The number that a premise asks at least; the least there is where it asks none. */
  static int least(Premise premise) {
    return premise
        .field("strength")
        .map(strength -> Integer.parseInt(strength.values().get(0)))
        .orElse(Integer.MIN_VALUE);
  }
}
