package insidelift.engine.consultation;

import static insidelift.engine.consultation.RuleStates.MAYBE;
import static insidelift.engine.consultation.RuleStates.NO;

import insidelift.engine.consultation.RuleStates.Bar;
import insidelift.engine.consultation.RuleTable.Asked;
import insidelift.engine.consultation.RuleTable.BarredTest;
import insidelift.engine.consultation.RuleTable.Found;
import insidelift.engine.consultation.RuleTable.Line;
import insidelift.engine.consultation.RuleTable.Piece;
import insidelift.engine.consultation.RuleTable.Proposed;
import insidelift.engine.consultation.RuleTable.Seen;
import insidelift.shared.Direction;
import insidelift.shared.Lever;

/**
 * Where a box that is undecided can be split: an open question on which what is asked for hangs.
 */
final class Hinges {

  /** An open question, and the states of it that decide something. */
  record Hinge(int question, int mask) {}

  private final RuleStates states;
  private final RuleTable table;

  /** Hinges of whatever box the states look at. */
  Hinges(RuleStates states) {
    this.states = states;
    this.table = states.table();
  }

  /** An open question on which the state of a rule hangs; null if there is none. */
  Hinge hinge(int line) {
    Line of = table.lines().get(line);
    for (Seen seen : of.answers()) {
      if (states.seen(seen) == MAYBE) {
        for (int i = 0; i < seen.questions().length; i++) {
          if (states.seen(seen, i) == MAYBE) {
            return new Hinge(seen.questions()[i], seen.masks()[i]);
          }
        }
      }
    }
    for (Found found : of.findings()) {
      if (states.found(found) == MAYBE) {
        return hingeOfFinding(found.finding());
      }
    }
    for (BarredTest test : of.barred()) {
      for (Bar bar : states.bars()) {
        if (bar.lever() == test.lever()
            && bar.direction() == test.direction()
            && states.state(bar.line()) == MAYBE) {
          return hinge(bar.line());
        }
      }
    }
    for (Proposed proposed : of.proposals()) {
      for (Asked asked : proposed.candidates()) {
        Hinge hinge = states.state(asked.line()) == NO ? null : hinge(asked);
        if (hinge != null) {
          return hinge;
        }
      }
    }
    return null;
  }

  /** An open question on which a wish hangs: whether it is made, which way, how strongly. */
  Hinge hinge(Asked asked) {
    if (states.state(asked.line()) == MAYBE) {
      return hinge(asked.line());
    }
    if (asked.target() && states.fewer(asked.lever()) == MAYBE) {
      return hingeOfFewer(asked.lever());
    }
    return asked.finding() < 0 ? null : hingeOfFinding(asked.finding());
  }

  /** An open question on which it hangs whether a wish is barred. */
  Hinge hingeOfBar(Asked asked, Direction direction) {
    for (Bar bar : states.bars()) {
      if (RuleStates.stops(bar, asked, direction) && states.state(bar.line()) == MAYBE) {
        return hinge(bar.line());
      }
    }
    return null;
  }

  Hinge hingeOfFewer(Lever lever) {
    for (int line : states.takingOff(lever)) {
      if (states.state(line) == MAYBE) {
        return hinge(line);
      }
    }
    return null;
  }

  private Hinge hingeOfFinding(int finding) {
    for (Piece[] observation : table.evidence(finding)) {
      for (Piece piece : observation) {
        if (states.state(piece.line()) == MAYBE) {
          return hinge(piece.line());
        }
      }
    }
    return null;
  }
}
