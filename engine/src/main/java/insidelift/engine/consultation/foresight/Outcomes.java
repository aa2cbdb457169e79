package insidelift.engine.consultation.foresight;

import insidelift.engine.consultation.decision.Decider;
import insidelift.engine.consultation.decision.ToDo;
import insidelift.shared.Status;
import insidelift.shared.situation.Situation;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What to do now in situations of one kart, numbered. Not for several threads. */
final class Outcomes {

  private final Decider decider;
  private final Grid grid;
  private final Situation kart;
  private final Map<ToDo, Integer> numbers = new HashMap<>();
  private final Set<Integer> moving = new HashSet<>();
  private final Map<List<Integer>, Integer> met = new HashMap<>();

  /** Outcomes on the kart, and after the runs, of a situation. */
  Outcomes(Decider decider, Grid grid, Situation kart) {
    this.decider = decider;
    this.grid = grid;
    this.kart = kart;
  }

  /** What to do now in a situation, a box of single states. */
  ToDo toDo(int[] point) {
    return ToDo.of(decider.decide(grid.situation(point, kart)));
  }

  /** The number of what to do now, without what else is wrong beside a fault. */
  int of(int[] point) {
    return met.computeIfAbsent(
        Arrays.stream(point).boxed().toList(), same -> number(toDo(point).brief()));
  }

  private int number(ToDo end) {
    int number = numbers.computeIfAbsent(end, key -> numbers.size());
    if (!end.moves().isEmpty()) {
      moving.add(number);
    }
    return number;
  }

  /** Whether camber or caster moves now in a situation. */
  boolean moves(int[] point) {
    return moving.contains(of(point));
  }

  /** Whether a fault stands in a situation. */
  boolean fault(int[] point) {
    return toDo(point).status() == Status.FIX_FIRST;
  }

  /** How many different things to do now have been met. */
  int size() {
    return numbers.size();
  }
}
