package insidelift.engine.consultation.advice;

import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * The order in which to try remedies: first what has the best chance of fixing it for its cost (D.
 * Heckerman, J. S. Breese and K. Rommelse, Communications of the ACM 38(3), 1995). Where one remedy
 * fixes it and each can be seen to have worked or not, no other order has a lower expected cost.
 */
final class Remedies {

  /**
   * A remedy.
   *
   * @param id what it is
   * @param chance the chance that it fixes it
   * @param cost what trying it costs, in any one unit
   */
  record Remedy(String id, double chance, double cost) {

    double worth() {
      return chance / cost;
    }
  }

  /** The chance of a remedy of which nobody has counted how often it helps: all alike. */
  private static final double ALIKE = 1;

  /**
   * What a first move of each other lever costs, in minutes of a novice's work, those that risk
   * more than time counted double. Provisional: common practice gives an order, nobody publishes
   * minutes.
   */
  private static final Map<String, Double> MINUTES =
      Map.ofEntries(
          Map.entry("lever-driving-line", 1.0),
          Map.entry("lever-pressures", 3.0),
          Map.entry("lever-pressure-lower", 3.0),
          Map.entry("lever-pressure-higher", 3.0),
          Map.entry("lever-rear-width", 10.0),
          Map.entry("lever-front-width", 12.0),
          Map.entry("lever-toe", 15.0),
          Map.entry("lever-hubs", 20.0),
          Map.entry("lever-ride-height", 30.0),
          Map.entry("lever-axle", 45.0),
          // The seat is bonded to weight and frame at once: a mistake costs the day.
          Map.entry("lever-seat", 2 * 45.0));

  private static final double LONGEST = 90;

  private Remedies() {}

  /** The remedies, the one most worth trying first; equal ones stay as they stood. */
  static List<Remedy> ordered(List<Remedy> remedies) {
    return remedies.stream()
        .sorted(Comparator.comparingDouble((Remedy remedy) -> -remedy.worth()))
        .toList();
  }

  /** The expected cost of trying them in that order until one has fixed it. */
  static double expectedCost(List<Remedy> remedies) {
    double cost = 0;
    double left = 1;
    for (Remedy remedy : remedies) {
      cost += left * remedy.cost();
      left -= remedy.chance();
    }
    return cost;
  }

  /** Another lever as a remedy, by the id of its note. */
  static Remedy lever(String id) {
    return new Remedy(id, ALIKE, MINUTES.getOrDefault(id, LONGEST));
  }
}
