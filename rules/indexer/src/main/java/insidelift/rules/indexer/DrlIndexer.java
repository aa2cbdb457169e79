package insidelift.rules.indexer;

import insidelift.shared.Vocabulary;
import insidelift.shared.index.Lawful;
import insidelift.shared.index.RuleIndex;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.Constraint;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.RuleIndex.Premise;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drools.drl.ast.descr.AnnotationDescr;
import org.drools.drl.ast.descr.AttributeDescr;
import org.drools.drl.ast.descr.BaseDescr;
import org.drools.drl.ast.descr.NotDescr;
import org.drools.drl.ast.descr.PackageDescr;
import org.drools.drl.ast.descr.PatternDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.drools.drl.parser.DrlParser;
import org.drools.drl.parser.DroolsParserException;
import org.kie.internal.builder.conf.LanguageLevelOption;

/**
 * Reads rule files with the engine's own parser and writes down what each rule reads and records.
 * It accepts only plain rules: typed facts with legal values as premises, calls of the ledger with
 * literal arguments as consequences. Whatever else a rule file holds is an error of the build.
 */
final class DrlIndexer {

  private static final String WORD = "\"([^\"]*)\"";
  private static final Pattern EQUALS =
      Pattern.compile("(\\w+)\\s*==\\s*(?:" + WORD + "|(true|false))");
  private static final Pattern AT_LEAST = Pattern.compile("(\\w+)\\s*>=\\s*(-?\\d+)");
  private static final Pattern ONE_OF =
      Pattern.compile("(\\w+)\\s+in\\s*\\(\\s*(" + WORD + "(?:\\s*,\\s*" + WORD + ")*)\\s*\\)");
  private static final Pattern QUOTED = Pattern.compile(WORD);
  private static final Pattern CALL =
      Pattern.compile("ledger\\.(\\w+)\\(([^()]*)\\)\\s*;", Pattern.DOTALL);
  private static final Pattern ARGUMENT = Pattern.compile(WORD + "|(-?\\d+)");
  private static final Pattern ARGUMENTS =
      Pattern.compile("\\s*(?:(?:%1$s)\\s*(?:,\\s*(?:%1$s)\\s*)*)?".formatted(ARGUMENT));

  private final Lawful lawful;

  DrlIndexer(Vocabulary vocabulary) {
    this.lawful = new Lawful(vocabulary);
  }

  /**
   * The index of every rule file in a folder.
   *
   * @throws UnplainRuleException if a file does not parse or a rule is not plain
   */
  RuleIndex index(Path folder) throws IOException {
    List<Path> files;
    try (Stream<Path> walk = Files.list(folder)) {
      files = walk.filter(file -> file.toString().endsWith(".drl")).sorted().toList();
    }
    List<IndexedRule> rules = new ArrayList<>();
    Map<String, String> seen = new HashMap<>();
    for (Path file : files) {
      for (IndexedRule rule : index(family(file), Files.readString(file))) {
        String before = seen.putIfAbsent(rule.id(), rule.family());
        if (before != null) {
          throw new UnplainRuleException(rule, "the same name stands in " + before);
        }
        rules.add(rule);
      }
    }
    return new RuleIndex(1, rules);
  }

  /** The rules of one file's text. */
  List<IndexedRule> index(String family, String drl) {
    DrlParser parser = new DrlParser(LanguageLevelOption.DRL6);
    PackageDescr parsed;
    try {
      parsed = parser.parse(false, drl);
    } catch (DroolsParserException e) {
      throw new UnplainRuleException(family, e.getMessage());
    }
    if (parser.hasErrors()) {
      throw new UnplainRuleException(family, parser.getErrors().get(0).getMessage());
    }
    if (!parsed.getFunctions().isEmpty() || !parsed.getTypeDeclarations().isEmpty()) {
      throw new UnplainRuleException(family, "it holds more than rules");
    }
    return parsed.getRules().stream().map(rule -> index(family, rule)).toList();
  }

  private IndexedRule index(String family, RuleDescr rule) {
    AttributeDescr group = rule.getAttributes().get("agenda-group");
    List<Premise> premises = new ArrayList<>();
    IndexedRule indexed =
        new IndexedRule(
            rule.getName(),
            single(rule, "note"),
            single(rule, "mechanism"),
            family,
            rule.getLine(),
            group == null ? "MAIN" : group.getValue(),
            List.of(),
            List.of());
    if (indexed.note().isEmpty()) {
      throw new UnplainRuleException(indexed, "it names no note");
    }
    if (rule.getParentName() != null
        || !Set.of("agenda-group").containsAll(rule.getAttributes().keySet())) {
      throw new UnplainRuleException(indexed, "it has more than a note and a stage");
    }
    for (BaseDescr part : rule.getLhs().getDescrs()) {
      premises.add(premise(indexed, part));
    }
    IndexedRule whole =
        new IndexedRule(
            indexed.id(),
            indexed.note(),
            indexed.mechanism(),
            family,
            indexed.line(),
            indexed.stage(),
            premises,
            acts(indexed, String.valueOf(rule.getConsequence())));
    try {
      lawful.check(whole);
    } catch (IllegalArgumentException e) {
      throw new UnplainRuleException(whole, e.getMessage());
    }
    return whole;
  }

  private static Premise premise(IndexedRule rule, BaseDescr part) {
    if (part instanceof NotDescr not
        && not.getDescrs().size() == 1
        && not.getDescrs().get(0) instanceof PatternDescr absent) {
      Premise inner = premise(rule, absent);
      return new Premise(inner.fact(), true, inner.fields());
    }
    if (!(part instanceof PatternDescr pattern)
        || pattern.getIdentifier() != null
        || pattern.getSource() != null) {
      throw new UnplainRuleException(rule, "a premise is more than a fact or its absence");
    }
    List<Constraint> fields = new ArrayList<>();
    for (Object constraint : pattern.getConstraint().getDescrs()) {
      fields.add(constraint(rule, constraint.toString().trim()));
    }
    return new Premise(pattern.getObjectType(), false, fields);
  }

  private static Constraint constraint(IndexedRule rule, String text) {
    Matcher equals = EQUALS.matcher(text);
    if (equals.matches()) {
      String value = equals.group(2) == null ? equals.group(3) : equals.group(2);
      return new Constraint(equals.group(1), "==", List.of(value));
    }
    Matcher atLeast = AT_LEAST.matcher(text);
    if (atLeast.matches()) {
      return new Constraint(atLeast.group(1), ">=", List.of(atLeast.group(2)));
    }
    Matcher oneOf = ONE_OF.matcher(text);
    if (oneOf.matches()) {
      List<String> values =
          QUOTED.matcher(oneOf.group(2)).results().map(found -> found.group(1)).toList();
      return new Constraint(oneOf.group(1), "in", values);
    }
    throw new UnplainRuleException(rule, "a premise is not plain: " + text);
  }

  private static List<Act> acts(IndexedRule rule, String consequence) {
    List<Act> acts = new ArrayList<>();
    Matcher call = CALL.matcher(consequence);
    int end = 0;
    while (call.find()) {
      if (!consequence.substring(end, call.start()).isBlank()
          || !ARGUMENTS.matcher(call.group(2)).matches()) {
        break;
      }
      acts.add(new Act(call.group(1), arguments(call.group(2))));
      end = call.end();
    }
    if (acts.isEmpty() || !consequence.substring(end).isBlank()) {
      throw new UnplainRuleException(rule, "a consequence does more than write in the ledger");
    }
    return acts;
  }

  private static List<String> arguments(String text) {
    return ARGUMENT
        .matcher(text)
        .results()
        .map(found -> found.group(1) == null ? found.group(2) : found.group(1))
        .toList();
  }

  private static String single(RuleDescr rule, String name) {
    AnnotationDescr annotation = rule.getAnnotation(name);
    return annotation == null ? "" : unquoted(String.valueOf(annotation.getSingleValue()));
  }

  private static String unquoted(String text) {
    return text.replaceAll("^\"|\"$", "");
  }

  private static String family(Path file) {
    return file.getFileName().toString().replaceFirst("\\.drl$", "");
  }
}
