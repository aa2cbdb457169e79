package insidelift.engine.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The plain text of a prediction: four small tables, and which measures were only typical. */
final class PredictionText {

  private PredictionText() {}

  static List<String> of(Prediction prediction) {
    List<String> lines = new ArrayList<>();
    KartGeometry kart = prediction.kart();
    lines.add(
        "Trail "
            + Printed.fixed(kart.trailMm(), 1)
            + " mm, scrub radius "
            + Printed.fixed(kart.scrubRadiusMm(), 1)
            + " mm; tips over at "
            + Printed.fixed(kart.tipsOverAtG(), 2)
            + " g.");
    lines.add("");
    wheels(lines, prediction);
    loads(lines, prediction);
    ground(lines, prediction);
    perDegree(lines);
    typical(lines, kart);
    return List.copyOf(lines);
  }

  private static void wheels(List<String> lines, Prediction prediction) {
    lines.add("Front wheels against the frame, turning left (inner = left):");
    lines.add(row("steer", "inner", "inner", "outer", "outer", "height", "inside rear"));
    lines.add(row("°", "camber °", "height mm", "camber °", "height mm", "diff. mm", "lifts at"));
    for (int i = 0; i < prediction.wheels().size(); i++) {
      SteeredWheels wheel = prediction.wheels().get(i);
      OptionalDouble lift = prediction.liftOffs().get(i).lateralG();
      lines.add(
          row(
              Printed.exact(wheel.steerDeg()),
              Printed.signed(wheel.inner().camberDeg(), 2),
              Printed.signed(wheel.inner().heightMm(), 2),
              Printed.signed(wheel.outer().camberDeg(), 2),
              Printed.signed(wheel.outer().heightMm(), 2),
              Printed.fixed(wheel.heightDifferenceMm(), 2),
              lift.isPresent() ? Printed.fixed(lift.getAsDouble(), 2) + " g" : "never"));
    }
    lines.add("");
  }

  private static void loads(List<String> lines, Prediction prediction) {
    lines.add("Wheel loads, N:");
    lines.add(row("steer", "lateral", "front", "front", "rear", "rear", "inside rear"));
    lines.add(row("°", "g", "inner", "outer", "inner", "outer", "lift mm"));
    for (CornerState corner : prediction.corners()) {
      WheelLoads loads = corner.loads();
      lines.add(
          row(
              Printed.exact(loads.steerDeg()),
              Printed.exact(loads.lateralG()),
              Printed.fixed(loads.frontInnerN(), 0),
              Printed.fixed(loads.frontOuterN(), 0),
              Printed.fixed(loads.rearInnerN(), 0),
              Printed.fixed(loads.rearOuterN(), 0),
              Printed.fixed(loads.rearInnerLiftMm(), 1)));
    }
    lines.add("");
  }

  private static void ground(List<String> lines, Prediction prediction) {
    lines.add("Lean to the ground (+ top outboard) and moment at the kingpins:");
    lines.add(row("steer", "lateral", "inner", "outer", "trail", "jacking", "together"));
    lines.add(row("°", "g", "lean °", "lean °", "N·m", "N·m", "N·m"));
    for (CornerState corner : prediction.corners()) {
      lines.add(
          row(
              Printed.exact(corner.loads().steerDeg()),
              Printed.exact(corner.loads().lateralG()),
              Printed.signed(corner.innerLeanDeg(), 2),
              Printed.signed(corner.outerLeanDeg(), 2),
              Printed.fixed(corner.effort().trailNm(), 1),
              Printed.fixed(corner.effort().jackingNm(), 1),
              Printed.fixed(corner.effort().totalNm(), 1)));
    }
  }

  private static void perDegree(List<String> lines) {
    SteeringArm arm = SteeringArm.TYPICAL;
    lines.add("");
    lines.addAll(
        Printed.wrapped(
            "A degree of camber moves toe by about "
                + Printed.fixed(Math.abs(arm.toeOutTotalMm(1)), 1)
                + " mm in all, a degree of caster the wheelbase by "
                + Printed.fixed(Math.abs(arm.wheelbaseMm(1)), 1)
                + " mm (typical steering arm and hub, provisional).",
            "  "));
  }

  private static void typical(List<String> lines, KartGeometry kart) {
    String typical =
        Stream.of(Dimension.values())
            .filter(kart::isTypical)
            .map(d -> d.key() + " " + Printed.exact(d.typical()))
            .collect(Collectors.joining(", "));
    if (!typical.isEmpty()) {
      lines.add("");
      lines.addAll(
          Printed.wrapped(
              "Typical, not measured on your kart (sources: --json): " + typical + ".", "  "));
    }
  }

  private static String row(String... cells) {
    StringBuilder line = new StringBuilder(Printed.right(cells[0], 5));
    for (int i = 1; i < cells.length; i++) {
      line.append(Printed.right(cells[i], i == cells.length - 1 ? 13 : 11));
    }
    return line.toString();
  }
}
