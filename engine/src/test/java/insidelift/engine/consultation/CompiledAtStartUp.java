package insidelift.engine.consultation;

import com.fasterxml.jackson.databind.json.JsonMapper;
import insidelift.engine.notes.NoteBook;
import insidelift.rules.RuleBase;
import insidelift.shared.Vocabulary;
import insidelift.shared.situation.CaseReader;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.internal.io.ResourceFactory;

/**
 * The same advice by the rule engine's usual way: rule files compiled when the program starts. Only
 * the yardstick of the start-up measurement; {@code DEVELOPERS.md} says how to run it.
 */
public final class CompiledAtStartUp {

  private CompiledAtStartUp() {}

  /** Advises on a case: the folder of rule files, the case file. */
  public static void main(String[] args) throws Exception {
    KieServices services = KieServices.get();
    KieFileSystem files = services.newKieFileSystem();
    List<Path> rules;
    try (Stream<Path> list = Files.list(Path.of(args[0]))) {
      rules = list.filter(file -> file.toString().endsWith(".drl")).sorted().toList();
    }
    for (Path file : rules) {
      files.write(
          "src/main/resources/insidelift/rules/" + file.getFileName(),
          ResourceFactory.newFileResource(file.toFile()));
    }
    KieBuilder builder = services.newKieBuilder(files);
    builder.buildAll(ExecutableModelProject.class);
    if (builder.getResults().hasMessages(Message.Level.ERROR)) {
      throw new IllegalStateException(builder.getResults().toString());
    }
    RuleBase base =
        RuleBase.of(
            services.newKieContainer(services.getRepository().getDefaultReleaseId()).getKieBase());
    Advisor advisor = new Advisor(Vocabulary.load(), base, NoteBook.open());
    try (InputStream in = Files.newInputStream(Path.of(args[1]))) {
      System.out.println(
          JsonMapper.builder()
              .build()
              .writeValueAsString(advisor.advise(new CaseReader(advisor.vocabulary()).read(in))));
    }
  }
}
