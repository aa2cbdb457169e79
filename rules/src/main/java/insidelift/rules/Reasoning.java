package insidelift.rules;

import insidelift.shared.Contribution;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.kie.api.definition.rule.Rule;
import org.kie.api.event.rule.BeforeMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.Match;

/**
 * One line of reasoning: facts go in, the families of rules speak in their order, and what they
 * record comes out. Not for several threads; close it when done.
 */
public final class Reasoning implements AutoCloseable {

  /** The families of rules, in the order in which they speak. */
  public enum Stage {
    /** First checks, findings and limits: they read answers only. */
    OBSERVE("MAIN"),
    /** Targets, corrections and alternatives: they read findings and limits too. */
    ADVISE("advise"),
    /** Deciders: they read the proposals. */
    DECIDE("decide"),
    /** Cautions and the job: they read the moves. */
    CARE("care");

    private final String group;

    Stage(String group) {
      this.group = group;
    }

    /** The agenda group that rule files name. */
    public String group() {
      return group;
    }
  }

  private final KieSession session;
  private final Matching plain;
  private final List<Object> known = new ArrayList<>();
  private final Ledger ledger = new Ledger();

  /**
   * A line of reasoning over compiled rules and rules that are data.
   *
   * @param session the session of the compiled rules; null where there are none
   */
  Reasoning(KieSession session, Matching plain) {
    this.session = session;
    this.plain = plain;
    if (session != null) {
      listen();
    }
  }

  private void listen() {
    session.setGlobal("ledger", ledger);
    session.addEventListener(
        new DefaultAgendaEventListener() {
          @Override
          public void beforeMatchFired(BeforeMatchFiredEvent event) {
            Match match = event.getMatch();
            Rule rule = match.getRule();
            ledger.speaks(rule.getName(), note(rule), facts(match));
          }
        });
  }

  private static String note(Rule rule) {
    String note = String.valueOf(rule.getMetaData().get("note"));
    // Rules compiled at start-up keep the annotation's quotation marks.
    return note.startsWith("\"") ? note.substring(1, note.length() - 1) : note;
  }

  /** The facts that matched; a rule of absences alone matches one of the engine's own instead. */
  private static List<Object> facts(Match match) {
    List<Object> facts = new ArrayList<>();
    for (Object object : match.getObjects()) {
      if (object instanceof Record) {
        facts.add(object);
      }
    }
    return List.copyOf(facts);
  }

  /** Adds facts and lets one family of rules speak. */
  public Reasoning run(Stage stage, Collection<?> facts) {
    known.addAll(facts);
    if (session != null) {
      facts.forEach(session::insert);
      session.getAgenda().getAgendaGroup(stage.group()).setFocus();
      session.fireAllRules();
    }
    plain.run(stage, known, ledger);
    return this;
  }

  /** Everything the rules have recorded so far. */
  public List<Contribution> contributions() {
    return ledger.entries();
  }

  @Override
  public void close() {
    if (session != null) {
      session.dispose();
    }
  }
}
