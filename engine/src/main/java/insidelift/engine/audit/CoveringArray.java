package insidelift.engine.audit;

import insidelift.engine.consultation.foresight.Consistent;
import insidelift.engine.consultation.foresight.Grid;
import java.util.ArrayList;
import java.util.Arrays;
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

  private final Consistent consistent;
  private final int[] allowed;
  private final Combinations combinations;
  private int senseless;

  /**
   * An array yet to be built.
   *
   * @param allowed the states of each question that are tried, as bits of the grid
   * @param strength of how many questions every combination is held
   */
  CoveringArray(Grid grid, Consistent consistent, int[] allowed, int strength) {
    if (allowed.length != grid.size()) {
      throw new IllegalArgumentException("states of " + allowed.length + " questions");
    }
    this.consistent = consistent;
    this.allowed = allowed.clone();
    this.combinations = new Combinations(this.allowed, strength);
  }

  /** How many combinations are sensible; known once the array is built. */
  int combinations() {
    return combinations.size() - senseless;
  }

  /** The situations, as boxes of single states. */
  List<int[]> build() {
    List<int[]> rows = new ArrayList<>();
    for (int group = 0; group < combinations.groups(); group++) {
      int size = combinations.size(group);
      for (int code = 0; code < size; code++) {
        if (!combinations.isMet(group, code)) {
          int[] box = allowed.clone();
          combinations.put(group, code, box);
          if (sensible(box)) {
            fill(box, combinations.questions(group));
            rows.add(box);
            combinations.meet(box);
          } else {
            senseless++;
            combinations.meet(group, code);
          }
        }
      }
    }
    return rows;
  }

  private void fill(int[] box, int[] questions) {
    boolean[] set = new boolean[box.length];
    for (int q : questions) {
      set[q] = true;
    }
    for (int q = 0; q < box.length; q++) {
      if (!set[q]) {
        box[q] = best(q, box, set);
        set[q] = true;
      }
    }
  }

  /**
   * The sensible state that adds most combinations.
   *
   * @throws IllegalStateException if none makes sense, so that no combination is given up unsaid
   */
  private int best(int question, int[] box, boolean[] set) {
    int[] gains = combinations.gains(question, box, set);
    int best = 0;
    int most = -1;
    for (int i = 0; i < gains.length; i++) {
      int state = combinations.state(question, i);
      if (gains[i] > most && sensible(with(box, question, state))) {
        most = gains[i];
        best = state;
      }
    }
    if (best == 0) {
      throw new IllegalStateException("no state makes sense in " + Arrays.toString(box));
    }
    return best;
  }

  private static int[] with(int[] box, int question, int state) {
    int[] changed = box.clone();
    changed[question] = state;
    return changed;
  }

  private boolean sensible(int[] box) {
    boolean[] open = new boolean[box.length];
    Arrays.fill(open, true);
    return consistent.narrow(box.clone(), open);
  }
}
