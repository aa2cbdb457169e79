package insidelift.engine.consultation;

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
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.IndexedRule;
import java.util.List;

/** What an act of the rule index leaves in the ledger when its rule speaks. */
final class Recorded {

  private Recorded() {}

  /**
   * The entry that an act makes.
   *
   * @param observation the question that evidence rests on
   * @throws IllegalArgumentException for a verb that changes nothing in what to do now
   */
  static Contribution by(IndexedRule rule, Act act, String observation) {
    Origin by = new Origin(rule.id(), rule.note(), List.of());
    List<String> words = act.words();
    return switch (act.verb()) {
      case "check" -> new Contribution.FirstCheck(by, Named.of(CheckKind.class, words.get(0)));
      case "evidence" ->
          new Contribution.Evidence(by, words.get(0), Integer.parseInt(words.get(1)), observation);
      case "target" ->
          new Contribution.Target(by, lever(words), Named.of(Column.class, words.get(1)));
      case "correction" -> new Contribution.Correction(by, lever(words), way(words), words.get(2));
      case "undo", "carryOn" ->
          new Contribution.History(by, lever(words), way(words), act.verb().equals("undo"));
      case "bar" ->
          new Contribution.Limit(by, lever(words), way(words), Named.of(Scope.class, words.get(2)));
      case "fewer" -> new Contribution.Fewer(by, lever(words));
      case "cap" ->
          new Contribution.Cap(by, lever(words), way(words), Named.of(Mark.class, words.get(2)));
      case "doubles" -> new Contribution.Doubles(by, words);
      case "setsAside" -> new Contribution.SetAside(by, words);
      case "leads" -> new Contribution.Lead(by, lever(words), Named.of(Rank.class, words.get(1)));
      default -> throw new IllegalArgumentException("no part in what to do now: " + act.verb());
    };
  }

  private static Lever lever(List<String> words) {
    return RuleTable.lever(words.get(0));
  }

  private static Direction way(List<String> words) {
    return RuleTable.direction(words.get(1));
  }
}
