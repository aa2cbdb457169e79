package insidelift.rules;

import insidelift.rules.fact.Spoken;
import insidelift.shared.index.Premise.Told;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.Truth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reasons straight off the index: plain rules as their premises say, and what the rules that think
 * do, written out once more on a {@link Board}. It is a hundred times as quick as the rule engine
 * where thousands of situations are compared, and can reason by an altered copy of the tables. A
 * test holds it against the compiled rules.
 */
final class PlainReasoning implements Reasoning {

  /** A plain rule made ready: what it says is the same every time. */
  private record Ready(IndexedRule rule, List<Spoken> says) {
    static Ready of(IndexedRule rule) {
      return new Ready(rule, rule.acts().stream().map(act -> Spoken.of(rule, act)).toList());
    }
  }

  private final Answered before;
  private final Answered after;

  PlainReasoning(List<IndexedRule> rules) {
    List<IndexedRule> plain = rules.stream().filter(IndexedRule::plain).toList();
    this.before = new Answered(plain.stream().filter(rule -> !RuleBase.afterMoves(rule)).toList());
    this.after = new Answered(plain.stream().filter(RuleBase::afterMoves).toList());
  }

  @Override
  public Reasoned reason(Collection<?> facts) {
    HeardAnswers heard = new HeardAnswers(facts);
    Board board = new Board(facts, heard);
    before.speak(heard, board);
    board.weigh();
    heard.moving(board.now());
    after.speak(heard, board);
    return board.all();
  }

  /** Plain rules by an answer that each cannot do without: most of them need not be looked at. */
  private static final class Answered {

    private final List<Ready> always = new ArrayList<>();
    private final Map<String, Map<String, List<Ready>>> by = new HashMap<>();

    Answered(List<IndexedRule> rules) {
      for (IndexedRule rule : rules) {
        Ready ready = Ready.of(rule);
        Optional<Told> needed = needed(rule);
        if (needed.isEmpty()) {
          always.add(ready);
        }
        needed.ifPresent(
            told ->
                told.values()
                    .forEach(
                        value ->
                            by.computeIfAbsent(told.questions().get(0), key -> new HashMap<>())
                                .computeIfAbsent(value, key -> new ArrayList<>())
                                .add(ready)));
      }
    }

    private static Optional<Told> needed(IndexedRule rule) {
      return rule.premises().stream()
          .filter(Told.class::isInstance)
          .map(Told.class::cast)
          .filter(
              told -> !told.absent() && told.questions().size() == 1 && !told.values().isEmpty())
          .findFirst();
    }

    void speak(HeardAnswers heard, Board board) {
      speak(always, heard, board);
      heard
          .values()
          .forEach(
              (question, value) ->
                  speak(
                      by.getOrDefault(question, Map.of()).getOrDefault(value, List.of()),
                      heard,
                      board));
    }

    private static void speak(List<Ready> rules, HeardAnswers heard, Board board) {
      for (Ready ready : rules) {
        if (ready.rule().in(heard) == Truth.TRUE) {
          ready.says().forEach(board::add);
        }
      }
    }
  }
}
