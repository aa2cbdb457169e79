package insidelift.engine.consultation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;

/** The rule files compiled by the running program, which is the rule engine's usual way. */
final class CompiledRules {

  private CompiledRules() {}

  /**
   * Compiles the rules of a folder.
   *
   * @param times how often each rule is there, every time under another name
   */
  static KieBase of(Path folder, int times) throws IOException {
    KieServices services = KieServices.get();
    KieFileSystem files = services.newKieFileSystem();
    for (Path file : rules(folder)) {
      String text = Files.readString(file);
      for (int i = 0; i < times; i++) {
        files.write(
            "src/main/resources/insidelift/rules/copy" + i + "-" + file.getFileName(),
            i == 0 ? text : text.replaceAll("(?m)^rule \"", "rule \"copy" + i + "."));
      }
    }
    KieBuilder builder = services.newKieBuilder(files);
    builder.buildAll(ExecutableModelProject.class);
    if (builder.getResults().hasMessages(Message.Level.ERROR)) {
      throw new IllegalStateException(builder.getResults().toString());
    }
    return services.newKieContainer(services.getRepository().getDefaultReleaseId()).getKieBase();
  }

  private static List<Path> rules(Path folder) throws IOException {
    try (Stream<Path> list = Files.list(folder)) {
      return list.filter(file -> file.toString().endsWith(".drl")).sorted().toList();
    }
  }
}
