package insidelift.engine.audit;

import insidelift.engine.consultation.Consistent;
import insidelift.engine.consultation.Grid;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Situations that together hold every sensible combination of the states of any few questions, "not
 * known" being a state too. In the systems that were looked into, nearly all failures needed three
 * conditions or fewer and none more than six (D. R. Kuhn, D. R. Wallace and A. M. Gallo, Software
 * Fault Interactions and Implications for Software Testing, IEEE Transactions on Software
 * Engineering 30(6), 2004; NIST SP 800-142, 2010; both from memory).
 *
 * <p>Each situation begins with a combination that is still missing and is filled up with the state
 * that adds most (after the greedy method of D. M. Cohen, S. R. Dalal, M. L. Fredman and G. C.
 * Patton, 1997, from memory). What makes no sense beside the rest is never tried.
 */
final class CoveringArray {

  private final Grid grid;
  private final Consistent consistent;
  private final int[] allowed;
  private final int strength;
  private final long[][] binomial;
  private final int[] base;
  private final int[][] groups;
  private final int[] states;
  private final BitSet done = new BitSet();
  private int combinations;
  private int senseless;

  /**
   * An array yet to be built.
   *
   * @param allowed the states of each question that are tried, as bits of the grid
   * @param strength of how many questions every combination is held
   */
  CoveringArray(Grid grid, Consistent consistent, int[] allowed, int strength) {
    this.grid = grid;
    this.consistent = consistent;
    this.allowed = allowed.clone();
    this.strength = strength;
    this.states = Arrays.stream(allowed).map(Integer::bitCount).toArray();
    this.binomial = binomials(grid.size() + 1, strength + 1);
    int count = Math.toIntExact(binomial[grid.size()][strength]);
    this.base = new int[count];
    this.groups = new int[count][];
    number();
  }

  /** How many combinations are sensible; known once the array is built. */
  int combinations() {
    return combinations - senseless;
  }

  /** The situations, as boxes of single states. */
  List<int[]> build() {
    List<int[]> rows = new ArrayList<>();
    for (int group = 0; group < groups.length; group++) {
      int[] questions = groups[group];
      int size = size(questions);
      for (int code = 0; code < size; code++) {
        if (!done.get(base[group] + code)) {
          int[] row = row(questions, code);
          if (row == null) {
            senseless++;
            done.set(base[group] + code);
          } else {
            rows.add(row);
            mark(row);
          }
        }
      }
    }
    return rows;
  }

  private static long[][] binomials(int n, int k) {
    long[][] table = new long[n + 1][k + 1];
    for (int i = 0; i <= n; i++) {
      table[i][0] = 1;
      for (int j = 1; j <= Math.min(i, k); j++) {
        table[i][j] = table[i - 1][j - 1] + (j <= i - 1 ? table[i - 1][j] : 0);
      }
    }
    return table;
  }

  private void number() {
    int[] chosen = new int[strength];
    fill(chosen, 0, 0);
    int next = 0;
    for (int i = 0; i < groups.length; i++) {
      base[i] = next;
      next = Math.addExact(next, size(groups[i]));
    }
    combinations = next;
  }

  private void fill(int[] chosen, int depth, int from) {
    if (depth == strength) {
      groups[rank(chosen)] = chosen.clone();
      return;
    }
    for (int q = from; q < grid.size(); q++) {
      chosen[depth] = q;
      fill(chosen, depth + 1, q + 1);
    }
  }

  /** The place of a rising group of questions among all of its size. */
  private int rank(int[] questions) {
    long rank = 0;
    for (int i = 0; i < strength; i++) {
      rank += questions[i] >= i + 1 ? binomial[questions[i]][i + 1] : 0;
    }
    return (int) rank;
  }

  private int size(int[] questions) {
    int size = 1;
    for (int q : questions) {
      size *= Integer.bitCount(allowed[q]);
    }
    return size;
  }

  /** The place of a state among the allowed ones of its question. */
  private int place(int question, int state) {
    return Integer.bitCount(allowed[question] & (state - 1));
  }

  private int[] row(int[] questions, int code) {
    int[] box = allowed.clone();
    boolean[] set = new boolean[box.length];
    int rest = code;
    for (int i = strength - 1; i >= 0; i--) {
      int q = questions[i];
      int states = Integer.bitCount(allowed[q]);
      box[q] = state(q, rest % states);
      rest /= states;
      set[q] = true;
    }
    if (!sensible(box)) {
      return null;
    }
    for (int q = 0; q < box.length; q++) {
      if (!set[q]) {
        box[q] = best(q, box, set);
        if (box[q] == 0) {
          return null;
        }
        set[q] = true;
      }
    }
    return sensible(box) ? box : null;
  }

  private int state(int question, int place) {
    int rest = allowed[question];
    for (int i = 0; i < place; i++) {
      rest &= rest - 1;
    }
    return Integer.lowestOneBit(rest);
  }

  private boolean sensible(int[] box) {
    boolean[] open = new boolean[box.length];
    Arrays.fill(open, true);
    return consistent.narrow(box.clone(), open);
  }

  /** The sensible state that adds most combinations; 0 where none makes sense. */
  private int best(int question, int[] box, boolean[] set) {
    int best = 0;
    int most = -1;
    int all = box[question];
    for (int rest = all; rest != 0; rest &= rest - 1) {
      int state = Integer.lowestOneBit(rest);
      box[question] = state;
      if (sensible(box)) {
        int gain = gain(question, box, set);
        if (gain > most) {
          most = gain;
          best = state;
        }
      }
    }
    box[question] = all;
    return best;
  }

  private int gain(int question, int[] box, boolean[] set) {
    int[] known = new int[box.length];
    int[] places = new int[box.length];
    int count = 0;
    for (int q = 0; q < box.length; q++) {
      if (set[q] || q == question) {
        places[count] = place(q, box[q]);
        known[count++] = q;
      }
    }
    return gain(question, known, places, count, new Chosen(0, 0, 0, 0, false));
  }

  /** A rising group of questions while it is chosen: its rank, its code, and where to go on. */
  private record Chosen(int size, int from, long rank, int code, boolean whole) {}

  /** How many groups that hold the question are not done yet. */
  private int gain(int question, int[] known, int[] places, int count, Chosen chosen) {
    if (chosen.size() == strength) {
      return done.get(base[(int) chosen.rank()] + chosen.code()) ? 0 : 1;
    }
    int gain = 0;
    for (int i = chosen.from(); i <= count - (strength - chosen.size()); i++) {
      int q = known[i];
      boolean whole = chosen.whole() || q == question;
      // The last place is kept for the question itself, and none is chosen past it without it.
      if (whole || chosen.size() < strength - 1) {
        gain +=
            gain(
                question,
                known,
                places,
                count,
                new Chosen(
                    chosen.size() + 1,
                    i + 1,
                    chosen.rank() + binomial[q][chosen.size() + 1],
                    chosen.code() * states[q] + places[i],
                    whole));
      }
      if (q == question) {
        break;
      }
    }
    return gain;
  }

  private int bit(int[] questions, int[] box) {
    int code = 0;
    for (int q : questions) {
      code = code * Integer.bitCount(allowed[q]) + place(q, box[q]);
    }
    return base[rank(questions)] + code;
  }

  private void mark(int[] row) {
    for (int[] group : groups) {
      done.set(bit(group, row));
    }
  }
}
