package insidelift.engine.audit.check;

import com.fasterxml.jackson.annotation.JsonInclude;
import insidelift.shared.index.RuleIndex.IndexedRule;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Something that a check has to say.
 *
 * @param id what it is about, the same from one audit to the next: rules, notes, questions
 * @param severity how much it matters
 * @param what what is the matter, in one sentence
 * @param witness the answers that show it; empty where it shows without any
 * @param file the rule file or note; empty where there is none
 * @param line the line in it, counted from 1; 0 where there is none
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Remark(
    String id, Severity severity, String what, Map<String, String> witness, String file, int line) {

  /** Takes a copy of the witness. */
  public Remark {
    witness = Collections.unmodifiableMap(new LinkedHashMap<>(witness));
  }

  static Remark of(IndexedRule rule, String id, Severity severity, String what) {
    return new Remark(id, severity, what, Map.of(), rule.file(), rule.line());
  }

  static Remark of(String id, Severity severity, String what) {
    return new Remark(id, severity, what, Map.of(), "", 0);
  }

  static Remark ofNote(String note, Severity severity, String what) {
    return new Remark(note, severity, what, Map.of(), note + ".md", 1);
  }

  Remark shownBy(Map<String, String> answers) {
    return new Remark(id, severity, what, answers, file, line);
  }
}
