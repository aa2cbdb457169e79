package insidelift.rules;

import insidelift.rules.Reasoning.Stage;
import insidelift.shared.Answer;
import insidelift.shared.Barred;
import insidelift.shared.Finding;
import insidelift.shared.Move;
import insidelift.shared.Proposal;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.Constraint;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.RuleIndex.Premise;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * Rules that are data rather than compiled code, matched straight off the index: once for every way
 * in which facts satisfy the premises, as the rule engine does it. A shop's own rules speak this
 * way, since nothing of a shop's is ever compiled, and so do altered copies of the rule base that
 * show whether the cases would notice. Tests hold the two ways against each other.
 */
final class PlainRules implements Matching {

  /**
   * A premise made ready.
   *
   * @param keys under which the facts it may read are filed
   * @param absent whether none of them may fit
   * @param test what fits
   */
  private record Pattern(List<String> keys, boolean absent, Predicate<Object> test) {}

  private record Ready(IndexedRule rule, List<Pattern> patterns) {}

  private final Map<String, List<Ready>> byStage = new HashMap<>();

  PlainRules(List<IndexedRule> rules) {
    for (IndexedRule rule : rules) {
      List<Pattern> patterns = rule.premises().stream().map(PlainRules::pattern).toList();
      byStage
          .computeIfAbsent(rule.stage(), stage -> new ArrayList<>())
          .add(new Ready(rule, patterns));
    }
  }

  @Override
  public void run(Stage stage, List<Object> facts, Ledger ledger) {
    List<Ready> speaking = byStage.getOrDefault(stage.group(), List.of());
    if (speaking.isEmpty()) {
      return;
    }
    Map<String, List<Object>> filed = new HashMap<>();
    for (Object fact : facts) {
      file(fact.getClass().getSimpleName(), fact, filed);
      if (fact instanceof Answer answer) {
        file(answer.question(), fact, filed);
      }
    }
    for (Ready ready : speaking) {
      match(ready, 0, new ArrayList<>(), filed, ledger);
    }
  }

  private static void file(String key, Object fact, Map<String, List<Object>> filed) {
    filed.computeIfAbsent(key, type -> new ArrayList<>()).add(fact);
  }

  private static void match(
      Ready ready, int at, List<Object> matched, Map<String, List<Object>> facts, Ledger ledger) {
    if (at == ready.patterns().size()) {
      ledger.speaks(ready.rule().id(), ready.rule().note(), matched);
      ready.rule().acts().forEach(act -> write(act, ledger));
      return;
    }
    Pattern pattern = ready.patterns().get(at);
    if (pattern.absent()) {
      if (!known(pattern, facts)) {
        match(ready, at + 1, matched, facts, ledger);
      }
      return;
    }
    for (String key : pattern.keys()) {
      for (Object fact : facts.getOrDefault(key, List.of())) {
        if (pattern.test().test(fact)) {
          matched.add(fact);
          match(ready, at + 1, matched, facts, ledger);
          matched.remove(matched.size() - 1);
        }
      }
    }
  }

  private static boolean known(Pattern pattern, Map<String, List<Object>> facts) {
    for (String key : pattern.keys()) {
      for (Object fact : facts.getOrDefault(key, List.of())) {
        if (pattern.test().test(fact)) {
          return true;
        }
      }
    }
    return false;
  }

  private static Pattern pattern(Premise premise) {
    Predicate<Object> test = fact -> true;
    for (Constraint constraint : premise.fields()) {
      test = test.and(test(premise.fact(), constraint));
    }
    // An answer is found by its question: most premises name one, and most questions are open.
    List<String> keys =
        premise.field("question").map(Constraint::values).orElse(List.of(premise.fact()));
    return new Pattern(keys, premise.absent(), test);
  }

  private static Predicate<Object> test(String fact, Constraint constraint) {
    String place = fact + "." + constraint.field();
    if (constraint.operator().equals(">=")) {
      int least = Integer.parseInt(constraint.values().get(0));
      return switch (place) {
        case "Finding.strength" -> known -> ((Finding) known).strength() >= least;
        case "Proposal.strength" -> known -> ((Proposal) known).strength() >= least;
        default -> throw new IllegalArgumentException("no number is called " + place);
      };
    }
    List<String> values = constraint.values();
    return switch (place) {
      case "Answer.question" -> known -> values.contains(((Answer) known).question());
      case "Answer.value" -> known -> values.contains(((Answer) known).value());
      case "Answer.complaint" ->
          known -> values.contains(String.valueOf(((Answer) known).complaint()));
      case "Finding.id" -> known -> values.contains(((Finding) known).id());
      case "Barred.lever" -> known -> values.contains(((Barred) known).lever());
      case "Barred.direction" -> known -> values.contains(((Barred) known).direction());
      case "Proposal.claim" -> known -> values.contains(((Proposal) known).claim());
      case "Proposal.lever" -> known -> values.contains(((Proposal) known).lever());
      case "Proposal.direction" -> known -> values.contains(((Proposal) known).direction());
      case "Proposal.kind" -> known -> values.contains(((Proposal) known).kind());
      case "Move.lever" -> known -> values.contains(((Move) known).lever());
      case "Move.direction" -> known -> values.contains(((Move) known).direction());
      default -> throw new IllegalArgumentException("no fact has " + place);
    };
  }

  /** Writes one act of a rule that speaks. */
  static void write(Act act, Ledger ledger) {
    List<String> words = act.words();
    switch (act.verb()) {
      case "check" -> ledger.check(words.get(0));
      case "unseen" -> ledger.unseen(words.get(0));
      case "evidence" -> ledger.evidence(words.get(0), Integer.parseInt(words.get(1)));
      case "target" -> ledger.target(words.get(0), words.get(1));
      case "correction" -> ledger.correction(words.get(0), words.get(1), words.get(2));
      case "undo" -> ledger.undo(words.get(0), words.get(1));
      case "carryOn" -> ledger.carryOn(words.get(0), words.get(1));
      case "bar" -> ledger.bar(words.get(0), words.get(1), words.get(2));
      case "fewer" -> ledger.fewer(words.get(0));
      case "cap" -> ledger.cap(words.get(0), words.get(1), words.get(2));
      case "doubles" -> ledger.doubles(words.toArray(String[]::new));
      case "hold" -> ledger.hold(words.get(0));
      case "rests" -> ledger.rests(words.get(0));
      case "setsAside" -> ledger.setsAside(words.toArray(String[]::new));
      case "leads" -> ledger.leads(words.get(0), words.get(1));
      case "alternative" -> ledger.alternative(words.get(0));
      case "decides" -> ledger.decides();
      case "caution" -> ledger.caution(words.get(0), Integer.parseInt(words.get(1)));
      case "job" -> ledger.job(Integer.parseInt(words.get(0)));
      default -> throw new IllegalArgumentException("the ledger has no \"" + act.verb() + '"');
    }
  }
}
