package insidelift.engine.geometry.plausible;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.engine.geometry.effect.Prediction;
import insidelift.engine.geometry.kart.Corner;
import insidelift.engine.geometry.kart.Dimension;
import insidelift.engine.geometry.kart.KartGeometry;
import insidelift.engine.geometry.kart.LoadModel;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FittedKartTest {

  private static final Corner TURN_IN = new Corner("", 12, 0.9, -0.6);

  /** What tape and scales give. */
  private static final List<Dimension> TAPED =
      List.of(
          Dimension.WHEELBASE,
          Dimension.FRONT_TRACK,
          Dimension.REAR_TRACK,
          Dimension.CASTER,
          Dimension.HUB_OFFSET,
          Dimension.MASS,
          Dimension.FRONT_SHARE);

  /** Karts that are not in the table, drawn from the same spans, read with errors of their own. */
  @Test
  void hidden_karts_lie_within_the_bands_of_nine_in_ten_at_least_85_times_in_100() {
    Random random = new Random(20);
    int liftOff = 0;
    int load = 0;
    double narrower = 0;
    for (int i = 0; i < 100; i++) {
      PlausibleKart hidden = hidden(random);
      Map<Dimension, Double> taped = new EnumMap<>(Dimension.class);
      for (Dimension dimension : TAPED) {
        taped.put(dimension, hidden.kart().value(dimension));
      }
      KartGeometry known = new KartGeometry(taped);
      List<Measurement> readings = readings(hidden, random);

      PlausibleKarts fitted = FittedKart.of(known, readings).karts();

      CornerBands bands = CornerBands.of(TURN_IN, fitted);
      PlausibleKart.In truth = hidden.in(hidden.kart(), TURN_IN);
      liftOff += within(bands.liftOffG(), truth.liftOffG()) ? 1 : 0;
      load += within(bands.rearInnerN(), truth.rearInnerN()) ? 1 : 0;
      narrower +=
          bands.liftOffG().halfWidth()
              / CornerBands.of(TURN_IN, PlausibleKarts.of(known)).liftOffG().halfWidth();
    }
    assertThat(liftOff).as("lift-off").isGreaterThanOrEqualTo(85);
    assertThat(load).as("load on the inside rear").isGreaterThanOrEqualTo(85);
    assertThat(narrower / 100).as("of the band before").isLessThan(0.75);
  }

  private static boolean within(Band band, double value) {
    return value >= band.low() && value <= band.high();
  }

  private static PlausibleKart hidden(Random random) {
    Map<Dimension, Double> drawn = new EnumMap<>(Dimension.class);
    for (Dimension dimension : Dimension.values()) {
      drawn.put(
          dimension, Spread.draw(KartGeometry.typical(), dimension, random.nextDouble(), drawn));
    }
    double steerOff = Spread.STEER_OFF_DEG * (2 * random.nextDouble() - 1);
    return new PlausibleKart(new KartGeometry(drawn), steerOff, 0, 0, 0.5, 0.3);
  }

  private static List<Measurement> readings(PlausibleKart hidden, Random random) {
    List<Measurement> read = new ArrayList<>();
    double board = Measurement.board(20, 0).shown().applyAsDouble(hidden);
    read.add(Measurement.board(20, board + 10 * random.nextGaussian()));
    double marked = 15 + random.nextGaussian();
    double steered = Measurement.steered(marked, 0).shown().applyAsDouble(hidden);
    read.add(Measurement.steered(15, Math.max(1, steered + 10 * random.nextGaussian())));
    double lifts = Measurement.liftOff(12, 0, -0.6).shown().applyAsDouble(hidden);
    read.add(Measurement.liftOff(12, lifts + 0.1 * random.nextGaussian(), -0.6));
    return read;
  }

  private static final String SCALES = "'scalesKg':{'front':[33.6,33.6],'rear':[46.4,46.4]}";

  @Test
  void a_file_of_readings_narrows_the_bands_and_says_what_each_further_one_would_bring() {
    MeasuredKart measured =
        read("{" + SCALES + ",'liftOff':{'lateralG':1.0,'longitudinalG':-0.6}}");

    Prediction fitted = Prediction.of(measured, List.of(), List.of(), 0);

    assertThat(measured.kart().value(Dimension.MASS)).isEqualTo(160);
    assertThat(measured.kart().value(Dimension.FRONT_SHARE))
        .isCloseTo(0.42, org.assertj.core.api.Assertions.within(1e-12));
    assertThat(fitted.bands().get(0).liftOffG().halfWidth())
        .isLessThan(
            0.7
                * Prediction.of(KartGeometry.typical(), List.of(), List.of(), 0)
                    .bands()
                    .get(0)
                    .liftOffG()
                    .halfWidth());
    assertThat(fitted.lines())
        .allMatch(line -> line.length() <= 80)
        .anyMatch(line -> line.startsWith("Not measured: the board under one wheel. It would"))
        .noneMatch(line -> line.startsWith("Not measured: the lift-off"));
    assertThat(fitted.json().get("fit").get("liftOffHalfWidthGWith").has("board")).isTrue();
  }

  /** The board's change per mm, worked by hand from the springs in series. */
  @Test
  void the_board_takes_from_the_left_rear_what_the_springs_in_series_say() {
    KartGeometry kart = KartGeometry.typical();
    double twist = 160 * 1000 * Math.toDegrees(1);
    double yields = 1 / twist + 2 / (1050.0 * 1050 * 100) + 2 / (1180.0 * 1180 * 110);
    double moment = 20 / 1050.0 / yields;

    assertThat(0.58 * 160 * 9.81 / 2 - LoadModel.onBoardN(kart, 20))
        .isCloseTo(moment / 1180, org.assertj.core.api.Assertions.within(1e-6));
  }

  @Test
  void contradictions_are_said_in_plain_words() {
    assertThat(
            Prediction.of(
                    read("{" + SCALES + ",'board':{'heightMm':20,'leftRearKg':46}}"),
                    List.of(),
                    List.of(),
                    0)
                .json()
                .get("fit")
                .get("contradictions")
                .get(0)
                .textValue())
        .isEqualTo(
            "No plausible kart shows what the board under one wheel showed: read it again, or a"
                + " measure given is wrong.");
  }

  @Test
  void two_readings_that_no_kart_shows_together_are_named() {
    FittedKart fitted =
        FittedKart.of(
            KartGeometry.typical(),
            List.of(Measurement.board(20, 75), Measurement.steered(15, 210)));

    assertThat(fitted.surprises())
        .containsExactly(
            "No plausible kart shows both the board under one wheel and the steering turned on the"
                + " scales: one of them is misread.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "{'board':{'heightMm':20,'leftRearKg':32}} | measured.scalesKg: is missing; the other"
            + " readings on the stand are compared with it",
        "{'scalesKg':{'front':[33],'rear':[46,46]}} | measured.scalesKg.front: must be two"
            + " numbers, left and right",
        "{'liftOff':{'lateralG':9,'longitudinalG':0}} | measured.liftOff.lateralG: 9 is outside 0.2"
            + " to 2 g (provisional)",
        "{'weather':1} | measured.weather: unknown key",
      })
  void a_reading_that_cannot_be_is_refused(String measured, String message) {
    assertThatThrownBy(() -> read(measured)).hasMessage("kart.json: " + message);
  }

  private static MeasuredKart read(String measured) {
    String json = "{\"schema\":1,\"geometry\":{},\"measured\":" + measured.replace('\'', '"') + "}";
    return MeasuredKart.read(new ByteArrayInputStream(json.getBytes(UTF_8)), "kart.json");
  }
}
