package insidelift.engine.geometry.plausible;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import insidelift.engine.geometry.Printed;
import insidelift.engine.geometry.kart.Corner;
import insidelift.engine.geometry.kart.KartGeometry;
import insidelift.engine.geometry.kart.LoadModel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The karts that fit readings taken on one kart: of many that could be it, each weighted by how
 * well it shows what was read (importance sampling, readings independent and normal). The model is
 * taken as true, so the bands are rather too narrow than too wide.
 *
 * @param karts the karts, weighted
 * @param surprises readings that contradict each other or every plausible kart, in plain words
 * @param gains what each step that was not taken would bring: half the band of the lift-off at
 *     turn-in now and with it, g
 */
public record FittedKart(
    PlausibleKarts karts, List<String> surprises, Map<Measurement.Step, Double> gains) {

  /** So many karts that at least {@link #LEAST_ALIKE} stay likely after four readings. */
  static final int TRIED = 8192;

  /** As many karts are kept for the bands, each as often as it is likely. */
  private static final int KEPT = 512;

  /** With fewer karts that count, the readings are taken as less exact than they claim. */
  private static final double LEAST_ALIKE = 40;

  private static final double LESS_EXACT = 1.3;

  /** A reading this many standard deviations from every plausible kart contradicts them. */
  private static final double CONTRADICTS = 3;

  /** A band narrower by less than this is no gain, g. */
  private static final double WORTH_SAYING_G = 0.01;

  /** The kart fitted to readings; without any, as plausible as before. */
  public static FittedKart of(KartGeometry kart, List<Measurement> readings) {
    PlausibleKarts prior =
        PlausibleKarts.of(kart, readings.isEmpty() ? PlausibleKarts.USUAL : TRIED);
    if (readings.isEmpty()) {
      return new FittedKart(prior, List.of(), Map.of());
    }
    double[][] off = off(prior, readings);
    double[] weights = weights(off);
    PlausibleKarts fitted = new PlausibleKarts(prior.karts(), weights);
    return new FittedKart(kept(fitted), surprises(readings, off), gains(fitted, readings));
  }

  private static double[][] off(PlausibleKarts karts, List<Measurement> readings) {
    return readings.stream()
        .map(reading -> karts.karts().stream().mapToDouble(reading::off).toArray())
        .toArray(double[][]::new);
  }

  /** How likely each kart is, made less exact until enough of them count. */
  private static double[] weights(double[][] off) {
    double[] squares = new double[off[0].length];
    for (double[] reading : off) {
      for (int i = 0; i < squares.length; i++) {
        squares[i] += reading[i] * reading[i];
      }
    }
    double least = Arrays.stream(squares).min().orElse(0);
    double exact = 1;
    while (true) {
      double[] weights = new double[squares.length];
      double sum = 0;
      double sumOfSquares = 0;
      for (int i = 0; i < weights.length; i++) {
        weights[i] = Math.exp(-(squares[i] - least) / 2 * exact);
        sum += weights[i];
        sumOfSquares += weights[i] * weights[i];
      }
      if (sum * sum / sumOfSquares >= LEAST_ALIKE) {
        return weights;
      }
      exact /= LESS_EXACT;
    }
  }

  /** The karts in proportion to their weights, at even steps through their sum. */
  private static PlausibleKarts kept(PlausibleKarts fitted) {
    double[] weights = fitted.weights();
    double step = Arrays.stream(weights).sum() / KEPT;
    List<PlausibleKart> kept = new ArrayList<>(KEPT);
    double passed = 0;
    double next = step / 2;
    for (int i = 0; i < weights.length; i++) {
      passed += weights[i];
      for (; next < passed; next += step) {
        kept.add(fitted.karts().get(i));
      }
    }
    return new PlausibleKarts(kept);
  }

  private static List<String> surprises(List<Measurement> readings, double[][] off) {
    List<String> surprises = new ArrayList<>();
    for (int r = 0; r < readings.size(); r++) {
      if (nearest(off, r, r) > CONTRADICTS) {
        surprises.add(
            "No plausible kart shows what "
                + readings.get(r).step().words()
                + " showed: read it again, or a measure given is wrong.");
      }
    }
    for (int a = 0; a < readings.size() && surprises.isEmpty(); a++) {
      for (int b = a + 1; b < readings.size(); b++) {
        if (nearest(off, a, b) > CONTRADICTS) {
          surprises.add(
              "No plausible kart shows both "
                  + readings.get(a).step().words()
                  + " and "
                  + readings.get(b).step().words()
                  + ": one of them is misread.");
        }
      }
    }
    return List.copyOf(surprises);
  }

  /** How far the nearest kart is off one or two readings, in standard deviations. */
  private static double nearest(double[][] off, int a, int b) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < off[a].length; i++) {
      nearest = Math.min(nearest, a == b ? Math.abs(off[a][i]) : Math.hypot(off[a][i], off[b][i]));
    }
    return nearest;
  }

  /** What each further step would bring, if it showed what the likeliest kart shows. */
  private static Map<Measurement.Step, Double> gains(
      PlausibleKarts fitted, List<Measurement> readings) {
    double[] weights = fitted.weights();
    int likeliest = 0;
    for (int i = 1; i < weights.length; i++) {
      likeliest = weights[i] > weights[likeliest] ? i : likeliest;
    }
    PlausibleKart kart = fitted.karts().get(likeliest);
    Map<Measurement.Step, Double> gains = new EnumMap<>(Measurement.Step.class);
    for (Measurement further :
        List.of(
            Measurement.board(20, 0),
            Measurement.steered(15, 0),
            Measurement.raised(250, 0),
            Measurement.liftOff(12, 0, -0.6))) {
      if (readings.stream().noneMatch(taken -> taken.step() == further.step())) {
        Measurement as =
            new Measurement(
                further.step(),
                further.shown().applyAsDouble(kart),
                further.error(),
                further.shown());
        List<Measurement> all = new ArrayList<>(readings);
        all.add(as);
        gains.put(
            further.step(),
            liftOff(new PlausibleKarts(fitted.karts(), weights(off(fitted, all)))).halfWidth());
      }
    }
    return gains;
  }

  private static Band liftOff(PlausibleKarts karts) {
    Corner corner = Corner.TURN_IN;
    return karts.ofKarts(
        kart ->
            LoadModel.liftOffG(kart, corner.steerDeg(), corner.longitudinalG())
                .orElse(kart.tipsOverAtG(corner.longitudinalG())));
  }

  /** What was fitted, in words; nothing where nothing was read. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    surprises.forEach(surprise -> lines.addAll(Printed.wrapped(surprise, "  ")));
    double now = liftOff(karts).halfWidth();
    gains.forEach(
        (step, then) ->
            lines.addAll(
                Printed.wrapped(
                    "Not measured: "
                        + step.words()
                        + (now - then < WORTH_SAYING_G
                            ? ". It would gain next to nothing."
                            : ". It would bring the lift-off at turn-in from ± "
                                + Printed.fixed(now, 2)
                                + " to about ± "
                                + Printed.fixed(then, 2)
                                + " g."),
                    "  ")));
    return lines;
  }

  public void put(ObjectNode root) {
    ObjectNode node = root.putObject("fit");
    ArrayNode contradictions = node.putArray("contradictions");
    surprises.forEach(contradictions::add);
    node.put("liftOffHalfWidthG", liftOff(karts).halfWidth());
    ObjectNode further = node.putObject("liftOffHalfWidthGWith");
    gains.forEach((step, then) -> further.put(step.key(), then));
  }
}
