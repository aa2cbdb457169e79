package insidelift.engine.consultation;

import java.util.ArrayList;
import java.util.List;

/**
 * A rule in words, read off the index.
 *
 * @param id its id
 * @param when its premises
 * @param then what it records
 * @param note its note's id
 * @param claim what the note claims
 * @param disputed whether the trade disagrees about it
 * @param sources the note's sources
 */
public record RuleInWords(
    String id,
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
    lines.add("When");
    when.forEach(premise -> Said.wrap(premise, "  - ", lines));
    lines.add("then");
    then.forEach(act -> Said.wrap(act, "  - ", lines));
    Said.wrap("Note " + note + (disputed ? " (disputed): " : ": ") + claim, "", lines);
    sources.forEach(source -> Said.wrap("source " + source, "  ", lines));
    return lines;
  }
}
