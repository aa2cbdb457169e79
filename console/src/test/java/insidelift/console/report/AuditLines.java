package insidelift.console.report;

import insidelift.engine.audit.CaseLibrary;
import insidelift.engine.audit.CaseLibrary.Disagreement;
import java.util.List;

/** What {@code audit --cases} prints, for tests of other packages. */
public final class AuditLines {

  private AuditLines() {}

  /** The lines on cases with which the rules do not agree. */
  public static List<String> of(CaseLibrary library, List<Disagreement> disagreements) {
    return AuditText.lines(library, disagreements);
  }
}
