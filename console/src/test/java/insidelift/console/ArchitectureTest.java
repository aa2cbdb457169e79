package insidelift.console;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.properties.HasModifiers.Predicates.modifier;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The modules depend on each other one way: console, engine, rules, shared. */
class ArchitectureTest {

  private static final String CONSOLE = "insidelift.console..";
  private static final String ENGINE = "insidelift.engine..";
  private static final String RULES = "insidelift.rules..";
  private static final String SHARED = "insidelift.shared..";

  private static final Pattern GENERATED =
      Pattern.compile(".*/insidelift/rules/(weigh/)?P[0-9A-F]{2}/.*");

  /** Everything but tests and what the rule compiler generates: a class for each lambda. */
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new DoNotIncludeTests())
          .withImportOption(location -> !location.matches(GENERATED))
          .importPackages("insidelift");

  private static void holds(ArchRule rule) {
    rule.check(CLASSES);
  }

  @Test
  void modulesDependOneWay() {
    holds(
        layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("console")
            .definedBy(CONSOLE)
            .layer("engine")
            .definedBy(ENGINE)
            .layer("rules")
            .definedBy(RULES)
            .layer("shared")
            .definedBy(SHARED)
            .whereLayer("console")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("engine")
            .mayOnlyBeAccessedByLayers("console")
            .whereLayer("rules")
            .mayOnlyBeAccessedByLayers("engine")
            .whereLayer("shared")
            .mayOnlyBeAccessedByLayers("console", "engine", "rules"));
  }

  @Test
  void onlyTheConsoleKnowsATerminal() {
    holds(
        noClasses()
            .that()
            .resideOutsideOfPackage(CONSOLE)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.jline..", "picocli..")
            .orShould(ACCESS_STANDARD_STREAMS));
  }

  @Test
  void onlyTheRulesKnowTheRuleEngine() {
    holds(
        noClasses()
            .that()
            .resideOutsideOfPackage(RULES)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.drools..", "org.kie.."));
  }

  @Test
  void theConsoleUsesThePublicFaceOfTheEngine() {
    holds(
        noClasses()
            .that()
            .resideInAPackage(CONSOLE)
            .should()
            .dependOnClassesThat(
                resideInAPackage(ENGINE)
                    .and(
                        resideInAPackage("insidelift.engine.sizing..")
                            .or(not(modifier(JavaModifier.PUBLIC))))));
  }

  @Test
  void sharedNeedsNothingButJsonAndTheLanguage() {
    holds(
        classes()
            .that()
            .resideInAPackage(SHARED)
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(SHARED, "java..", "com.fasterxml.jackson.."));
  }

  @Test
  void nothingUsesTheNetwork() {
    holds(
        noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.net.http..", "java.rmi..", "javax.net..")
            .orShould()
            .dependOnClassesThat()
            .haveNameMatching(
                "java\\.net\\.(?!URI(Syntax.*)?$).*"
                    + "|java\\.nio\\.channels\\..*(Socket|Datagram|Network).*"));
  }

  /** Data stays data: no object is read, no class is named by a file, no text becomes code. */
  @Test
  void nothingFromOutsideIsEverRun() {
    holds(
        noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                "javax.script..",
                "javax.tools..",
                "java.lang.instrument..",
                "javax.naming..",
                "org.kie.api.builder..",
                "org.drools.compiler..",
                "gg.jte.compiler..")
            .orShould()
            .dependOnClassesThat()
            .haveNameMatching(
                "java\\.io\\.Object(In|Out)putStream"
                    + "|com\\.fasterxml\\.jackson\\.(annotation\\.JsonTypeInfo|.*jsontype\\.(?!TypeSerializer).*)"
                    + "|java\\.lang\\.ClassLoader"));
    holds(
        noClasses()
            .should()
            .callMethodWhere(
                target(nameMatching("(activate|enable)DefaultTyping.*"))
                    .or(
                        target(owner(assignableTo(Runtime.class)))
                            .and(target(nameMatching("exec|load.*"))))));
    // The compiled rules are named by a file of this build, read off its class path.
    holds(
        noClasses()
            .that()
            .doNotHaveFullyQualifiedName("insidelift.rules.CompiledRules")
            .should()
            .callMethod(Class.class, "forName", String.class));
    // Suspending at Ctrl-Z is a command of two fixed words and the process id.
    holds(
        noClasses()
            .that()
            .doNotHaveFullyQualifiedName("insidelift.console.terminal.Screen")
            .should()
            .dependOnClassesThat()
            .belongToAnyOf(ProcessBuilder.class));
  }

  @Test
  void thePartsOfTheEngineFormNoCircle() {
    holds(slices().matching("insidelift.engine.(*)..").should().beFreeOfCycles());
  }

  @Test
  void noRuleCompilerOrParserIsOnTheClassPath() {
    for (String absent :
        List.of(
            "insidelift.rules.indexer.WriteRuleIndex",
            "org.drools.drl.parser.DrlParser",
            "org.drools.compiler.kie.builder.impl.KieBuilderImpl",
            "org.drools.mvel.MVELConstraint",
            "org.mvel2.MVEL")) {
      assertThatThrownBy(() -> Class.forName(absent))
          .as(absent)
          .isInstanceOf(ClassNotFoundException.class);
    }
  }
}
