package insidelift.engine.consultation.foresight;

import insidelift.shared.index.Known;
import insidelift.shared.index.Truth;
import java.util.List;

/** What holds in all situations of a box, in none, or in some of them. */
final class Boxed implements Known {

  private final Grid grid;
  private final int[] box;
  private final Known known;

  /**
   * What a box holds.
   *
   * @param box the states of each question that are still possible
   * @param known what is known beside the questions: where the kart stands, and its runs
   */
  Boxed(Grid grid, int[] box, Known known) {
    this.grid = grid;
    this.box = box;
    this.known = known;
  }

  @Override
  public Truth answered(String question, List<String> values) {
    int place = grid.place(question);
    if (place < 0) {
      return known.answered(question, values);
    }
    int wanted = values.isEmpty() ? ~Grid.ABSENT : grid.mask(place, values);
    if ((box[place] & wanted) == 0) {
      return Truth.FALSE;
    }
    return (box[place] & ~wanted) == 0 ? Truth.TRUE : Truth.OPEN;
  }

  @Override
  public Truth complaint() {
    return known.complaint();
  }

  @Override
  public Truth moved(String lever, String direction) {
    return known.moved(lever, direction);
  }
}
