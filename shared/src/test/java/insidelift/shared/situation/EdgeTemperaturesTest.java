package insidelift.shared.situation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.shared.Vocabulary;
import insidelift.shared.casefile.CaseReader;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Measured tread temperatures. The five degrees are provisional: nobody publishes them. */
class EdgeTemperaturesTest {

  private static Optional<String> read(String left, String right) throws CaseProblem {
    String text =
        "{\"schema\": 1, \"answers\": {\"front-temps\": {\"left\": %s, \"right\": %s}}}"
            .formatted(left, right);
    return new CaseReader(Vocabulary.load()).read(text).answer("front-temps");
  }

  private static String tyre(double inner, double middle, double outer) {
    return "{\"inner\": %s, \"middle\": %s, \"outer\": %s}".formatted(inner, middle, outer);
  }

  private static Optional<String> both(double inner, double middle, double outer)
      throws CaseProblem {
    return read(tyre(inner, middle, outer), tyre(inner, middle, outer));
  }

  @Test
  void fiveDegreesAreADifferenceAndALittleLessIsNot() throws Exception {
    assertThat(both(65, 62, 60)).contains("inner-hot");
    assertThat(both(64.9, 62, 60)).contains("even");
    assertThat(both(60, 62, 65)).contains("outer-hot");
    assertThat(both(60, 62, 64.9)).contains("even");
    assertThat(both(60, 65, 60)).contains("middle-hot");
    assertThat(both(60, 64.9, 60)).contains("even");
    assertThat(both(65, 60, 65)).contains("edges-hot");
    assertThat(both(64.9, 60, 64.9)).contains("even");
  }

  @Test
  void anEdgeIsReadBeforeTheMiddle() throws Exception {
    assertThat(both(65, 75, 60)).contains("inner-hot");
  }

  @Test
  void sidesThatDoNotAgreeAreAnAnswerOfTheirOwn() throws Exception {
    assertThat(read(tyre(65, 62, 60), tyre(60, 62, 65))).contains("sides-differ");
    assertThat(read(tyre(80, 69, 60), tyre(70, 70, 70))).contains("sides-differ");
    assertThat(read(tyre(80, 69, 60), tyre(70, 67, 65))).contains("inner-hot");
  }

  @Test
  void aTyreNeedsThreeReadingsInRange() {
    assertThatThrownBy(() -> read("{\"inner\": 60, \"outer\": 60}", tyre(60, 60, 60)))
        .isInstanceOf(CaseProblem.class)
        .hasMessage("answers.front-temps.left: the key \"middle\" is missing");
    assertThatThrownBy(() -> read(tyre(60, 60, 60), tyre(60, 60, 201)))
        .hasMessage("answers.front-temps.right.outer: 201 is outside -20 to 200 degrees Celsius");
    assertThatThrownBy(() -> read(tyre(60, 60, 60), tyre(-20.5, 60, 60)))
        .hasMessage("answers.front-temps.right.inner: -20.5 is outside -20 to 200 degrees Celsius");
    assertThatThrownBy(() -> read(tyre(60, 60, 60), "\"hot\""))
        .hasMessage(
            "answers.front-temps.right: this must be an object in braces, but it is \"hot\"");
    assertThatThrownBy(() -> read(tyre(60, 60, 60), "{\"edge\": 60}"))
        .hasMessage(
            "answers.front-temps.right: \"edge\" is not a key here; the keys are inner, middle,"
                + " outer");
  }
}
