package insidelift.engine.consultation.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import insidelift.engine.consultation.advice.Remedies.Remedy;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.OtherLever;
import insidelift.shared.situation.Situation;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Order and expected cost as in D. Heckerman, J. S. Breese and K. Rommelse (1995). */
class RemediesTest {

  private static final List<Remedy> LISTED =
      List.of(
          new Remedy("1", .4, 10),
          new Remedy("2", .3, 2),
          new Remedy("3", .2, 5),
          new Remedy("4", .1, 1));

  @Test
  void theBestChanceForItsCostGoesFirst() {
    assertThat(Remedies.ordered(LISTED)).extracting(Remedy::id).containsExactly("2", "4", "1", "3");
  }

  @Test
  void theOrderIsWorthWhatIsPublished() {
    assertThat(Remedies.expectedCost(Remedies.ordered(LISTED))).isCloseTo(9.7, within(1e-9));
    assertThat(Remedies.expectedCost(LISTED)).isCloseTo(12.8, within(1e-9));
  }

  @Test
  void theOtherLeversOfAnAdviceStandInThatOrderAndItSaysSo() {
    Advice advice =
        Advisor.load().advise(Situation.of(Map.of("water", "dry", "hop", "hops", "exit", "good")));

    assertThat(advice.alternatives())
        .extracting(OtherLever::lever)
        .containsExactly(
            "lever-pressures", "lever-rear-width", "lever-front-width", "lever-hubs", "lever-axle");
    assertThat(advice.assumed())
        .contains(
            "The other levers stand in the order of their cost, the quickest and safest first;"
                + " which of them helps most often, nobody has counted (provisional).");
  }
}
