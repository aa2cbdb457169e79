package insidelift.console.asking;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.units.Units;
import insidelift.shared.situation.EdgeTemperatures;
import org.junit.jupiter.api.Test;

/** The heat across a tyre as it is typed. */
class TreadTest {

  private static final Tread CELSIUS = new Tread(Units.METRIC);

  @Test
  void threeNumbersAreReadFromTheSeatOutward() {
    Reply heat = new Reply.Heat(new EdgeTemperatures(78, 70, 61));
    assertThat(CELSIUS.read("78/70/61")).isEqualTo(heat);
    assertThat(CELSIUS.read(" 78 70 61 ")).isEqualTo(heat);
  }

  @Test
  void anythingElseIsRefusedWithWhatItTakes() {
    for (String typed : new String[] {"78", "78/70", "78/70/61/50", "hot", "", "78/70/999"}) {
      assertThat(CELSIUS.read(typed))
          .as(typed)
          .isInstanceOfSatisfying(
              Reply.Unclear.class,
              unclear ->
                  assertThat(unclear.why())
                      .startsWith("It takes edge nearest the seat/middle/edge away from the seat")
                      .endsWith("as in 78/70/61."));
    }
  }
}
