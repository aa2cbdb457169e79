package insidelift.engine.consultation;

import static insidelift.engine.consultation.RuleStates.MAYBE;
import static insidelift.engine.consultation.RuleStates.NO;
import static insidelift.engine.consultation.RuleStates.YES;

import insidelift.engine.consultation.Hinges.Hinge;
import insidelift.engine.consultation.RuleTable.Asked;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Whether all situations of a box come to the same thing to do now. It follows the arbiter's order
 * from above — a fault, an undo, the track's targets, corrections — and looks no further than what
 * is decided: under an undo that moves, no correction can matter. Where it says "settled", every
 * situation of the box has the same {@link Now}; where it does not, it names an open question that
 * stands in the way. Not for several threads.
 */
final class Bounds {

  private static final List<Lever> LEVERS = List.of(Lever.values());
  private static final List<Direction> WAYS = List.of(Direction.values());

  private final RuleStates rules;
  private final RuleTable table;
  private final Listening listening;
  private final Hinges hinges;
  private final int[] enough;
  private final BitSet signature = new BitSet();
  private final boolean[] safety;
  private final int[] blocking;
  private Hinge inTheWay;
  private boolean known;

  Bounds(RuleStates rules, Grid grid) {
    this.rules = rules;
    this.table = rules.table();
    this.listening = new Listening(rules);
    this.hinges = new Hinges(rules);
    this.blocking = table.with("check").stream().mapToInt(Integer::intValue).toArray();
    this.safety = new boolean[table.lines().size()];
    for (int line : blocking) {
      safety[line] = table.safety(line);
    }
    List<Integer> places = new ArrayList<>();
    for (int q = 0; q < grid.size(); q++) {
      if (Advisor.enough(grid.question(q))) {
        places.add(q);
      }
    }
    this.enough = places.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Whether a box is settled. */
  boolean settled(int[] box) {
    rules.look(box);
    signature.clear();
    inTheWay = null;
    known = false;
    for (int question : enough) {
      known |= (box[question] & Grid.ABSENT) == 0;
    }
    boolean fault = blocked();
    if (inTheWay != null || fault) {
      return inTheWay == null;
    }
    return known ? levers() : nothingKnown(box);
  }

  /** Whether anything in the box last looked at still hangs on a question. */
  boolean heard(int question) {
    boolean first = !known && Arrays.stream(enough).anyMatch(one -> one == question);
    return first || listening.heard(question);
  }

  /** Whether a fault stands in every situation of a box. */
  boolean fault(int[] box) {
    rules.look(box);
    return Arrays.stream(blocking).anyMatch(line -> rules.state(line) == YES);
  }

  /** What the settled box comes to: boxes with the same one come to the same {@link Now}. */
  BitSet signature() {
    return (BitSet) signature.clone();
  }

  /** The open question that keeps the box from being settled. */
  Hinge inTheWay() {
    return inTheWay;
  }

  /** Faults. Once one stands, only the safety checks can add to what is to be put right now. */
  private boolean blocked() {
    boolean fault = false;
    for (int line : blocking) {
      fault |= rules.state(line) == YES;
    }
    for (int line : blocking) {
      if (rules.state(line) == MAYBE && (!fault || safety[line])) {
        inTheWay = hinges.hinge(line);
        return fault;
      }
      if (fault && rules.state(line) == YES && safety[line]) {
        signature.set(line);
      }
    }
    if (fault) {
      signature.set(table.lines().size());
    }
    return fault;
  }

  /** Where nothing has to be known, the box is settled if nothing can be. */
  private boolean nothingKnown(int[] box) {
    for (int question : enough) {
      if (box[question] != Grid.ABSENT) {
        return waits(new Hinge(question, Grid.ABSENT));
      }
    }
    signature.set(table.lines().size() + 1);
    return true;
  }

  private boolean levers() {
    List<Lever> free = new ArrayList<>(List.of(Lever.values()));
    boolean moving = false;
    for (Asked asked : table.asked()) {
      if (asked.undo() && rules.state(asked.line()) != NO) {
        if (!certain(asked)) {
          return false;
        }
        if (aside(asked) == NO) {
          free.remove(asked.lever());
          moving |= moves(asked);
        }
      }
    }
    if (moving) {
      return true;
    }
    List<Lever> untouched = List.copyOf(free);
    for (Asked asked : table.asked()) {
      if (asked.target() && rules.state(asked.line()) != NO && untouched.contains(asked.lever())) {
        if (!certain(asked)) {
          return false;
        }
        if (aside(asked) == NO && rules.direction(asked) != Direction.HOLD) {
          free.remove(asked.lever());
          moving |= moves(asked);
        }
      }
    }
    return moving || corrections(free);
  }

  /** Whether all that an undo or a target hangs on is decided. */
  private boolean certain(Asked asked) {
    Direction way = rules.direction(asked);
    if (rules.state(asked.line()) == MAYBE || way == null) {
      return waits(hinges.hinge(asked));
    }
    if (aside(asked) == MAYBE) {
      return waits(hingeOfAside(asked));
    }
    if (rules.barred(asked, way) == MAYBE) {
      return waits(hinges.hingeOfBar(asked, way));
    }
    if (asked.target() && rules.fewer(asked.lever()) == YES) {
      signature.set(table.lines().size() + 2 + LEVERS.indexOf(asked.lever()));
    }
    signature.set(asked.line());
    if (aside(asked) == YES) {
      signature.set(asides() + asked.place());
    }
    bars(asked, way);
    return true;
  }

  /** Where the signature says which wishes are set aside: behind all that it says of strengths. */
  private int asides() {
    return table.lines().size() + 16 + 64 * table.lines().size();
  }

  private boolean moves(Asked asked) {
    Direction way = rules.direction(asked);
    boolean free = aside(asked) == NO && rules.barred(asked, way) == NO;
    return free && (asked.target() ? way != Direction.HOLD : rules.movable(asked));
  }

  private void bars(Asked asked, Direction way) {
    if (rules.barred(asked, way) == YES) {
      signature.set(
          table.lines().size() + 4 + 2 * LEVERS.indexOf(asked.lever()) + WAYS.indexOf(way));
    }
  }

  private boolean corrections(List<Lever> free) {
    List<Asked> possible = new ArrayList<>();
    for (Asked asked : table.asked()) {
      if (correction(asked)
          && free.contains(asked.lever())
          && rules.state(asked.line()) != NO
          && rules.barred(asked, asked.direction()) != YES
          && aside(asked) != YES) {
        possible.add(asked);
      }
    }
    if (possible.isEmpty()) {
      // Whatever else is open, no lever can move.
      signature.clear();
      signature.set(table.lines().size() + 8);
      return true;
    }
    for (Asked asked : possible) {
      if (rules.state(asked.line()) == MAYBE) {
        return waits(hinges.hinge(asked.line()));
      }
      if (rules.barred(asked, asked.direction()) == MAYBE) {
        return waits(hinges.hingeOfBar(asked, asked.direction()));
      }
      if (aside(asked) == MAYBE) {
        return waits(hingeOfAside(asked));
      }
    }
    // All that can move stands for certain: what is left is its strength, its size, its turn.
    for (Asked asked : possible) {
      signature.set(asked.line());
      if (!sized(asked) || (possible.size() > 1 && !ranked(asked, possible))) {
        return false;
      }
    }
    return true;
  }

  private static boolean correction(Asked asked) {
    return !asked.target() && !asked.undo();
  }

  /** Whether the number of positions is decided: two for strong evidence and a severe complaint. */
  private boolean sized(Asked asked) {
    for (int line : table.doubling(asked)) {
      if (rules.state(line) != NO && rules.mostStrength(asked) >= Weigher.STRONG) {
        if (rules.state(line) == MAYBE) {
          return waits(hinges.hinge(line));
        }
        if (rules.leastStrength(asked) < Weigher.STRONG) {
          return waits(hinges.hinge(asked));
        }
        if (rules.fewer(asked.lever()) == MAYBE) {
          return waits(hinges.hingeOfFewer(asked.lever()));
        }
        signature.set(line);
        if (rules.fewer(asked.lever()) == YES) {
          signature.set(table.lines().size() + 2 + LEVERS.indexOf(asked.lever()));
        }
      }
    }
    return true;
  }

  /** Whether the order among several that can move is decided. */
  private boolean ranked(Asked asked, List<Asked> possible) {
    boolean both = possible.stream().anyMatch(other -> other.lever() != asked.lever());
    boolean opposed =
        possible.stream()
            .anyMatch(
                other -> other.lever() == asked.lever() && other.direction() != asked.direction());
    if (!both && !opposed) {
      return true;
    }
    if (rules.leastStrength(asked) != rules.mostStrength(asked)) {
      return waits(hinges.hinge(asked));
    }
    strength(asked);
    if (both) {
      for (int line : table.with("leads")) {
        if (rules.state(line) == MAYBE) {
          return waits(hinges.hinge(line));
        }
        signature.set(line, rules.state(line) == YES);
      }
    }
    return true;
  }

  private void strength(Asked asked) {
    int base = table.lines().size() + 16 + 64 * asked.line();
    signature.set(base + Math.max(0, Math.min(63, rules.leastStrength(asked) + 20)));
  }

  /** Whether the proposals by a claim are set aside. */
  private byte aside(Asked asked) {
    byte state = NO;
    for (int line : table.settingAside(asked)) {
      state = RuleStates.most(state, rules.state(line));
    }
    return state;
  }

  private Hinge hingeOfAside(Asked asked) {
    for (int line : table.settingAside(asked)) {
      if (rules.state(line) == MAYBE) {
        return hinges.hinge(line);
      }
    }
    return null;
  }

  private boolean waits(Hinge hinge) {
    inTheWay = hinge;
    return false;
  }
}
