package insidelift.engine.consultation;

import insidelift.engine.consultation.RuleTable.Asked;
import insidelift.engine.consultation.RuleTable.BarredTest;
import insidelift.engine.consultation.RuleTable.Found;
import insidelift.engine.consultation.RuleTable.Line;
import insidelift.engine.consultation.RuleTable.Piece;
import insidelift.engine.consultation.RuleTable.Proposed;
import insidelift.engine.consultation.RuleTable.Seen;
import insidelift.engine.sizing.Sized;
import insidelift.engine.sizing.Sizer;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Named;
import insidelift.shared.Scope;
import insidelift.shared.index.RuleIndex.Act;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which rules speak in all situations of a box, in none, or in some. Evidence is kept as an
 * interval: the least and the most it can sum to. Every figure errs on the wide side only, so what
 * is found to hold for a box holds for each of its situations. A rule is looked at when it is first
 * asked for. Not for several threads.
 */
final class RuleStates {

  static final byte NO = 0;
  static final byte MAYBE = 1;
  static final byte YES = 2;
  private static final byte NOT_LOOKED_AT = -1;

  /** A bar that a rule can set. */
  record Bar(int line, Lever lever, Direction direction, Scope scope) {}

  private final RuleTable table;
  private final Sizer sizer;
  private final Bar[] bars;
  private final Map<Lever, int[]> fewer = new EnumMap<>(Lever.class);
  private final Line[] lines;
  private final Seen[][] answers;
  private final Direction[] ways;
  private final Direction[] fewerWays;
  private final boolean[] changedByFewer;
  private final boolean[] movable;
  private final byte[] states;
  private final byte[] known;
  private final int[] least;
  private final int[] most;
  private int[] box = new int[0];
  private long looks;

  RuleStates(RuleTable table, Sizer sizer) {
    this.table = table;
    this.sizer = sizer;
    this.lines = table.lines().toArray(Line[]::new);
    this.answers =
        table.lines().stream()
            .map(line -> line.answers().toArray(Seen[]::new))
            .toArray(Seen[][]::new);
    this.states = new byte[lines.length];
    this.known = new byte[table.findings()];
    this.least = new int[table.findings()];
    this.most = new int[table.findings()];
    List<Bar> found = new ArrayList<>();
    for (int line : table.with("bar")) {
      for (Act act : lines[line].acts()) {
        found.add(
            new Bar(
                line,
                RuleTable.lever(act.words().get(0)),
                RuleTable.direction(act.words().get(1)),
                Named.of(Scope.class, act.words().get(2))));
      }
    }
    this.bars = found.toArray(Bar[]::new);
    int wishes = table.asked().size();
    this.ways = new Direction[wishes];
    this.fewerWays = new Direction[wishes];
    this.changedByFewer = new boolean[wishes];
    this.movable = new boolean[wishes];
    table.asked().forEach(this::size);
    for (Lever lever : Lever.values()) {
      fewer.put(
          lever,
          table.with("fewer").stream()
              .filter(line -> lines[line].acts().get(0).words().contains(lever.id()))
              .mapToInt(Integer::intValue)
              .toArray());
    }
  }

  /** Sizes hang on the kart only, so they are worked out once. */
  private void size(Asked asked) {
    int place = asked.place();
    if (asked.target()) {
      Sized whole = sizer.target(asked.lever(), asked.column(), false);
      Sized less = sizer.target(asked.lever(), asked.column(), true);
      ways[place] = whole.direction();
      fewerWays[place] = less.direction();
      changedByFewer[place] = !whole.equals(less);
    } else {
      movable[place] =
          asked.undo()
              ? sizer.undo(asked.lever(), asked.direction()).moves()
              : sizer.correction(asked.lever(), asked.direction(), 1, Optional.empty()).moves();
    }
  }

  /** Turns to a box. */
  void look(int[] at) {
    looks++;
    box = at;
    Arrays.fill(states, NOT_LOOKED_AT);
    Arrays.fill(known, NOT_LOOKED_AT);
  }

  /** How many boxes have been looked at: what was found for one is not true of the next. */
  long looks() {
    return looks;
  }

  RuleTable table() {
    return table;
  }

  /** The bars that rules can set. */
  Bar[] bars() {
    return bars;
  }

  /** The rules that take a position off a lever. */
  int[] takingOff(Lever lever) {
    return fewer.get(lever);
  }

  Sizer sizer() {
    return sizer;
  }

  byte state(int line) {
    if (states[line] == NOT_LOOKED_AT) {
      states[line] = state(lines[line], answers[line]);
    }
    return states[line];
  }

  private byte state(Line line, Seen[] answers) {
    byte state = YES;
    for (Seen seen : answers) {
      state = least(state, seen(seen));
      if (state == NO) {
        return NO;
      }
    }
    for (Found found : line.findings()) {
      state = least(state, found(found));
      if (state == NO) {
        return NO;
      }
    }
    for (BarredTest barred : line.barred()) {
      state = least(state, flip(barred(barred.lever(), barred.direction()), barred.absent()));
    }
    for (Proposed proposed : line.proposals()) {
      state = least(state, flip(proposed(proposed), proposed.absent()));
    }
    return state;
  }

  byte seen(Seen seen) {
    int[] questions = seen.questions();
    int[] masks = seen.masks();
    byte state = NO;
    for (int i = 0; i < questions.length && state != YES; i++) {
      state = most(state, state(box[questions[i]], masks[i]));
    }
    return flip(state, seen.absent());
  }

  byte seen(Seen seen, int i) {
    return state(box[seen.questions()[i]], seen.masks()[i]);
  }

  private static byte state(int possible, int mask) {
    int fitting = possible & mask;
    return fitting == 0 ? NO : fitting == possible ? YES : MAYBE;
  }

  byte found(Found found) {
    int finding = found.finding();
    sum(finding);
    byte state = MAYBE;
    if (known[finding] == NO || most[finding] < found.least()) {
      state = NO;
    } else if (known[finding] == YES && least[finding] >= found.least()) {
      state = YES;
    }
    return flip(state, found.absent());
  }

  /** What rests on the same observation counts once, with the strongest weight. */
  private void sum(int finding) {
    if (known[finding] != NOT_LOOKED_AT) {
      return;
    }
    known[finding] = NO;
    least[finding] = 0;
    most[finding] = 0;
    for (Piece[] observation : table.evidence(finding)) {
      int sure = -1;
      for (Piece piece : observation) {
        known[finding] = most(known[finding], state(piece.line()));
        if (state(piece.line()) == YES) {
          sure = Math.max(sure, Math.abs(piece.weight()));
        }
      }
      int low = sure < 0 ? 0 : Integer.MAX_VALUE;
      int high = sure < 0 ? 0 : Integer.MIN_VALUE;
      for (Piece piece : observation) {
        if (state(piece.line()) != NO && Math.abs(piece.weight()) >= sure) {
          low = Math.min(low, piece.weight());
          high = Math.max(high, piece.weight());
        }
      }
      least[finding] += low;
      most[finding] += high;
    }
  }

  private byte barred(Lever lever, Direction direction) {
    byte state = NO;
    for (Bar bar : bars) {
      if (bar.lever() == lever && bar.direction() == direction) {
        state = most(state, state(bar.line()));
      }
    }
    return state;
  }

  /** Whether a bar stands in the way of a wish; targets and undos heed only bars on every move. */
  byte barred(Asked asked, Direction direction) {
    byte state = NO;
    for (Bar bar : bars) {
      if (stops(bar, asked, direction)) {
        state = most(state, state(bar.line()));
      }
    }
    return state;
  }

  static boolean stops(Bar bar, Asked asked, Direction direction) {
    return bar.lever() == asked.lever()
        && bar.direction() == direction
        && (bar.scope() == Scope.ALL || (!asked.target() && !asked.undo()));
  }

  private byte proposed(Proposed proposed) {
    byte state = NO;
    for (Asked asked : proposed.candidates()) {
      if (state(asked.line()) != NO) {
        state = most(state, least(state(asked.line()), fits(proposed, asked)));
      }
    }
    return state;
  }

  private byte fits(Proposed proposed, Asked asked) {
    byte fits = YES;
    if (proposed.direction() != null) {
      Direction way = direction(asked);
      fits = way == null ? MAYBE : way == proposed.direction() ? YES : NO;
    }
    if (proposed.least() == Integer.MIN_VALUE) {
      return fits;
    }
    int needed = proposed.least();
    return least(
        fits, leastStrength(asked) >= needed ? YES : mostStrength(asked) < needed ? NO : MAYBE);
  }

  /** Which way a wish goes; null where it can be either. */
  Direction direction(Asked asked) {
    if (!asked.target()) {
      return asked.direction();
    }
    byte less = fewer(asked.lever());
    boolean either = less == MAYBE && changedByFewer[asked.place()];
    return either ? null : (less == YES ? fewerWays : ways)[asked.place()];
  }

  /** Whether a move by one position that way is a move at all on this kart. */
  boolean movable(Asked asked) {
    return movable[asked.place()];
  }

  byte fewer(Lever lever) {
    byte state = NO;
    for (int line : fewer.get(lever)) {
      state = most(state, state(line));
    }
    return state;
  }

  int leastStrength(Asked asked) {
    if (asked.finding() < 0) {
      return Weigher.STRONG;
    }
    sum(asked.finding());
    return least[asked.finding()];
  }

  int mostStrength(Asked asked) {
    if (asked.finding() < 0) {
      return Weigher.STRONG;
    }
    sum(asked.finding());
    return most[asked.finding()];
  }

  static byte most(byte one, byte other) {
    return one > other ? one : other;
  }

  static byte least(byte one, byte other) {
    return one < other ? one : other;
  }

  private static byte flip(byte state, boolean absent) {
    return absent ? (byte) (YES - state) : state;
  }
}
