package insidelift.engine.audit.check;

import insidelift.shared.CheckKind;
import insidelift.shared.Lever;
import insidelift.shared.Named;
import insidelift.shared.Scope;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.FindingWord;
import insidelift.shared.Vocabulary.LeverWord;
import insidelift.shared.index.Premise;
import insidelift.shared.index.Premise.Moved;
import insidelift.shared.index.Premise.Told;
import insidelift.shared.index.RuleIndex;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.IndexedRule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Every small mistake in the plain rules and tables that this knows: a rule or a premise left out,
 * a premise turned round, a question or a value left out of a list, a direction flipped, a weight,
 * a strength or a credence a step off, another finding, lever, water or scope, a claim mirrored or
 * not.
 */
final class RuleMutants {

  /**
   * A rule base with one mistake.
   *
   * @param what the mistake, the same from one run to the next
   * @param rule the rule it is in, as it should be
   * @param index the whole rule base with it
   * @param narrower whether the mistaken rule speaks only where the right one does, if at all
   */
  record Mutant(String what, IndexedRule rule, RuleIndex index, boolean narrower) {}

  private static final List<String> PHASES = List.of("entry", "mid", "exit");
  private static final List<String> WATERS = List.of("dry", "damp", "wet", "standing");

  private final RuleIndex index;
  private final List<String> findings;
  private final List<String> others;
  private final List<Mutant> mutants = new ArrayList<>();

  private RuleMutants(RuleIndex index, Vocabulary words) {
    this.index = index;
    this.findings = words.findings().stream().map(FindingWord::id).toList();
    // The driver has one way only.
    this.others =
        words.levers().stream().filter(word -> word.more() != null).map(LeverWord::id).toList();
  }

  static List<Mutant> of(RuleIndex index, Vocabulary words) {
    RuleMutants all = new RuleMutants(index, words);
    index.rules().stream().filter(IndexedRule::plain).forEach(all::mutate);
    return all.mutants;
  }

  private void mutate(IndexedRule rule) {
    add(rule, null, "left out");
    for (int i = 0; i < rule.premises().size(); i++) {
      Premise premise = rule.premises().get(i);
      String name = "premise " + (i + 1);
      add(rule, with(rule, i, null), name + " left out");
      for (Premise other : others(premise)) {
        add(rule, with(rule, i, other), name + " to " + other);
      }
    }
    for (int i = 0; i < rule.acts().size(); i++) {
      Act act = rule.acts().get(i);
      if (rule.acts().size() > 1) {
        add(rule, withAct(rule, i, null), shown(act) + " left out");
      }
      for (Act other : others(act)) {
        add(rule, withAct(rule, i, other), shown(act) + " to " + shown(other));
      }
    }
  }

  private static List<Premise> others(Premise premise) {
    List<Premise> others = new ArrayList<>();
    if (premise instanceof Told told) {
      others.add(new Told(told.questions(), told.values(), !told.absent()));
      for (int i = 0; told.values().size() > 1 && i < told.values().size(); i++) {
        others.add(new Told(told.questions(), less(told.values(), i), told.absent()));
      }
      for (int i = 0; told.questions().size() > 1 && i < told.questions().size(); i++) {
        others.add(new Told(less(told.questions(), i), told.values(), told.absent()));
      }
    } else if (premise instanceof Moved moved && !moved.lever().isEmpty()) {
      others.add(new Moved(next(Lever.class, moved.lever()), moved.direction()));
      others.add(new Moved(moved.lever(), flipped(moved.direction())));
    }
    return others;
  }

  private static List<String> less(List<String> words, int at) {
    List<String> fewer = new ArrayList<>(words);
    fewer.remove(at);
    return fewer;
  }

  private List<Act> others(Act act) {
    return switch (act.verb()) {
      case CHECK -> List.of(word(act, 0, next(CheckKind.class, act.word(0))));
      case EVIDENCE ->
          List.of(
              word(act, 0, next(findings, act.word(0))),
              word(act, 1, "" + -act.number(1)),
              word(act, 1, "" + (act.number(1) + 4)),
              word(act, 1, "" + (act.number(1) - 4)));
      case CLAIM ->
          List.of(
              word(act, 0, lever(act.word(0))),
              word(act, 1, flipped(act.word(1))),
              word(act, 2, next(act.word(2))),
              word(act, 3, "" + -act.number(3)),
              word(act, 3, "" + (act.number(3) + Integer.signum(act.number(3)))),
              word(act, 4, "" + (act.number(4) + 10)),
              word(act, 4, "" + (act.number(4) - 10)),
              word(act, 5, act.word(5).equals("none") ? "other" : "none"),
              word(act, 6, act.word(6).equals("one") ? "both" : "one"));
      case BARRED ->
          List.of(
              word(act, 0, lever(act.word(0))),
              word(act, 1, flipped(act.word(1))),
              word(act, 2, next(Scope.class, act.word(2))));
      case START ->
          List.of(
              word(act, 0, next(WATERS, act.word(0))),
              word(act, 1, next(Lever.class, act.word(1))),
              word(act, 2, "" + (act.number(2) + 50)));
      case TRACK -> List.of(word(act, 0, next(WATERS, act.word(0))));
      case SEVERITY -> List.of(word(act, 0, "" + (act.number(0) + 20)));
      case TERM ->
          List.of(
              word(act, 2, "" + (act.number(2) == 0 ? 1 : -act.number(2))),
              word(act, 4, act.word(4).equals("true") ? "false" : "true"));
      case OPTION ->
          List.of(word(act, 1, flipped(act.word(1))), word(act, 2, "" + (act.number(2) + 4)));
      case CARE ->
          act.word(0).equals("both")
              ? List.of()
              : List.of(word(act, 0, next(Lever.class, act.word(0))));
      case OTHER ->
          act.word(0).equals("driver")
              ? List.of()
              : List.of(word(act, 0, lever(act.word(0))), word(act, 1, flipped(act.word(1))));
      case KIT ->
          List.of(
              word(act, 0, lever(act.word(0))),
              word(act, 1, act.word(1).equals("wet") ? "dry" : "wet"));
      case UNSEEN, OVERRULED, JOB -> List.of();
    };
  }

  /** Another lever of its kind: of the front end, or beside it. */
  private String lever(String lever) {
    return others.contains(lever) ? next(others, lever) : next(Lever.class, lever);
  }

  /** Another thing that a claim is about. */
  private String next(String on) {
    return PHASES.contains(on) ? next(PHASES, on) : next(findings, on);
  }

  private void add(IndexedRule rule, IndexedRule other, String what) {
    List<IndexedRule> rules = new ArrayList<>(index.rules());
    int at = rules.indexOf(rule);
    if (other == null) {
      rules.remove(at);
    } else {
      rules.set(at, other);
    }
    mutants.add(
        new Mutant(rule.id() + ": " + what, rule, new RuleIndex(1, rules), narrower(rule, other)));
  }

  private static boolean narrower(IndexedRule rule, IndexedRule other) {
    if (other == null) {
      return true;
    }
    boolean narrower = rule.premises().size() == other.premises().size();
    for (int i = 0; narrower && i < rule.premises().size(); i++) {
      narrower = RepeatedRules.implies(other.premises().get(i), rule.premises().get(i));
    }
    return narrower;
  }

  private static IndexedRule with(IndexedRule rule, int at, Premise premise) {
    List<Premise> premises = new ArrayList<>(rule.premises());
    if (premise == null) {
      premises.remove(at);
    } else {
      premises.set(at, premise);
    }
    return new IndexedRule(
        rule.id(),
        rule.note(),
        rule.mechanism(),
        rule.family(),
        rule.line(),
        rule.says(),
        premises,
        rule.acts());
  }

  private static IndexedRule withAct(IndexedRule rule, int at, Act act) {
    List<Act> acts = new ArrayList<>(rule.acts());
    if (act == null) {
      acts.remove(at);
    } else {
      acts.set(at, act);
    }
    return new IndexedRule(
        rule.id(),
        rule.note(),
        rule.mechanism(),
        rule.family(),
        rule.line(),
        rule.says(),
        rule.premises(),
        acts);
  }

  private static Act word(Act act, int at, String word) {
    List<String> words = new ArrayList<>(act.words());
    words.set(at, word);
    return new Act(act.verb(), words);
  }

  private static String flipped(String direction) {
    return direction.equals("more") ? "less" : "more";
  }

  private static String next(List<String> all, String one) {
    return all.get((all.indexOf(one) + 1) % all.size());
  }

  private static <E extends Enum<E> & Named> String next(Class<E> type, String one) {
    return next(Arrays.stream(type.getEnumConstants()).map(Named::id).toList(), one);
  }

  private static String shown(Act act) {
    return act.verb().id() + " " + String.join("|", act.words());
  }
}
