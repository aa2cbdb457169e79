package insidelift.engine.consultation;

import static insidelift.engine.consultation.RuleStates.MAYBE;
import static insidelift.engine.consultation.RuleStates.NO;
import static insidelift.engine.consultation.RuleStates.YES;

import insidelift.engine.consultation.RuleTable.Asked;
import insidelift.engine.consultation.RuleTable.Line;
import insidelift.engine.consultation.RuleTable.Seen;
import insidelift.shared.Direction;

/** Which questions anything still listens to in a box: a first, quick bound on what can matter. */
final class Listening {

  private final RuleStates rules;
  private final RuleTable table;
  private final Line[] lines;
  private long looked = -1;
  private boolean alive;

  Listening(RuleStates rules) {
    this.rules = rules;
    this.table = rules.table();
    this.lines = table.lines().toArray(Line[]::new);
  }

  /**
   * Whether anything that is listened to still hangs on a question. Evidence is listened to only
   * while a wish or a rule that reads its finding can come true.
   */
  boolean heard(int question) {
    if (looked != rules.looks()) {
      looked = rules.looks();
      alive = anyAlive();
    }
    for (int line : table.reading(question)) {
      if (rules.state(line) != NO
          && hangs(lines[line], question)
          && (table.blocks(line) || (alive && listened(lines[line])))) {
        return true;
      }
    }
    return false;
  }

  /** Whether any wish can still come true: where every move is barred, only faults are heard. */
  private boolean anyAlive() {
    for (Asked asked : table.asked()) {
      if (rules.state(asked.line()) != NO) {
        Direction way = rules.direction(asked);
        boolean either =
            way == null
                && RuleStates.least(
                        rules.barred(asked, Direction.MORE), rules.barred(asked, Direction.LESS))
                    != YES;
        if (either || (way != null && way != Direction.HOLD && rules.barred(asked, way) != YES)) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean hangs(Line line, int question) {
    for (Seen seen : line.answers()) {
      for (int i = 0; i < seen.questions().length; i++) {
        if (seen.questions()[i] == question
            && rules.seen(seen, i) == MAYBE
            && rules.seen(seen) == MAYBE) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean listened(Line line) {
    if (line.evidence().isEmpty()) {
      return true;
    }
    for (int finding : line.evidence()) {
      for (Asked asked : table.asked()) {
        if (asked.finding() == finding && rules.state(asked.line()) != NO) {
          return true;
        }
      }
      for (int reader : table.readers(finding)) {
        if (rules.state(reader) != NO) {
          return true;
        }
      }
    }
    return false;
  }
}
