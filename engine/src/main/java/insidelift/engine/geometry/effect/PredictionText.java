package insidelift.engine.geometry.effect;

import insidelift.engine.geometry.Printed;
import insidelift.engine.geometry.kart.Dimension;
import insidelift.engine.geometry.kart.KartGeometry;
import insidelift.engine.geometry.kart.SteeredWheels;
import insidelift.engine.geometry.plausible.Band;
import insidelift.engine.geometry.plausible.BandWords;
import insidelift.engine.geometry.plausible.CornerBands;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The plain text of a prediction: corner by corner, no finer than what was measured. */
final class PredictionText {

  /** What decides how the front wheels move against the frame. */
  private static final List<Dimension> FRONT =
      List.of(
          Dimension.CASTER,
          Dimension.KINGPIN_INCLINATION,
          Dimension.WHEEL_RADIUS,
          Dimension.HUB_OFFSET);

  static final String NOTE = "load-model";

  static final String PROTOCOL = "fit-my-kart";

  private PredictionText() {}

  static List<String> of(Prediction prediction) {
    List<String> lines = new ArrayList<>();
    KartGeometry kart = prediction.kart();
    for (CornerBands corner : prediction.bands()) {
      lines.addAll(corner.lines());
      lines.add("");
    }
    Band tips = prediction.bands().get(0).tipsOverG();
    lines.addAll(
        Printed.wrapped(
            "Tips over "
                + BandWords.lift(tips)
                + ". Each first number is the middle of the karts that fit what is known, the"
                + " others hold nine of ten of them (provisional).",
            "  "));
    lines.addAll(prediction.fitted().lines());
    if (FRONT.stream().noneMatch(kart::isTypical)) {
      wheels(lines, prediction);
    }
    typical(lines, kart);
    lines.add("What the model leaves out: insidelift notes " + NOTE);
    return List.copyOf(lines);
  }

  private static void wheels(List<String> lines, Prediction prediction) {
    KartGeometry kart = prediction.kart();
    lines.add("");
    lines.add(
        "Front wheels against the frame; trail "
            + Printed.fixed(kart.trailMm(), 0)
            + " mm, scrub radius "
            + Printed.fixed(kart.scrubRadiusMm(), 0)
            + " mm:");
    lines.add(row("steer", "inner", "outer", "inner hangs"));
    lines.add(row("°", "camber °", "camber °", "lower by mm"));
    for (SteeredWheels wheel : prediction.wheels()) {
      lines.add(
          row(
              Printed.exact(wheel.steerDeg()),
              Printed.signed(wheel.inner().camberDeg(), 1),
              Printed.signed(wheel.outer().camberDeg(), 1),
              Printed.fixed(wheel.heightDifferenceMm(), 0)));
    }
  }

  private static void typical(List<String> lines, KartGeometry kart) {
    String typical =
        Stream.of(Dimension.values())
            .filter(kart::isTypical)
            .map(Dimension::key)
            .collect(Collectors.joining(", "));
    if (!typical.isEmpty()) {
      lines.add("");
      lines.addAll(
          Printed.wrapped(
              "Not measured on your kart (what is typical, and its source: --json): "
                  + typical
                  + ".",
              "  "));
      lines.addAll(
          Printed.wrapped(
              "A quarter of an hour with tape and scales narrows the bands: insidelift notes "
                  + PROTOCOL,
              "  "));
    }
  }

  private static String row(String... cells) {
    StringBuilder line = new StringBuilder(Printed.right(cells[0], 5));
    for (int i = 1; i < cells.length; i++) {
      line.append(Printed.right(cells[i], 13));
    }
    return line.toString();
  }
}
