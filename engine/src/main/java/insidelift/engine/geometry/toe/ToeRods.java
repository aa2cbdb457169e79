package insidelift.engine.geometry.toe;

import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.geometry.Printed;
import java.util.ArrayList;
import java.util.List;

/**
 * Both tie-rods, which are alike.
 *
 * @param rod each of them
 * @param armAssumed whether nobody said how long the arm is
 * @param wayAssumed whether nobody said which way the arm points
 * @param threadsAssumed whether nobody said what turns
 */
record ToeRods(TieRod rod, boolean armAssumed, boolean wayAssumed, boolean threadsAssumed) {

  /** What a rod of one side is to become. */
  void put(ObjectNode side, double longerMm) {
    side.put("rod", TieRod.way(longerMm)).put("rodMm", Math.abs(longerMm));
    rod.turns(longerMm).ifPresent(turns -> side.put("turns", turns));
  }

  /** What both rods are. */
  void put(ObjectNode node) {
    node.put("armMm", rod.armMm()).put("armTypical", armAssumed);
    node.put("arm", rod.behindKingpin() ? "behind" : "ahead").put("wayTypical", wayAssumed);
    node.put("threads", rod.threads().word()).put("threadsTypical", threadsAssumed);
    rod.pitchMm().ifPresent(pitch -> node.put("pitchMm", pitch));
    rod.mmPerTurn().ifPresent(turn -> node.put("mmPerTurn", turn));
  }

  /** What to turn, then what that stands on. */
  List<String> lines(double leftLongerMm, double rightLongerMm, String remark) {
    List<String> lines = new ArrayList<>();
    lines.add("What to turn, with the steering held straight");
    lines.add("  left rod:  " + rod.told(leftLongerMm));
    lines.add("  right rod: " + rod.told(rightLongerMm));
    if (!remark.isEmpty()) {
      lines.addAll(Printed.wrapped("  " + remark, "  "));
    }
    lines.addAll(
        Printed.wrapped(
            "  Turn one rod first and measure: it must have gone the way that is wanted.", "  "));
    lines.add("");
    lines.addAll(Printed.wrapped(arm(), "  "));
    lines.addAll(Printed.wrapped(thread(), "  "));
    return lines;
  }

  private String arm() {
    return "Arm "
        + Printed.exact(rod.armMm())
        + " mm"
        + (armAssumed ? " (typical, provisional: measure yours)" : "")
        + ", "
        + (rod.behindKingpin() ? "behind" : "ahead of")
        + " the kingpin"
        + (wayAssumed ? " (typical: look at yours)" : "")
        + ": a longer rod turns its wheel to toe-"
        + (rod.behindKingpin() ? "in" : "out")
        + ".";
  }

  private String thread() {
    if (rod.pitchMm().isEmpty()) {
      return "Turns are missing: they need the pitch of the thread. Measure over ten threads and"
          + " divide by ten.";
    }
    String turn = Printed.exact(rod.mmPerTurn().getAsDouble()) + " mm";
    return rod.threads() == TieRod.Threads.BOTH
        ? "A turn is two pitches, "
            + turn
            + ": right-hand thread at one end, left-hand at the other"
            + (threadsAssumed ? " (typical: look at yours)." : ".")
        : "A turn is one pitch, "
            + turn
            + ": one joint turns on its thread. Off its bolt it goes back after half turns only:"
            + " take the nearest, and measure.";
  }
}
