package insidelift.rules;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.drools.core.impl.RuleBaseFactory;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;

/**
 * The rules as the build compiled them, entered directly: without a rule compiler and without XML,
 * which halves the start.
 */
public final class CompiledRules {

  private static final String MODELS = "/META-INF/kie/insidelift/insidelift-rules/drools-model";

  private CompiledRules() {}

  /**
   * The rules of one package.
   *
   * @throws IllegalStateException if the build holds none: an engine without rules reports no error
   *     by itself
   */
  public static KieBase of(String rulePackage) {
    KieBase base =
        KieBaseBuilder.createKieBaseFromModel(
            models(rulePackage), RuleBaseFactory.newKnowledgeBaseConfiguration());
    if (base.getKiePackages().stream().allMatch(known -> known.getRules().isEmpty())) {
      throw new IllegalStateException("this build holds no compiled rules: build it again");
    }
    return base;
  }

  private static List<Model> models(String rulePackage) {
    List<Model> models = new ArrayList<>();
    try (InputStream in = CompiledRules.class.getResourceAsStream(MODELS)) {
      if (in == null) {
        return models;
      }
      BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        // The file opens with a line "Drools-Model-Version:…"; every other line names a class.
        String name = line.trim();
        if (name.startsWith(rulePackage + ".") && name.indexOf('.', rulePackage.length() + 1) < 0) {
          models.add(Class.forName(name).asSubclass(Model.class).getConstructor().newInstance());
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the compiled rules cannot be read", e);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("the compiled rules cannot be entered", e);
    }
    return models;
  }
}
