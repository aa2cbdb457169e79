package insidelift.engine.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import insidelift.engine.geometry.effect.Prediction;
import insidelift.engine.geometry.kart.KartGeometry;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The rows of load-vectors.json, which names its source. */
class LoadVectorsTest {

  private static final double TOLERANCE = 1e-6;

  private record Vector(
      String name,
      KartGeometry kart,
      double steer,
      double lateral,
      double longitudinal,
      JsonNode expected) {}

  @TestFactory
  Stream<DynamicTest> every_row_is_met() throws IOException {
    return vectors().stream()
        .filter(vector -> !vector.expected().has("refused"))
        .map(vector -> DynamicTest.dynamicTest(vector.name(), () -> meets(vector)));
  }

  @Test
  void the_row_that_tips_over_is_refused_where_it_says() throws IOException {
    Vector tips =
        vectors().stream().filter(v -> v.expected().has("refused")).findFirst().orElseThrow();

    assertThatThrownBy(() -> predicted(tips)).hasMessageStartingWith("lateral-g: 2.2 g: ");
    assertThat(tips.kart().tipsOverAtG(tips.longitudinal()))
        .isCloseTo(tips.expected().get("tipsOverG").doubleValue(), within(TOLERANCE));
  }

  private static void meets(Vector vector) {
    JsonNode json = predicted(vector);
    vector
        .expected()
        .properties()
        .forEach(
            quantity ->
                assertThat(found(json, quantity.getKey().replace("LeanDeg", "Deg")))
                    .as(quantity.getKey())
                    .isCloseTo(quantity.getValue().doubleValue(), within(TOLERANCE)));
  }

  private static JsonNode predicted(Vector v) {
    return Prediction.of(v.kart(), List.of(v.steer()), List.of(v.lateral()), v.longitudinal())
        .json();
  }

  /** The one place in a prediction of one corner that has the key. */
  private static double found(JsonNode json, String key) {
    for (JsonNode place :
        List.of(
            json,
            json.get("loads").get(0),
            json.get("leanToGround").get(0),
            json.get("steeringEffort").get(0),
            json.get("wheels").get(0))) {
      if (place.has(key)) {
        return place.get(key).doubleValue();
      }
    }
    throw new AssertionError("a prediction has no " + key);
  }

  private static List<Vector> vectors() throws IOException {
    try (InputStream in = LoadVectorsTest.class.getResourceAsStream("load-vectors.json")) {
      List<Vector> vectors = new ArrayList<>();
      for (JsonNode row : new ObjectMapper().readTree(in).get("vectors")) {
        vectors.add(
            new Vector(
                row.get("name").textValue(),
                KartGeometry.from(row.get("geometry")),
                row.get("steerDeg").doubleValue(),
                row.get("lateralG").doubleValue(),
                row.get("longitudinalG").doubleValue(),
                row.get("expected")));
      }
      assertThat(vectors).hasSize(12);
      return vectors;
    }
  }
}
