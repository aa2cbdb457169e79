package insidelift.engine.consultation.foresight;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Draws whole situations that agree with what is known. The same luck is used every time, so the
 * same knowledge always leads to the same next question.
 */
public final class Completions {

  private static final long SEED = 20261125;

  private final Consistent consistent;
  private final Chances chances;
  private final double[][] luck;

  /** Completions, so many of them. */
  public Completions(Grid grid, Consistent consistent, Chances chances, int count) {
    this.consistent = consistent;
    this.chances = chances;
    this.luck = new double[count][grid.size()];
    SplittableRandom random = new SplittableRandom(SEED);
    for (double[] row : luck) {
      for (int q = 0; q < row.length; q++) {
        row[q] = random.nextDouble();
      }
    }
  }

  /** All completions of a box. */
  public List<int[]> all(int[] box, boolean[] open) {
    List<int[]> all = new ArrayList<>();
    for (double[] with : luck) {
      all.add(draw(with, box, open));
    }
    return all;
  }

  /**
   * One completion by the given luck: numbers from 0 to 1, one for each question. Every open
   * question that makes sense is answered.
   */
  public int[] draw(double[] with, int[] box, boolean[] open) {
    int[] point = box.clone();
    for (int q = 0; q < point.length; q++) {
      if (open[q]) {
        // What it hangs on comes before it in the vocabulary and is settled already.
        point[q] = draw(q, point, with[q]);
      }
    }
    return point;
  }

  private int draw(int question, int[] point, double with) {
    int sensible = consistent.sensible(question, point) & point[question] & ~Grid.ABSENT;
    double total = 0;
    for (int rest = sensible; rest != 0; rest &= rest - 1) {
      total += chances.chance(question, Integer.numberOfTrailingZeros(rest), point);
    }
    double left = with * total;
    int last = Grid.ABSENT;
    for (int rest = sensible; rest != 0; rest &= rest - 1) {
      int value = Integer.numberOfTrailingZeros(rest);
      last = 1 << value;
      left -= chances.chance(question, value, point);
      if (left < 0) {
        break;
      }
    }
    return last;
  }
}
