package insidelift.rules.indexer;

import insidelift.shared.Named;
import insidelift.shared.Vocabulary;
import insidelift.shared.index.Lawful;
import insidelift.shared.index.Premise;
import insidelift.shared.index.RuleIndex;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.Verb;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drools.decisiontable.InputType;
import org.drools.decisiontable.SpreadsheetCompiler;
import org.drools.drl.ast.descr.AnnotationDescr;
import org.drools.drl.ast.descr.BaseDescr;
import org.drools.drl.ast.descr.ConditionalElementDescr;
import org.drools.drl.ast.descr.ExistsDescr;
import org.drools.drl.ast.descr.NotDescr;
import org.drools.drl.ast.descr.PackageDescr;
import org.drools.drl.ast.descr.PatternDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.drools.drl.parser.DrlParser;
import org.drools.drl.parser.DroolsParserException;
import org.kie.internal.builder.conf.LanguageLevelOption;

/**
 * Reads rule files and decision tables with the engine's own parsers and writes down what each rule
 * reads and says. A rule is plain: answers with legal values as premises, facts in literal words as
 * consequences. One that is more says so in a sentence ({@code @says}), and only that is written
 * down. Whatever else a rule file holds is an error of the build.
 */
final class DrlIndexer {

  private static final String TABLE = ".drl.csv";
  private static final String WORD = "\"([^\"]*)\"";
  private static final Pattern EQUALS =
      Pattern.compile("(\\w+)\\s*==\\s*(?:" + WORD + "|(true|false))");
  private static final Pattern ONE_OF =
      Pattern.compile("(\\w+)\\s+in\\s*\\(\\s*(" + WORD + "(?:\\s*,\\s*" + WORD + ")*)\\s*\\)");
  private static final Pattern QUOTED = Pattern.compile(WORD);
  private static final String ARGUMENT = WORD + "|(-?\\d+|true|false)";
  private static final Pattern ARGUMENTS = Pattern.compile(ARGUMENT);
  private static final Pattern INSERT =
      Pattern.compile(
          "\\s*insert\\(\\s*new (\\w+)\\(\\s*drools\\.getRule\\(\\)((?:\\s*,\\s*(?:%s))*)\\s*\\)\\s*\\);"
              .formatted(ARGUMENT));

  private final Lawful lawful;

  DrlIndexer(Vocabulary vocabulary) {
    this.lawful = new Lawful(vocabulary);
  }

  /**
   * The index of every rule file and table in a folder.
   *
   * @throws UnplainRuleException if a file does not parse, or a rule is neither plain nor says what
   *     it does
   */
  RuleIndex index(Path folder) throws IOException {
    List<Path> files;
    try (Stream<Path> walk = Files.list(folder)) {
      files = walk.filter(file -> file.toString().matches(".*\\.drl(\\.csv)?")).sorted().toList();
    }
    List<IndexedRule> rules = new ArrayList<>();
    Map<String, String> seen = new HashMap<>();
    for (Path file : files) {
      for (IndexedRule rule : rules(file)) {
        String before = seen.putIfAbsent(rule.id(), rule.family());
        if (before != null) {
          throw new UnplainRuleException(rule, "the same name stands in " + before);
        }
        rules.add(rule);
      }
    }
    return new RuleIndex(1, rules);
  }

  private List<IndexedRule> rules(Path file) throws IOException {
    String name = file.getFileName().toString();
    if (!name.endsWith(TABLE)) {
      return index(name.replaceFirst("\\.drl$", ""), Files.readString(file), Map.of());
    }
    Map<String, Integer> lines = new HashMap<>();
    List<String> rows = Files.readAllLines(file);
    for (int i = 0; i < rows.size(); i++) {
      Matcher first = QUOTED.matcher(rows.get(i));
      if (first.lookingAt()) {
        lines.putIfAbsent(first.group(1), i + 1);
      }
    }
    try (InputStream table = Files.newInputStream(file)) {
      String drl = new SpreadsheetCompiler().compile(table, InputType.CSV);
      return index(name, drl, lines);
    }
  }

  /** The rules of one file's text. */
  List<IndexedRule> index(String family, String drl) {
    return index(family, drl, Map.of());
  }

  /**
   * The same.
   *
   * @param lines where each line of a table stands, by its name; empty for a rule file
   */
  private List<IndexedRule> index(String family, String drl, Map<String, Integer> lines) {
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
    return parsed.getRules().stream()
        .map(rule -> index(family, rule, lines.getOrDefault(rule.getName(), rule.getLine())))
        .toList();
  }

  private IndexedRule index(String family, RuleDescr rule, int line) {
    IndexedRule indexed =
        new IndexedRule(
            rule.getName(),
            single(rule, "note"),
            single(rule, "mechanism"),
            family,
            line,
            single(rule, "says"),
            List.of(),
            List.of());
    if (indexed.note().isEmpty()) {
      throw new UnplainRuleException(indexed, "it names no note");
    }
    if (!indexed.plain()) {
      List<Premise> read = new ArrayList<>();
      reads(rule.getLhs(), read);
      return with(indexed, read, List.of());
    }
    if (rule.getParentName() != null || rule.getAttributes().containsKey("salience")) {
      throw new UnplainRuleException(indexed, "it has more than a note and a group");
    }
    List<Premise> premises = new ArrayList<>();
    for (BaseDescr part : rule.getLhs().getDescrs()) {
      if (!(part instanceof PatternDescr table && table.getObjectType().equals("Begin"))) {
        premises.add(premise(indexed, part));
      }
    }
    IndexedRule whole =
        with(indexed, premises, acts(indexed, String.valueOf(rule.getConsequence())));
    try {
      lawful.check(whole);
    } catch (IllegalArgumentException e) {
      throw new UnplainRuleException(whole, e.getMessage());
    }
    return whole;
  }

  private static IndexedRule with(IndexedRule rule, List<Premise> premises, List<Act> acts) {
    return new IndexedRule(
        rule.id(),
        rule.note(),
        rule.mechanism(),
        rule.family(),
        rule.line(),
        rule.says(),
        premises,
        acts);
  }

  /** The answers that a rule that thinks reads by name, wherever in its premises. */
  private static void reads(Object part, List<Premise> into) {
    if (part instanceof PatternDescr pattern && pattern.getObjectType().equals("Answer")) {
      Map<String, List<String>> fields = new HashMap<>();
      for (Object constraint : pattern.getConstraint().getDescrs()) {
        Matcher equals = EQUALS.matcher(constraint.toString().trim());
        Matcher oneOf = ONE_OF.matcher(constraint.toString().trim());
        if (equals.matches() || oneOf.matches()) {
          Matcher found = equals.matches() ? equals : oneOf;
          fields.put(
              found.group(1),
              QUOTED.matcher(found.group()).results().map(word -> word.group(1)).toList());
        }
      }
      if (fields.containsKey("question")) {
        into.add(
            new Premise.Told(
                fields.get("question"), fields.getOrDefault("value", List.of()), false));
      }
    } else if (part instanceof ConditionalElementDescr group) {
      group.getDescrs().forEach(inner -> reads(inner, into));
    }
  }

  private static Premise premise(IndexedRule rule, BaseDescr part) {
    if (part instanceof ExistsDescr exists
        && exists.getDescrs().size() == 1
        && exists.getDescrs().get(0) instanceof PatternDescr there) {
      return premise(rule, there);
    }
    if (part instanceof NotDescr not
        && not.getDescrs().size() == 1
        && not.getDescrs().get(0) instanceof PatternDescr absent
        && premise(rule, absent) instanceof Premise.Told told) {
      return new Premise.Told(told.questions(), told.values(), true);
    }
    if (!(part instanceof PatternDescr pattern)
        || pattern.getIdentifier() != null
        || pattern.getSource() != null) {
      throw new UnplainRuleException(rule, "a premise is more than a fact or its absence");
    }
    Map<String, List<String>> fields = new HashMap<>();
    for (Object constraint : pattern.getConstraint().getDescrs()) {
      // A cell of a table may hold several constraints, which the parser keeps apart.
      constraint(rule, constraint.toString().trim(), fields);
    }
    return premise(rule, pattern.getObjectType(), fields);
  }

  private static Premise premise(IndexedRule rule, String fact, Map<String, List<String>> fields) {
    List<String> names = fields.keySet().stream().sorted().toList();
    if (fact.equals("Answer") && names.equals(List.of("complaint"))) {
      return new Premise.Complained();
    }
    if (fact.equals("Answer")
        && (names.equals(List.of("question")) || names.equals(List.of("question", "value")))) {
      return new Premise.Told(
          fields.get("question"), fields.getOrDefault("value", List.of()), false);
    }
    if (fact.equals("Step") && List.of("true").equals(fields.get("now"))) {
      return new Premise.Moved(
          fields.getOrDefault("lever", List.of("")).get(0),
          fields.getOrDefault("direction", List.of("")).get(0));
    }
    throw new UnplainRuleException(rule, "no premise is " + fact + " by " + names);
  }

  private static void constraint(IndexedRule rule, String text, Map<String, List<String>> fields) {
    Matcher equals = EQUALS.matcher(text);
    Matcher oneOf = ONE_OF.matcher(text);
    if (equals.matches()) {
      fields.put(
          equals.group(1), List.of(equals.group(2) == null ? equals.group(3) : equals.group(2)));
    } else if (oneOf.matches()) {
      fields.put(
          oneOf.group(1),
          QUOTED.matcher(oneOf.group(2)).results().map(found -> found.group(1)).toList());
    } else {
      throw new UnplainRuleException(rule, "a premise is not plain: " + text);
    }
  }

  private static List<Act> acts(IndexedRule rule, String consequence) {
    List<Act> acts = new ArrayList<>();
    Matcher insert = INSERT.matcher(consequence);
    int end = 0;
    while (insert.find() && consequence.substring(end, insert.start()).isBlank()) {
      acts.add(new Act(verb(rule, insert.group(1)), arguments(insert.group(2))));
      end = insert.end();
    }
    if (acts.isEmpty() || !consequence.substring(end).isBlank()) {
      throw new UnplainRuleException(rule, "a consequence does more than say plain words");
    }
    return acts;
  }

  private static Verb verb(IndexedRule rule, String fact) {
    try {
      return Named.of(Verb.class, fact.toLowerCase(Locale.ROOT));
    } catch (IllegalArgumentException e) {
      throw new UnplainRuleException(rule, "no plain rule says " + fact);
    }
  }

  private static List<String> arguments(String text) {
    return ARGUMENTS
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
}
