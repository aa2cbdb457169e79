package insidelift.engine.audit;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.consultation.foresight.Consistent;
import insidelift.engine.consultation.foresight.Grid;
import insidelift.shared.Vocabulary;
import insidelift.shared.situation.Situation;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Every sensible pair of states is in some row, counted another way; no row is nonsense. */
class CoveringArrayTest {

  private static final Vocabulary WORDS = Vocabulary.load();
  private static final Grid GRID = new Grid(WORDS);
  private static final Consistent CONSISTENT = new Consistent(GRID);

  private static int[] full() {
    int[] full = new int[GRID.size()];
    for (int q = 0; q < full.length; q++) {
      full[q] = GRID.full(q);
    }
    return full;
  }

  @Test
  void everySensiblePairIsInARow() {
    CoveringArray array = new CoveringArray(GRID, CONSISTENT, full(), 2);
    List<int[]> rows = array.build();
    Set<List<Integer>> pairs = new HashSet<>();
    for (int[] row : rows) {
      for (int a = 0; a < row.length; a++) {
        for (int b = a + 1; b < row.length; b++) {
          pairs.add(List.of(a, row[a], b, row[b]));
        }
      }
    }
    assertThat(pairs).hasSize(array.combinations());
    assertThat(rows).hasSizeLessThan(260);
    // Sensible by themselves, and by the questions they hang on.
    assertThat(pairs).contains(pair("water", "wet", "trend", "drying"));
    assertThat(pairs).contains(pair("play", "some", "front-temps", "all-cold"));
    assertThat(pairs).doesNotContain(pair("water", "wet", "rubber", "dusty"));
    assertThat(pairs).doesNotContain(pair("power", "low", "gearbox", "gears"));
  }

  private static List<Integer> pair(String one, String value, String other, String otherValue) {
    return List.of(
        GRID.place(one),
        GRID.mask(GRID.place(one), List.of(value)),
        GRID.place(other),
        GRID.mask(GRID.place(other), List.of(otherValue)));
  }

  @Test
  void everyRowMakesSense() {
    for (int[] row : new CoveringArray(GRID, CONSISTENT, full(), 2).build()) {
      Situation situation = GRID.situation(row, Situation.UNKNOWN);
      assertThat(CONSISTENT.holds(situation, WORDS)).as("%s", situation).isTrue();
    }
  }

  @Test
  void onlyAllowedStatesAreTried() {
    int[] allowed = full();
    allowed[GRID.place("tyres")] = Grid.ABSENT;
    assertThat(new CoveringArray(GRID, CONSISTENT, allowed, 2).build())
        .allMatch(row -> row[GRID.place("tyres")] == Grid.ABSENT);
  }
}
