package insidelift.engine.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * How far a mechanism's claimed sign is borne out over the documented range.
 *
 * @param cases karts times corners tried
 * @param agreeing those where the sign is as claimed
 * @param without those where nothing moves, such as loads with a wheel already in the air
 * @param where in which part of the range the sign is not as claimed, as a phrase; empty if nowhere
 */
public record Agreement(int cases, int agreeing, int without, String where) {

  /** Whether the sign is as claimed everywhere. */
  public boolean throughout() {
    return agreeing == cases;
  }

  /** Whether the opposite happens somewhere. */
  public boolean opposed() {
    return agreeing + without < cases;
  }

  /** One kart in one corner, and what the change did to the quantity there. */
  record Trial(KartGeometry kart, double steerDeg, double lateralG, double effect) {}

  static Agreement of(List<Trial> trials, int claimedSign, double noise) {
    List<Trial> failing = new ArrayList<>();
    int without = 0;
    for (Trial trial : trials) {
      if (Math.abs(trial.effect()) <= noise) {
        without++;
        failing.add(trial);
      } else if (trial.effect() * claimedSign < 0) {
        failing.add(trial);
      }
    }
    return new Agreement(
        trials.size(), trials.size() - failing.size(), without, where(trials, failing));
  }

  /** The spans of the failing trials that are narrower than those of all. */
  private static String where(List<Trial> all, List<Trial> failing) {
    if (failing.isEmpty()) {
      return "";
    }
    List<String> spans = new ArrayList<>();
    span(spans, "steer", "°", all, failing, Trial::steerDeg);
    span(spans, "lateral acceleration", " g", all, failing, Trial::lateralG);
    for (Dimension dimension : Dimension.values()) {
      span(
          spans,
          dimension.key(),
          dimension.unit(),
          all,
          failing,
          trial -> trial.kart().value(dimension));
    }
    return spans.isEmpty() ? "spread over the range" : "within " + String.join(", ", spans);
  }

  private static void span(
      List<String> spans,
      String name,
      String unit,
      List<Trial> all,
      List<Trial> failing,
      ToDoubleFunction<Trial> quantity) {
    double least = failing.stream().mapToDouble(quantity).min().orElseThrow();
    double most = failing.stream().mapToDouble(quantity).max().orElseThrow();
    boolean narrower =
        least > all.stream().mapToDouble(quantity).min().orElseThrow()
            || most < all.stream().mapToDouble(quantity).max().orElseThrow();
    if (narrower) {
      String to = least == most ? "" : " to " + Printed.exact(most);
      spans.add(name + " " + Printed.exact(least) + to + unit);
    }
  }
}
