package insidelift.engine.consultation.explanation;

import java.util.ArrayList;
import java.util.List;

/**
 * A rule in words, read off the index.
 *
 * @param id its id
 * @param says what it does, in a sentence; empty for a plain rule
 * @param when its premises; the answers it reads for a rule that thinks
 * @param then what it says; nothing for a rule that thinks
 * @param note its note's id
 * @param claim what the note claims
 * @param disputed whether the trade disagrees about it
 * @param sources the note's sources
 */
public record RuleInWords(
    String id,
    String says,
    List<String> when,
    List<String> then,
    String note,
    String claim,
    boolean disputed,
    List<String> sources) {

  /** The rule as lines of at most 80 columns. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add("Rule " + id);
    if (!says.isEmpty()) {
      Said.wrap(says, "", lines);
    }
    if (!when.isEmpty()) {
      lines.add(says.isEmpty() ? "When" : "It reads");
      when.forEach(premise -> Said.wrap(premise, "  - ", lines));
    }
    if (!then.isEmpty()) {
      lines.add(when.isEmpty() ? "Always" : "then");
      then.forEach(act -> Said.wrap(act, "  - ", lines));
    }
    Said.wrap("Note " + note + (disputed ? " (disputed): " : ": ") + claim, "", lines);
    sources.forEach(source -> Said.wrap("source " + source, "  ", lines));
    return lines;
  }
}
