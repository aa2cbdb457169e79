package insidelift.engine.audit;

import insidelift.shared.CheckKind;
import insidelift.shared.Column;
import insidelift.shared.Lever;
import insidelift.shared.Named;
import insidelift.shared.Rank;
import insidelift.shared.Scope;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.FindingWord;
import insidelift.shared.index.RuleIndex;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.Constraint;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.RuleIndex.Premise;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * Every small mistake in the rule base that this knows: a rule or a premise left out, a premise
 * turned round, a direction flipped, a weight a step off, another finding, lever, column, kind,
 * rank or scope, a limit moved, a word left out of a list.
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

  private static final Map<String, List<String>> STEPS =
      Map.of("2", List.of("5"), "5", List.of("2", "10"), "10", List.of("5"));

  private final RuleIndex index;
  private final List<String> findings;
  private final List<Mutant> mutants = new ArrayList<>();

  private RuleMutants(RuleIndex index, Vocabulary words) {
    this.index = index;
    this.findings = words.findings().stream().map(FindingWord::id).toList();
  }

  static List<Mutant> of(RuleIndex index, Vocabulary words) {
    RuleMutants all = new RuleMutants(index, words);
    index.rules().forEach(all::mutate);
    return all.mutants;
  }

  private void mutate(IndexedRule rule) {
    add(rule, null, "left out");
    for (int i = 0; i < rule.premises().size(); i++) {
      Premise premise = rule.premises().get(i);
      String name = "premise " + (i + 1) + " " + premise.fact();
      add(rule, with(rule, i, null), name + " left out");
      add(rule, with(rule, i, turned(premise)), name + " turned round");
      for (Constraint constraint : premise.fields()) {
        for (Constraint other : others(premise, constraint)) {
          add(
              rule,
              with(rule, i, with(premise, constraint, other)),
              "%s %s %s to %s"
                  .formatted(name, constraint.field(), shown(constraint), shown(other)));
        }
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

  private static Premise turned(Premise premise) {
    return new Premise(premise.fact(), !premise.absent(), premise.fields());
  }

  private List<Constraint> others(Premise premise, Constraint constraint) {
    List<Constraint> others = new ArrayList<>();
    String place = premise.fact() + "." + constraint.field();
    List<String> values = constraint.values();
    switch (constraint.operator()) {
      case ">=" ->
          STEPS
              .getOrDefault(values.get(0), List.of())
              .forEach(step -> others.add(new Constraint(constraint.field(), ">=", List.of(step))));
      case "in" -> {
        for (int i = 0; i < values.size(); i++) {
          List<String> fewer = new ArrayList<>(values);
          fewer.remove(i);
          others.add(new Constraint(constraint.field(), "in", fewer));
        }
      }
      default -> {
        String other =
            switch (place) {
              case "Finding.id" -> next(findings, values.get(0));
              case "Barred.direction", "Proposal.direction", "Move.direction" ->
                  flipped(values.get(0));
              case "Barred.lever", "Proposal.lever", "Move.lever" ->
                  next(Lever.class, values.get(0));
              case "Proposal.kind" -> values.get(0).equals("target") ? "correction" : "target";
              default -> null;
            };
        if (other != null) {
          others.add(new Constraint(constraint.field(), "==", List.of(other)));
        }
      }
    }
    return others;
  }

  private List<Act> others(Act act) {
    List<Act> others = new ArrayList<>();
    List<String> words = act.words();
    switch (act.verb()) {
      case "check" -> others.add(word(act, 0, next(CheckKind.class, words.get(0))));
      case "evidence" -> {
        others.add(word(act, 0, next(findings, words.get(0))));
        others.add(word(act, 1, "" + -Integer.parseInt(words.get(1))));
        String sign = words.get(1).startsWith("-") ? "-" : "";
        STEPS
            .get(words.get(1).replace("-", ""))
            .forEach(step -> others.add(word(act, 1, sign + step)));
      }
      case "target" -> {
        others.add(word(act, 0, next(Lever.class, words.get(0))));
        others.add(word(act, 1, next(Column.class, words.get(1))));
      }
      case "correction" -> {
        others.add(word(act, 0, next(Lever.class, words.get(0))));
        others.add(word(act, 1, flipped(words.get(1))));
      }
      case "undo", "carryOn", "cap" -> {
        others.add(word(act, 0, next(Lever.class, words.get(0))));
        others.add(word(act, 1, flipped(words.get(1))));
      }
      case "bar" -> {
        others.add(word(act, 0, next(Lever.class, words.get(0))));
        others.add(word(act, 1, flipped(words.get(1))));
        others.add(word(act, 2, next(Scope.class, words.get(2))));
      }
      case "fewer", "hold", "rests" -> others.add(word(act, 0, next(Lever.class, words.get(0))));
      case "leads" -> {
        others.add(word(act, 0, next(Lever.class, words.get(0))));
        others.add(word(act, 1, next(Rank.class, words.get(1))));
      }
      case "setsAside", "doubles" -> {
        for (int i = 0; i < words.size() && words.size() > 1; i++) {
          List<String> fewer = new ArrayList<>(words);
          fewer.remove(i);
          others.add(new Act(act.verb(), fewer));
        }
      }
      case "caution" -> {
        if (!words.get(0).equals("both")) {
          others.add(word(act, 0, next(Lever.class, words.get(0))));
        }
      }
      default -> {}
    }
    return others;
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
      narrower = Repetition.implies(other.premises().get(i), rule.premises().get(i));
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
        rule.stage(),
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
        rule.stage(),
        rule.premises(),
        acts);
  }

  private static Premise with(Premise premise, Constraint constraint, Constraint other) {
    List<Constraint> fields = new ArrayList<>(premise.fields());
    fields.set(fields.indexOf(constraint), other);
    return new Premise(premise.fact(), premise.absent(), fields);
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

  private static String shown(Constraint constraint) {
    return String.join("|", constraint.values());
  }

  private static String shown(Act act) {
    return act.verb() + " " + String.join("|", act.words());
  }
}
