package insidelift.rules;

import insidelift.shared.Answer;
import insidelift.shared.CheckKind;
import insidelift.shared.Column;
import insidelift.shared.Contribution;
import insidelift.shared.Contribution.Origin;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Mark;
import insidelift.shared.Named;
import insidelift.shared.Rank;
import insidelift.shared.Scope;
import insidelift.shared.index.RuleIndex.IndexedRule;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The book that rules write in. A rule can do nothing else: it names what it contributes, and the
 * ledger adds which rule spoke, on which note and on which facts. A rule that matches twice in the
 * same way counts once.
 */
public final class Ledger {

  private final List<Contribution> entries = new ArrayList<>();
  private final Map<String, List<Origin>> spoken = new HashMap<>();
  private Origin speaking;
  private boolean repeated;

  /** Everything recorded so far, in the order it was recorded. */
  public List<Contribution> entries() {
    return new ArrayList<>(entries);
  }

  /**
   * What a rule would record if it spoke about these facts. Whether it would speak is not asked.
   *
   * @param facts what it would match; evidence rests on the last answer among them
   */
  public static List<Contribution> of(IndexedRule rule, List<Object> facts) {
    Ledger ledger = new Ledger();
    ledger.speaks(rule.id(), rule.note(), facts);
    rule.acts().forEach(act -> PlainRules.write(act, ledger));
    return ledger.entries();
  }

  /** Which rule is about to write. */
  void speaks(String rule, String note, List<Object> facts) {
    speaking = new Origin(rule, note, facts);
    List<Origin> before = spoken.computeIfAbsent(rule, first -> new ArrayList<>(2));
    repeated = false;
    for (Origin other : before) {
      repeated |= same(other.premises(), facts);
    }
    if (!repeated) {
      before.add(speaking);
    }
  }

  /**
   * Whether these are the very same facts. A fact is put in once, so comparing what it says would
   * take longer than all the rest of this ledger and tell no more.
   */
  private static boolean same(List<Object> some, List<Object> others) {
    boolean same = some.size() == others.size();
    for (int i = 0; same && i < some.size(); i++) {
      same = some.get(i) == others.get(i);
    }
    return same;
  }

  /** A fault, a stop, something to set or to look at first; a {@link CheckKind}'s id. */
  public void check(String kind) {
    add(new Contribution.FirstCheck(speaking, Named.of(CheckKind.class, kind)));
  }

  /** A safety question without an answer. */
  public void unseen(String question) {
    add(new Contribution.Unseen(speaking, question));
  }

  /**
   * Evidence for or against a finding, in decibans. What it rests on is the last answer among the
   * rule's premises: rules write the observation last and its conditions before it.
   */
  public void evidence(String finding, int weight) {
    String observation = "";
    for (Object fact : speaking.premises()) {
      if (fact instanceof Answer answer) {
        observation = answer.question();
      }
    }
    add(new Contribution.Evidence(speaking, finding, weight, observation));
  }

  /** The lever is to stand where that column of the table of targets says. */
  public void target(String lever, String column) {
    add(new Contribution.Target(speaking, lever(lever), Named.of(Column.class, column)));
  }

  /** A finding asks for a move. */
  public void correction(String lever, String direction, String finding) {
    add(new Contribution.Correction(speaking, lever(lever), direction(direction), finding));
  }

  /** The last change is to be taken back by moving this way. */
  public void undo(String lever, String direction) {
    add(new Contribution.History(speaking, lever(lever), direction(direction), true));
  }

  /** The last change helped: one more of the same. */
  public void carryOn(String lever, String direction) {
    add(new Contribution.History(speaking, lever(lever), direction(direction), false));
  }

  /** A move is forbidden; a {@link Scope}'s id says to what. */
  public void bar(String lever, String direction, String scope) {
    add(
        new Contribution.Limit(
            speaking, lever(lever), direction(direction), Named.of(Scope.class, scope)));
  }

  /** One position fewer on this lever. */
  public void fewer(String lever) {
    add(new Contribution.Fewer(speaking, lever(lever)));
  }

  /** The rule's claim moves the lever no further than the mark. */
  public void cap(String lever, String direction, String mark) {
    add(
        new Contribution.Cap(
            speaking, lever(lever), direction(direction), Named.of(Mark.class, mark)));
  }

  /** Corrections by these claims take two positions. */
  public void doubles(String... claims) {
    add(new Contribution.Doubles(speaking, List.of(claims)));
  }

  /** The lever is left alone, which is an answer. */
  public void hold(String lever) {
    add(new Contribution.Hold(speaking, lever(lever)));
  }

  /** Nothing speaks for the lever. */
  public void rests(String lever) {
    add(new Contribution.Rest(speaking, lever(lever)));
  }

  /** Proposals by these claims do not stand. */
  public void setsAside(String... claims) {
    add(new Contribution.SetAside(speaking, List.of(claims)));
  }

  /** A correction of the lever goes first by that {@link Rank}. */
  public void leads(String lever, String rank) {
    add(new Contribution.Lead(speaking, lever(lever), Named.of(Rank.class, rank)));
  }

  /** Another lever, by the id of its note. */
  public void alternative(String lever) {
    add(new Contribution.Alternative(speaking, lever));
  }

  /** The rule's note is a decision to be said aloud. */
  public void decides() {
    add(new Contribution.Decision(speaking));
  }

  /** The rule's note is a caution; {@code both} goes with any change; lower places come first. */
  public void caution(String lever, int place) {
    add(new Contribution.Care(speaking, lever.equals("both") ? null : lever(lever), place));
  }

  /** The rule's note has steps of the job; lower places come first. */
  public void job(int place) {
    add(new Contribution.Job(speaking, place));
  }

  private void add(Contribution contribution) {
    if (!repeated) {
      entries.add(contribution);
    }
  }

  private static Lever lever(String id) {
    return Named.of(Lever.class, id);
  }

  private static Direction direction(String id) {
    return Named.of(Direction.class, id);
  }
}
