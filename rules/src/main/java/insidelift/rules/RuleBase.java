package insidelift.rules;

import insidelift.rules.fact.Spoken;
import insidelift.shared.ShippedJson;
import insidelift.shared.index.Premise;
import insidelift.shared.index.RuleIndex;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.Truth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.kie.api.KieBase;
import org.kie.api.definition.rule.Rule;

/**
 * The rules, ready to be asked, and the index of what each one reads and says. One rule base serves
 * any number of threads.
 *
 * <p>A shop's own rules are data and are never compiled: what they say is entered beside the
 * answers, and their cautions are added when it is known what moves.
 */
public final class RuleBase {

  private static final String INDEX = "/META-INF/insidelift/rule-index.json";

  private final Reasoning reasoning;
  private final KieBase compiled;
  private final RuleIndex index;
  private final List<IndexedRule> own;

  private RuleBase(Reasoning reasoning, KieBase compiled, RuleIndex index, List<IndexedRule> own) {
    this.reasoning = reasoning;
    this.compiled = compiled;
    this.index = index;
    this.own = own;
  }

  /**
   * Loads the rules of this build.
   *
   * @throws IllegalStateException if the build holds no compiled rules
   */
  public static RuleBase load() {
    KieBase base = CompiledRules.of(RuleBase.class.getPackageName());
    return new RuleBase(new CompiledReasoning(base), base, shipped(), List.of());
  }

  /**
   * The rules of an index without the rule engine, for whoever asks thousands of times or by an
   * altered copy. Tests hold the two ways against each other.
   */
  public static RuleBase plain(RuleIndex rules) {
    return new RuleBase(new PlainReasoning(rules.rules()), null, rules, List.of());
  }

  /** The same rules and a shop's own beside them. */
  public RuleBase with(List<IndexedRule> shop) {
    List<IndexedRule> all = Stream.concat(index.rules().stream(), shop.stream()).toList();
    return new RuleBase(
        reasoning,
        compiled,
        new RuleIndex(index.schema(), all),
        Stream.concat(own.stream(), shop.stream()).toList());
  }

  /** The same without the rule engine. */
  public RuleBase plain() {
    List<IndexedRule> built = new ArrayList<>(index.rules());
    built.removeAll(own);
    return plain(new RuleIndex(index.schema(), built)).with(own);
  }

  /** How many rules there are. */
  public int size() {
    return index.rules().size();
  }

  /** The names of the compiled rules. */
  Set<String> names() {
    return compiled.getKiePackages().stream()
        .flatMap(known -> known.getRules().stream())
        .map(Rule::getName)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** What the rules make of what is known. */
  public Reasoned reason(Collection<?> facts) {
    if (own.isEmpty()) {
      return reasoning.reason(facts);
    }
    HeardAnswers heard = new HeardAnswers(facts);
    List<Object> all = new ArrayList<>(facts);
    speak(own.stream().filter(rule -> !afterMoves(rule)), heard, all);
    Reasoned reasoned = reasoning.reason(all);
    heard.moving(reasoned.now());
    List<Object> after = new ArrayList<>(reasoned.facts());
    speak(own.stream().filter(RuleBase::afterMoves), heard, after);
    return new Reasoned(after);
  }

  private static void speak(Stream<IndexedRule> rules, HeardAnswers heard, List<Object> into) {
    rules
        .filter(rule -> rule.in(heard) == Truth.TRUE)
        .forEach(rule -> rule.acts().forEach(act -> into.add(Spoken.of(rule, act))));
  }

  /** Whether a rule waits for what is moved. */
  static boolean afterMoves(IndexedRule rule) {
    return rule.premises().stream().anyMatch(Premise.Moved.class::isInstance);
  }

  /** The index of the rules: what each one reads and says. */
  public RuleIndex index() {
    return index;
  }

  /**
   * The index of the rules that this build ships. It can be read before and while the rules are
   * loaded, and is read only once.
   */
  public static RuleIndex shipped() {
    return Shipped.INDEX;
  }

  private static final class Shipped {
    static final RuleIndex INDEX = RuleIndex.of(ShippedJson.read(RuleBase.class, RuleBase.INDEX));
  }
}
