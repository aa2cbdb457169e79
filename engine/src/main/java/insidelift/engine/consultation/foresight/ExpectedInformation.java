package insidelift.engine.consultation.foresight;

import java.util.List;

/** What answers are expected to tell about what to do now, counted on drawn completions. */
final class ExpectedInformation {

  private final Grid grid;
  private final Outcomes outcomes;
  private final List<int[]> drawn;
  private final int[] ends;

  /** The telling of completions, each of which comes to one thing. */
  ExpectedInformation(Grid grid, Outcomes outcomes, List<int[]> drawn) {
    this.grid = grid;
    this.outcomes = outcomes;
    this.drawn = drawn;
    this.ends = drawn.stream().mapToInt(outcomes::of).toArray();
  }

  /**
   * What a question tells, in bits, for the effort of answering it. A safety check stands for their
   * one screen: what counts there is whether it shows a fault.
   */
  double bits(int question) {
    boolean screen = grid.question(question).safety();
    int rows = screen ? 2 : grid.question(question).values().size() + 1;
    double[][] counts = new double[rows][outcomes.size()];
    for (int i = 0; i < ends.length; i++) {
      int[] point = drawn.get(i);
      int row = screen ? fault(point) : Integer.numberOfTrailingZeros(point[question]);
      counts[row][ends[i]]++;
    }
    double gain = Information.gainFromCounts(counts);
    return screen ? gain : gain / grid.question(question).effort();
  }

  private int fault(int[] point) {
    for (int q = 0; q < point.length; q++) {
      int value = Integer.numberOfTrailingZeros(point[q]) - 1;
      if (grid.question(q).safety() && value >= 0 && grid.question(q).values().get(value).fault()) {
        return 1;
      }
    }
    return 0;
  }
}
