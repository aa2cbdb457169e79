package insidelift.engine.consultation;

import insidelift.engine.audit.CaseLibrary;
import insidelift.engine.audit.CaseLibrary.Entry;
import insidelift.shared.Vocabulary;
import insidelift.shared.situation.CaseProblem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;

/** Where the cases of this project stand. */
final class CaseFiles {

  static final Path FAMILIES = Path.of("..", "rules", "cases", "families");
  static final Path WHOLE = Path.of("..", "rules", "cases", "whole");

  private CaseFiles() {}

  static List<Entry> read(Path folder) {
    try {
      return CaseLibrary.read(folder, Vocabulary.load()).entries();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (CaseProblem e) {
      throw new IllegalStateException(e);
    }
  }
}
