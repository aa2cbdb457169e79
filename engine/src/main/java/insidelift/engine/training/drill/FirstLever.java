package insidelift.engine.training.drill;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Conclusion;
import insidelift.engine.consultation.decision.Decided;
import insidelift.engine.notes.Note;
import insidelift.rules.fact.Beside;
import insidelift.rules.fact.Choice;
import insidelift.shared.Direction;
import insidelift.shared.Status;
import insidelift.shared.Vocabulary.LeverWord;
import insidelift.shared.advice.Advice.OtherLever;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What comes before camber and caster in a case. As with findings, what the rules make of the whole
 * case is right, and what they make of the part that is known where it leads to the same moves.
 *
 * @param none whether nothing comes first
 * @param leads the steps that come first, each a lever and its way
 * @param named every step that the advice names, what leads among them
 * @param choice the note on what was chosen to do
 * @param keep whether the kart is good as it stands
 */
record FirstLever(
    boolean none, Set<String> leads, Map<String, OtherLever> named, Note choice, boolean keep) {

  static FirstLever of(Advisor advisor, Drill drill) {
    List<Situation> heard = new ArrayList<>(List.of(drill.hidden().hidden()));
    if (drill.sameNow(Conclusion.of(advisor.decider(), drill.known()))) {
      heard.add(drill.known());
    }
    boolean none = false;
    Set<String> leads = new TreeSet<>();
    Map<String, OtherLever> named = new LinkedHashMap<>();
    for (Situation situation : heard) {
      Set<String> first = leads(advisor.decide(situation));
      none |= first.isEmpty();
      leads.addAll(first);
      advisor
          .outline(situation)
          .alternatives()
          .forEach(other -> named.putIfAbsent(other.move(), other));
    }
    Choice choice = advisor.decide(drill.hidden().hidden()).reasoned().choice();
    return new FirstLever(
        none,
        leads,
        named,
        advisor.notes().note(choice.by().note()),
        choice.kind().equals("keep") && leads.isEmpty());
  }

  /**
   * The steps that come first in a decided situation, at most one of each lever: the way that gains
   * more. Where the front end stays, the rules name one of those that gain most, by its name: its
   * equals are as right.
   */
  static Set<String> leads(Decided decided) {
    if (decided.status() == Status.FIX_FIRST) {
      return Set.of();
    }
    List<Beside> leads = decided.beside().stream().filter(decided::leads).toList();
    Map<String, String> ways = new TreeMap<>();
    decided.beside().stream()
        .filter(
            other ->
                leads.contains(other)
                    || (decided.now().isEmpty()
                        && leads.stream().anyMatch(lead -> lead.gain() == other.gain())))
        .forEach(other -> ways.putIfAbsent(other.lever(), other.lever() + " " + other.direction()));
    return new TreeSet<>(ways.values());
  }

  /** Every step of another lever that there are words for, the quickest lever first. */
  static Map<String, String> steps(Advisor advisor) {
    Map<String, String> steps = new LinkedHashMap<>();
    for (LeverWord word : advisor.vocabulary().levers()) {
      for (Direction way : List.of(Direction.MORE, Direction.LESS)) {
        if (word.step(way) != null) {
          steps.put(word.id() + " " + way.id(), word.step(way));
        }
      }
    }
    return steps;
  }

  /** The line of the tables that speaks most for a step. */
  static Optional<String> line(Advisor advisor, Decided decided, String step) {
    int space = step.indexOf(' ');
    return decided.reasoned().parts(step.substring(0, space), step.substring(space + 1)).stream()
        .filter(part -> part.points() > 0)
        .map(part -> part.by().rule())
        .filter(rule -> advisor.rules().index().rule(rule).isPresent())
        .findFirst();
  }

  /** The one that the advice names first of what leads. */
  Optional<OtherLever> lead() {
    return named.values().stream().filter(other -> leads.contains(other.move())).findFirst();
  }

  /** The same lever the other way, if the advice names it. */
  Optional<OtherLever> otherWay(String step) {
    String lever = step.substring(0, step.indexOf(' ') + 1);
    return named.values().stream()
        .filter(other -> (other.lever() + " ").equals(lever) && !other.move().equals(step))
        .findFirst();
  }

  /** How an answer is judged. */
  Judgement.First judge(String said) {
    if (said.equals(Drill.NONE)) {
      return none ? Judgement.First.RIGHT : Judgement.First.WRONG;
    }
    if (keep) {
      return Judgement.First.WRONG;
    }
    if (leads.contains(said)) {
      return Judgement.First.RIGHT;
    }
    if (named.containsKey(said)) {
      return Judgement.First.HALF;
    }
    return otherWay(said).isPresent() ? Judgement.First.WRONG_WAY : Judgement.First.WRONG;
  }
}
