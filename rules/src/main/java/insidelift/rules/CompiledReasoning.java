package insidelift.rules;

import insidelift.rules.fact.Told.Begin;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.KieSessionsPool;

/** Reasons by the compiled rules: one session, in which each family speaks in its turn. */
final class CompiledReasoning implements Reasoning {

  /** The families in the order in which they speak, after those that need no order. */
  private static final List<String> GROUPS =
      List.of("find", "weigh", "sum", "choose", "act", "care");

  private static final List<Begin> TABLES =
      List.of(new Begin("findings"), new Begin("levers"), new Begin("starts"));

  private final KieSessionsPool sessions;

  CompiledReasoning(KieBase base) {
    // A session that is used again keeps its memories, emptied, and need not lay them out anew.
    this.sessions = base.newKieSessionsPool(1);
  }

  @Override
  public Reasoned reason(Collection<?> facts) {
    KieSession session = sessions.newKieSession();
    try {
      TABLES.forEach(session::insert);
      facts.forEach(session::insert);
      session.fireAllRules();
      for (String group : GROUPS) {
        session.getAgenda().getAgendaGroup(group).setFocus();
        session.fireAllRules();
      }
      List<Object> all = new ArrayList<>();
      all.addAll(session.getObjects());
      return new Reasoned(all);
    } finally {
      session.dispose();
    }
  }
}
