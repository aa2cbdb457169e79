package insidelift.engine.consultation;

import com.fasterxml.jackson.databind.json.JsonMapper;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.notes.NoteBook;
import insidelift.rules.RuleBase;
import insidelift.shared.Vocabulary;
import insidelift.shared.situation.CaseReader;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The same advice by the rule engine's usual way: rule files compiled when the program starts. Only
 * the yardstick of the start-up measurement; {@code DEVELOPERS.md} says how to run it.
 */
public final class CompiledAtStartUp {

  private CompiledAtStartUp() {}

  /** Advises on a case: the folder of rule files, the case file. */
  public static void main(String[] args) throws Exception {
    RuleBase base = RuleBase.ofNewSessions(CompiledRules.of(Path.of(args[0]), 1));
    Advisor advisor = new Advisor(Vocabulary.load(), base, NoteBook.open());
    try (InputStream in = Files.newInputStream(Path.of(args[1]))) {
      System.out.println(
          JsonMapper.builder()
              .build()
              .writeValueAsString(advisor.advise(new CaseReader(advisor.vocabulary()).read(in))));
    }
  }
}
