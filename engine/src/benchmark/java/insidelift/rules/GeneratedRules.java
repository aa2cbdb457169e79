package insidelift.rules;

import insidelift.shared.index.RuleIndex;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.Constraint;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.RuleIndex.Premise;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.invoke.MethodHandles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javax.tools.ToolProvider;

/**
 * The rules as plain Java, written from the rule index and compiled: what the same decisions cost
 * at the least. A yardstick of the benchmarks only; nobody could maintain rules in this form, and
 * nothing could be asked of them.
 */
public final class GeneratedRules {

  private static final String NAME = "WrittenOut";

  private GeneratedRules() {}

  /** A rule base whose rules are nested conditions. */
  public static RuleBase of(RuleIndex index) {
    try {
      Path folder = Files.createTempDirectory("generated");
      Path source = folder.resolve(NAME + ".java");
      Files.writeString(source, source(index));
      int failed =
          ToolProvider.getSystemJavaCompiler()
              .run(
                  null,
                  null,
                  null,
                  "-nowarn",
                  "-cp",
                  System.getProperty("java.class.path"),
                  "-d",
                  folder.toString(),
                  source.toString());
      if (failed != 0) {
        throw new IllegalStateException("the generated rules do not compile: " + source);
      }
      byte[] compiled = Files.readAllBytes(folder.resolve("insidelift/rules/" + NAME + ".class"));
      Matching matching =
          (Matching)
              MethodHandles.lookup().defineClass(compiled).getDeclaredConstructor().newInstance();
      return RuleBase.of(index, matching);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String source(RuleIndex index) {
    StringBuilder source = new StringBuilder();
    source.append(
        """
        package insidelift.rules;
        import insidelift.shared.*;
        import java.util.*;
        final class %s implements Matching {
          public void run(Reasoning.Stage stage, List<Object> facts, Ledger ledger) {
            List<Answer> answers = new ArrayList<>();
            List<Finding> findings = new ArrayList<>();
            List<Barred> barreds = new ArrayList<>();
            List<Proposal> proposals = new ArrayList<>();
            List<Move> moves = new ArrayList<>();
            for (Object fact : facts) {
              if (fact instanceof Answer it) answers.add(it);
              else if (fact instanceof Finding it) findings.add(it);
              else if (fact instanceof Barred it) barreds.add(it);
              else if (fact instanceof Proposal it) proposals.add(it);
              else if (fact instanceof Move it) moves.add(it);
            }
            Map<String, Answer> known = new HashMap<>();
            for (Answer answer : answers) known.put(answer.question(), answer);
        """
            .formatted(NAME));
    for (Reasoning.Stage stage : Reasoning.Stage.values()) {
      source.append("if (stage == Reasoning.Stage.%s) {\n".formatted(stage));
      for (int i = 0; i < index.rules().size(); i++) {
        if (index.rules().get(i).stage().equals(stage.group())) {
          source.append(
              "r%d(answers, findings, barreds, proposals, moves, known, ledger);\n".formatted(i));
        }
      }
      source.append("}\n");
    }
    source.append("}\n");
    for (int i = 0; i < index.rules().size(); i++) {
      source.append(method(i, index.rules().get(i)));
    }
    return source.append("}\n").toString();
  }

  private static String method(int number, IndexedRule rule) {
    StringBuilder open = new StringBuilder();
    StringBuilder close = new StringBuilder();
    StringBuilder matched = new StringBuilder();
    for (int i = 0; i < rule.premises().size(); i++) {
      Premise premise = rule.premises().get(i);
      String it = "p" + i;
      if (premise.absent()) {
        open.append("boolean n%d = true;\n".formatted(i));
        open.append(each(premise, it)).append("{ n%d = false; }}\n".formatted(i));
        open.append("if (n%d) {\n".formatted(i));
        close.append("}");
      } else {
        open.append(each(premise, it)).append("{\n");
        close.append("}}");
        matched.append(matched.isEmpty() ? "" : ", ").append(it);
      }
    }
    StringBuilder acts = new StringBuilder();
    for (Act act : rule.acts()) {
      acts.append("ledger.%s(%s);\n".formatted(act.verb(), words(act)));
    }
    return """
        private static void r%d(List<Answer> answers, List<Finding> findings, List<Barred> barreds,
            List<Proposal> proposals, List<Move> moves, Map<String, Answer> known, Ledger ledger) {
        %s ledger.speaks("%s", "%s", List.of(%s));
        %s %s
        }
        """
        .formatted(number, open, rule.id(), rule.note(), matched, acts, close);
  }

  /** A loop over the facts a premise may read, or a look at the one answer it reads, and a test. */
  private static String each(Premise premise, String it) {
    List<String> question = premise.field("question").map(Constraint::values).orElse(List.of());
    String type = premise.fact();
    String test =
        premise.fields().stream()
            .filter(field -> question.size() != 1 || !field.field().equals("question"))
            .map(field -> test(it, field))
            .collect(Collectors.joining(" && "));
    String condition = test.isEmpty() ? "true" : test;
    if (question.size() == 1) {
      return "Answer %s = known.get(\"%s\"); if (%s != null) { if (%s) "
          .formatted(it, question.get(0), it, condition);
    }
    return "for (%s %s : %ss) { if (%s) ".formatted(type, it, type.toLowerCase(Locale.ROOT), condition);
  }

  private static String test(String it, Constraint constraint) {
    String field = it + "." + constraint.field() + "()";
    if (constraint.operator().equals(">=")) {
      return field + " >= " + constraint.values().get(0);
    }
    if (constraint.field().equals("complaint")) {
      return field + " == " + constraint.values().get(0);
    }
    return constraint.values().stream()
        .map(value -> field + ".equals(\"" + value + "\")")
        .collect(Collectors.joining(" || ", "(", ")"));
  }

  private static String words(Act act) {
    return act.words().stream()
        .map(word -> numeric(act) && word.matches("-?\\d+") ? word : "\"" + word + "\"")
        .collect(Collectors.joining(", "));
  }

  private static boolean numeric(Act act) {
    return List.of("evidence", "caution", "job").contains(act.verb());
  }
}
