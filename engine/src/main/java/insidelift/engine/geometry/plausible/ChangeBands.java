package insidelift.engine.geometry.plausible;

import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.geometry.kart.Corner;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What a change does in one corner over the karts that are plausible. The same kart is taken before
 * and after, so differences are surer than levels.
 *
 * @param rearInnerPercent change of the inside rear's load, percent of what it carries standing;
 *     {@link Band#NONE} for camber alone, like the next, over the karts whose inside rear still
 *     stands
 * @param liftOffG change of the lift-off at this steer, g; negative is earlier
 * @param innerLeanDeg change of the inner front's camber to the ground, degrees
 * @param outerLeanDeg the same of the outer front
 * @param effortNm change of the moment at the kingpins, N·m
 */
public record ChangeBands(
    Band rearInnerPercent, Band liftOffG, Band innerLeanDeg, Band outerLeanDeg, Band effortNm) {

  private static final double PERCENT = 100;

  private record Pair(PlausibleKart.In before, PlausibleKart.In after) {

    double change(ToDoubleFunction<PlausibleKart.In> quantity) {
      double was = quantity.applyAsDouble(before);
      double is = quantity.applyAsDouble(after);
      return was == is ? 0 : is - was;
    }
  }

  public static ChangeBands of(
      Corner corner, PlausibleKarts plausible, double camberDeg, double casterDeg) {
    List<Pair> pairs = new ArrayList<>();
    double[] standing = plausible.weights().clone();
    boolean stands = false;
    for (int i = 0; i < standing.length; i++) {
      PlausibleKart kart = plausible.karts().get(i);
      Corner taken = kart.takes(corner);
      PlausibleKart.In after = kart.in(kart.kart().changed(camberDeg, casterDeg), taken);
      pairs.add(new Pair(kart.in(kart.kart(), taken), after));
      if (after.rearInnerN() == 0) {
        standing[i] = 0;
      }
      stands |= standing[i] > 0;
    }
    // Where the pressure under a leaning tyre has its middle decides whether camber loads a wheel.
    boolean undecided = camberDeg != 0 && casterDeg == 0;
    return new ChangeBands(
        undecided
            ? Band.NONE
            : band(pairs, stands ? standing : plausible.weights(), in -> PERCENT * in.share()),
        undecided ? Band.NONE : band(pairs, plausible.weights(), PlausibleKart.In::liftOffG),
        band(pairs, plausible.weights(), PlausibleKart.In::innerLeanDeg),
        band(pairs, plausible.weights(), PlausibleKart.In::outerLeanDeg),
        band(pairs, plausible.weights(), PlausibleKart.In::effortNm));
  }

  private static Band band(
      List<Pair> pairs, double[] weights, ToDoubleFunction<PlausibleKart.In> quantity) {
    return Band.of(pairs.stream().mapToDouble(pair -> pair.change(quantity)).toArray(), weights);
  }

  public void put(ObjectNode node) {
    if (rearInnerPercent.isFinite()) {
      rearInnerPercent.put(node, "rearInnerPercentOfStanding");
    }
    if (liftOffG.isFinite()) {
      liftOffG.put(node, "liftOffG");
    }
    innerLeanDeg.put(node, "innerLeanDeg");
    outerLeanDeg.put(node, "outerLeanDeg");
    effortNm.put(node, "effortNm");
  }
}
