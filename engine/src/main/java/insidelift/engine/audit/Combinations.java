package insidelift.engine.audit;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Every combination of the states of any so many questions, numbered, and which of them have been
 * met. A group of questions has its rank in the combinatorial number system (D. E. Knuth, The Art
 * of Computer Programming 4A, 7.2.1.3, from memory), the states in it count up from there.
 */
final class Combinations {

  private final int[] allowed;
  private final int[] states;
  private final int strength;
  private final int[][] binomial;
  private final int[][] groups;
  private final int[] base;
  private final int size;
  private final BitSet met = new BitSet();

  /**
   * Combinations of which none is met yet.
   *
   * @param allowed the states of each question, as bits
   * @param strength of how many questions each combination is
   * @throws ArithmeticException if there are more than an int can number
   */
  Combinations(int[] allowed, int strength) {
    this.allowed = allowed;
    this.states = Arrays.stream(allowed).map(Integer::bitCount).toArray();
    this.strength = strength;
    this.binomial = binomials(allowed.length + 1, strength + 1);
    this.groups = new int[binomial[allowed.length][strength]][];
    this.base = new int[groups.length];
    fill(new int[strength], 0, 0);
    int next = 0;
    for (int group = 0; group < groups.length; group++) {
      base[group] = next;
      next = Math.addExact(next, size(group));
    }
    this.size = next;
  }

  private static int[][] binomials(int n, int k) {
    int[][] table = new int[n + 1][k + 1];
    for (int i = 0; i <= n; i++) {
      table[i][0] = 1;
      for (int j = 1; j <= Math.min(i, k); j++) {
        table[i][j] = Math.addExact(table[i - 1][j - 1], j <= i - 1 ? table[i - 1][j] : 0);
      }
    }
    return table;
  }

  private void fill(int[] chosen, int depth, int from) {
    if (depth == strength) {
      int rank = 0;
      for (int i = 0; i < strength; i++) {
        rank += binomial[chosen[i]][i + 1];
      }
      groups[rank] = chosen.clone();
      return;
    }
    for (int q = from; q < allowed.length; q++) {
      chosen[depth] = q;
      fill(chosen, depth + 1, q + 1);
    }
  }

  /** How many combinations there are. */
  int size() {
    return size;
  }

  /** How many groups of questions there are. */
  int groups() {
    return groups.length;
  }

  /** The questions of a group, rising. */
  int[] questions(int group) {
    return groups[group];
  }

  /** How many combinations a group has. */
  int size(int group) {
    int product = 1;
    for (int q : groups[group]) {
      product = Math.multiplyExact(product, states[q]);
    }
    return product;
  }

  /** Whether a combination of a group has been met. */
  boolean isMet(int group, int code) {
    return met.get(base[group] + code);
  }

  /** Counts a combination of a group as met. */
  void meet(int group, int code) {
    met.set(base[group] + code);
  }

  /** Counts all combinations of a row, one state each, as met. */
  void meet(int[] row) {
    for (int group = 0; group < groups.length; group++) {
      int code = 0;
      for (int q : groups[group]) {
        code = code * states[q] + place(q, row[q]);
      }
      meet(group, code);
    }
  }

  /** Puts the states of a combination into a box. */
  void put(int group, int code, int[] box) {
    int rest = code;
    for (int i = strength - 1; i >= 0; i--) {
      int q = groups[group][i];
      box[q] = state(q, rest % states[q]);
      rest /= states[q];
    }
  }

  /** The state at a place among the allowed ones of its question. */
  int state(int question, int place) {
    int rest = allowed[question];
    for (int i = 0; i < place; i++) {
      rest &= rest - 1;
    }
    return Integer.lowestOneBit(rest);
  }

  private int place(int question, int state) {
    return Integer.bitCount(allowed[question] & (state - 1));
  }

  /**
   * How many combinations that have not been met each state of a question would add to a box.
   *
   * @param set which questions of the box have their one state
   * @return a number for each allowed state, in their order
   */
  int[] gains(int question, int[] box, boolean[] set) {
    return new Tally(question, box, set).gains;
  }

  /** One count over all groups of the questions that are set which hold the question in doubt. */
  private final class Tally {

    private final int[] known = new int[allowed.length];
    private final int[] places = new int[allowed.length];
    private final int[] gains;
    private int count;
    private int at;

    Tally(int question, int[] box, boolean[] set) {
      gains = new int[states[question]];
      for (int q = 0; q < box.length; q++) {
        if (q == question) {
          at = count;
          known[count++] = q;
        } else if (set[q]) {
          places[count] = place(q, box[q]);
          known[count++] = q;
        }
      }
      choose(0, 0, 0, 0, 0);
    }

    /**
     * Chooses the next question of a group.
     *
     * @param stride how far apart the states in doubt are in the numbering, 0 before their question
     */
    private void choose(int depth, int from, int rank, int code, int stride) {
      if (depth == strength) {
        for (int i = 0, bit = base[rank] + code; i < gains.length; i++, bit += stride) {
          gains[i] += met.get(bit) ? 0 : 1;
        }
        return;
      }
      int first = from;
      int last = count - (strength - depth);
      if (stride == 0) {
        // No group goes past the question in doubt without it, and the last place is kept for it.
        first = depth == strength - 1 ? at : from;
        last = Math.min(last, at);
      }
      for (int i = first; i <= last; i++) {
        int q = known[i];
        choose(
            depth + 1,
            i + 1,
            rank + binomial[q][depth + 1],
            code * states[q] + places[i],
            i == at ? 1 : stride * states[q]);
      }
    }
  }
}
