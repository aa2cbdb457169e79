package insidelift.rules.weigh;

import insidelift.rules.CompiledRules;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.KieSessionsPool;

/**
 * Weighs the moves of the front end and chooses one. Findings, sums and the choice are derived by
 * rules in one session: facts go in, and what the rules made of them comes out.
 *
 * <p>One weighing serves any number of threads.
 */
public final class Weighing {

  /** The families of rules in the order in which they speak, after those that need no order. */
  private static final List<String> GROUPS = List.of("find", "weigh", "sum", "choose", "act");

  private final KieBase base;
  private final KieSessionsPool sessions;

  /** A weighing by rules that were compiled elsewhere. */
  public Weighing(KieBase base) {
    this.base = base;
    // A session that is used again keeps its memories, emptied, and need not lay them out anew.
    this.sessions = base.newKieSessionsPool(1);
  }

  /**
   * A weighing by the rules of this build.
   *
   * @throws IllegalStateException if the build holds no compiled rules
   */
  public static Weighing load() {
    return new Weighing(CompiledRules.of(Weighing.class.getPackageName()));
  }

  /** The note that each rule and each line of a table stands on, by its name. */
  public Map<String, String> notes() {
    Map<String, String> notes = new TreeMap<>();
    base.getKiePackages()
        .forEach(
            known -> known.getRules().forEach(rule -> notes.put(rule.getName(), Notes.of(rule))));
    return notes;
  }

  /** What the rules make of what is known. */
  public Weighed weigh(Collection<?> facts) {
    KieSession session = sessions.newKieSession();
    try {
      session.insert(new Begin("findings"));
      session.insert(new Begin("levers"));
      facts.forEach(session::insert);
      session.fireAllRules();
      for (String group : GROUPS) {
        session.getAgenda().getAgendaGroup(group).setFocus();
        session.fireAllRules();
      }
      List<Object> all = new ArrayList<>();
      all.addAll(session.getObjects());
      return new Weighed(all);
    } finally {
      session.dispose();
    }
  }
}
