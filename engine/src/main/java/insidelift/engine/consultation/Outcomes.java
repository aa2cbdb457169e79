package insidelift.engine.consultation;

import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What to do now in any situation of one kart, numbered. It is worked out only once for each way in
 * which the rules can speak; the rest is looked up. Not for several threads.
 */
final class Outcomes {

  /** How many ways of speaking are kept: far more than one consultation meets, under 10 MB. */
  private static final int KEPT = 20_000;

  private final TableDecision decision;
  private final Bounds bounds;
  private final Map<Now, Integer> numbers = new HashMap<>();
  private final Map<BitSet, Integer> known =
      new LinkedHashMap<>(256, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<BitSet, Integer> eldest) {
          return size() > KEPT;
        }
      };

  Outcomes(TableDecision decision, Bounds bounds) {
    this.decision = decision;
    this.bounds = bounds;
  }

  /** The number of what all situations of a box come to; -1 if they do not come to one thing. */
  int of(int[] box) {
    if (!bounds.settled(box)) {
      return -1;
    }
    BitSet signature = bounds.signature();
    Integer number = known.get(signature);
    if (number == null) {
      Now now = Now.of(decision.decide(representative(box))).toDo();
      number = numbers.computeIfAbsent(now, key -> numbers.size());
      known.put(signature, number);
    }
    return number;
  }

  /** Whether anything in the box last looked at still hangs on a question. */
  boolean heard(int question) {
    return bounds.heard(question);
  }

  /** Whether a fault stands in a situation. */
  boolean fault(int[] point) {
    return bounds.fault(point);
  }

  /** The open question that keeps the last box from coming to one thing. */
  Hinges.Hinge inTheWay() {
    return bounds.inTheWay();
  }

  /** What a number stands for. */
  Now now(int number) {
    return numbers.entrySet().stream()
        .filter(entry -> entry.getValue() == number)
        .findFirst()
        .orElseThrow()
        .getKey();
  }

  /** How many different things to do now have been met. */
  int size() {
    return numbers.size();
  }

  private static int[] representative(int[] box) {
    int[] point = box.clone();
    for (int q = 0; q < point.length; q++) {
      point[q] = (point[q] & Grid.ABSENT) != 0 ? Grid.ABSENT : Integer.lowestOneBit(point[q]);
    }
    return point;
  }
}
