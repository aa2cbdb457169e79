package insidelift.engine.own;

import insidelift.engine.notes.Note;
import insidelift.shared.index.RuleIndex.IndexedRule;
import java.util.List;

/**
 * One claim of a shop.
 *
 * @param note the note it stands on
 * @param rules its rules, one for each thing it contributes
 * @param source where it comes from, in words
 */
record OwnClaim(Note note, List<IndexedRule> rules, String source) {
  OwnClaim {
    rules = List.copyOf(rules);
  }
}
