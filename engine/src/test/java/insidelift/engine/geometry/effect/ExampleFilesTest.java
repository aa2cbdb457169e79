package insidelift.engine.geometry.effect;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.geometry.gauge.Gauge;
import insidelift.engine.geometry.gauge.GaugeReading;
import insidelift.engine.geometry.kart.KartGeometry;
import insidelift.engine.geometry.plausible.MeasuredKart;
import insidelift.engine.geometry.positions.Positions;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ExampleFilesTest {

  @ParameterizedTest
  @ValueSource(strings = {"heron-senior", "moth-cadet", "only-typical"})
  void every_kart_is_predicted_and_lifts_its_inside_rear_before_it_tips(String kart) {
    KartGeometry geometry =
        open(kart + ".kart.json", (in, name) -> MeasuredKart.read(in, name).kart());

    Prediction prediction = Prediction.of(geometry, List.of(), List.of(0.4), -0.2);

    assertThat(prediction.liftOffs())
        .allMatch(l -> l.lateralG().orElseThrow() < geometry.tipsOverAtG(-0.2));
    assertThat(prediction.lines()).allMatch(line -> line.length() <= 80);
  }

  @ParameterizedTest
  @ValueSource(strings = {"heron-senior", "moth-cadet"})
  void every_set_of_eccentrics_is_answered_on_both_sides(String kart) {
    Positions positions = open(kart + ".positions.json", Positions::read);

    assertThat(positions.sides()).hasSize(2);
    assertThat(positions.nowAssumed()).isFalse();
    assertThat(positions.lines()).allMatch(line -> line.length() <= 80);
  }

  @ParameterizedTest
  @ValueSource(strings = {"camber", "caster", "toe"})
  void every_gauge_is_read(String gauge) {
    GaugeReading reading = open(gauge + ".gauge.json", Gauge::read);

    assertThat(reading.lines()).isNotEmpty().allMatch(line -> line.length() <= 80);
    assertThat(reading.json().get("schema").intValue()).isEqualTo(1);
  }

  @Test
  void unequal_camber_is_flagged_before_the_target() {
    assertThat(open("camber.gauge.json", Gauge::read).lines())
        .containsSubsequence(
            "Left and right camber differ by 0.34°, more than 0.25° (provisional): make them",
            "Aim at: dot 12.7 mm above the line on a board 1.0 m away, both sides.");
  }

  private static <T> T open(String name, BiFunction<InputStream, String, T> read) {
    try (InputStream in = ExampleFilesTest.class.getResourceAsStream(name)) {
      return read.apply(in, name);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
