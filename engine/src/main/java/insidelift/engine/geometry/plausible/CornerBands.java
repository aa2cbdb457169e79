package insidelift.engine.geometry.plausible;

import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.geometry.kart.Corner;
import java.util.List;

/**
 * A corner over the karts that are plausible.
 *
 * @param corner where
 * @param inTheAir share of the karts whose inside rear is off the ground
 * @param rearInnerShare load of the inside rear as a share of what it carries standing straight
 * @param rearInnerN the same load, N
 * @param liftOffG where the inside rear leaves the ground at this steer, g
 * @param leastLiftG below this it cannot, at any steer, g
 * @param tipsOverG where the kart tips over, g
 * @param innerLeanDeg camber of the inner front to the ground, degrees
 * @param outerLeanDeg the same of the outer front
 */
public record CornerBands(
    Corner corner,
    double inTheAir,
    Band rearInnerShare,
    Band rearInnerN,
    Band liftOffG,
    Band leastLiftG,
    Band tipsOverG,
    Band innerLeanDeg,
    Band outerLeanDeg) {

  public static CornerBands of(Corner corner, PlausibleKarts plausible) {
    List<PlausibleKart.In> all = plausible.in(corner);
    return new CornerBands(
        corner,
        plausible.share(all, kart -> kart.rearInnerN() == 0),
        plausible.band(all, PlausibleKart.In::share),
        plausible.band(all, PlausibleKart.In::rearInnerN),
        plausible.band(all, PlausibleKart.In::liftOffG),
        plausible.ofKarts(kart -> kart.leastLiftG(corner.longitudinalG())),
        plausible.ofKarts(kart -> kart.tipsOverAtG(corner.longitudinalG())),
        plausible.band(all, PlausibleKart.In::innerLeanDeg),
        plausible.band(all, PlausibleKart.In::outerLeanDeg));
  }

  public void put(ObjectNode node) {
    if (!corner.name().isEmpty()) {
      node.put("name", corner.name());
    }
    node.put("steerDeg", corner.steerDeg())
        .put("lateralG", corner.lateralG())
        .put("longitudinalG", corner.longitudinalG())
        .put("inTheAirShare", inTheAir);
    rearInnerShare.put(node, "rearInnerShare");
    rearInnerN.put(node, "rearInnerN");
    liftOffG.put(node, "liftOffG");
    leastLiftG.put(node, "leastLiftG");
    tipsOverG.put(node, "tipsOverG");
    innerLeanDeg.put(node, "innerLeanDeg");
    outerLeanDeg.put(node, "outerLeanDeg");
  }

  /** The corner in a few indented lines, no finer than its bands allow. */
  public List<String> lines() {
    return List.of(
        BandWords.corner(corner),
        "  inside rear  " + BandWords.insideRear(this),
        "  in the air   " + BandWords.ofTen(inTheAir),
        "  lifts        " + BandWords.lift(liftOffG) + BandWords.least(leastLiftG),
        "  outer front  leans " + BandWords.lean(outerLeanDeg, -1),
        "  inner front  leans " + BandWords.lean(innerLeanDeg, 1));
  }
}
