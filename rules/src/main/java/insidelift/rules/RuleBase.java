package insidelift.rules;

import insidelift.shared.ShippedJson;
import insidelift.shared.index.RuleIndex;
import insidelift.shared.index.RuleIndex.IndexedRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.kie.api.KieBase;
import org.kie.api.definition.rule.Rule;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.KieSessionsPool;

/**
 * The compiled rules, ready to be asked. One rule base serves any number of threads; every {@link
 * Reasoning} has a session of its own.
 *
 * <p>The compiled model's classes are entered directly, without a rule compiler and without XML:
 * that halves the start. An engine that finds no rules reports no error by itself, so this class
 * counts them against the index.
 */
public final class RuleBase {

  private static final String INDEX = "/META-INF/insidelift/rule-index.json";

  private final KieBase base;
  private final Supplier<KieSession> sessions;
  private final List<IndexedRule> own;
  private final Matching plain;
  private RuleIndex index;

  private RuleBase(
      KieBase base, Supplier<KieSession> sessions, List<IndexedRule> own, Matching plain) {
    this.base = base;
    this.sessions = sessions;
    this.own = own;
    this.plain = plain;
  }

  /**
   * Loads the rules of this build.
   *
   * @throws IllegalStateException if the build holds no compiled rules
   */
  public static RuleBase load() {
    return of(CompiledRules.of(RuleBase.class.getPackageName()));
  }

  /** A rule base over rules that were compiled elsewhere, for comparison. */
  public static RuleBase of(KieBase base) {
    // A session that is used again keeps its memories, emptied, and need not lay them out anew.
    KieSessionsPool pool = base.newKieSessionsPool(1);
    return new RuleBase(base, pool::newKieSession, List.of(), new PlainRules(List.of()));
  }

  /** The same with a new session for each line of reasoning, which is the engine's usual way. */
  public static RuleBase ofNewSessions(KieBase base) {
    return new RuleBase(base, base::newKieSession, List.of(), new PlainRules(List.of()));
  }

  /** A rule base of rules that are data alone: what an altered copy of the index would say. */
  public static RuleBase plain(RuleIndex rules) {
    return of(rules, new PlainRules(rules.rules()));
  }

  /** A rule base of rules that are matched in some way of their own. */
  static RuleBase of(RuleIndex rules, Matching matching) {
    return new RuleBase(null, null, rules.rules(), matching);
  }

  /** The same rules and a shop's own beside them, which are data and never compiled. */
  public RuleBase with(List<IndexedRule> shop) {
    List<IndexedRule> all = Stream.concat(own.stream(), shop.stream()).toList();
    return new RuleBase(base, sessions, all, new PlainRules(all));
  }

  /** How many rules there are. */
  public int size() {
    int compiled =
        base == null
            ? 0
            : base.getKiePackages().stream().mapToInt(known -> known.getRules().size()).sum();
    return compiled + own.size();
  }

  /** The names of the compiled rules. */
  Set<String> names() {
    return base.getKiePackages().stream()
        .flatMap(known -> known.getRules().stream())
        .map(Rule::getName)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** A new line of reasoning over the rules. */
  public Reasoning reason() {
    return new Reasoning(base == null ? null : sessions.get(), plain);
  }

  /** The index of the rules: what each one reads and records. */
  public synchronized RuleIndex index() {
    if (index == null) {
      List<IndexedRule> all = new ArrayList<>(base == null ? List.of() : shipped().rules());
      all.addAll(own);
      index = new RuleIndex(1, all);
    }
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
