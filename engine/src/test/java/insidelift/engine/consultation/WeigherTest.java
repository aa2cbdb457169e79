package insidelift.engine.consultation;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.shared.Contribution;
import insidelift.shared.Contribution.Evidence;
import insidelift.shared.Contribution.Origin;
import insidelift.shared.Finding;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Sums of evidence: integers that commute, one piece for each observation. */
class WeigherTest {

  private static Evidence evidence(String rule, int weight, String observation) {
    return new Evidence(new Origin(rule, "note", List.of()), "finding", weight, observation);
  }

  private static int sum(List<? extends Contribution> ledger) {
    return Weigher.findings(Weigher.counted(List.copyOf(ledger))).stream()
        .mapToInt(Finding::strength)
        .sum();
  }

  @Test
  void weightsOfDifferentObservationsAdd() {
    assertThat(sum(List.of(evidence("a", 5, "turn-in"), evidence("b", 2, "corner-speed"))))
        .isEqualTo(7);
    assertThat(sum(List.of(evidence("a", 5, "turn-in"), evidence("b", -10, "inside-rear"))))
        .isEqualTo(-5);
  }

  @Test
  void equalAndOppositeEvidenceCancels() {
    assertThat(sum(List.of(evidence("a", 5, "front-temps"), evidence("b", -5, "front-wear"))))
        .isZero();
  }

  @Test
  void oneObservationCountsOnceWithItsStrongest() {
    assertThat(
            sum(
                List.of(
                    evidence("a", 2, "turn-in"),
                    evidence("b", 5, "turn-in"),
                    evidence("c", 2, "turn-in"))))
        .isEqualTo(5);
    assertThat(sum(List.of(evidence("a", 5, "turn-in"), evidence("b", -10, "turn-in"))))
        .isEqualTo(-10);
  }

  @Test
  void equalStrengthOnOneObservationIsSettledByTheRulesName() {
    Evidence more = evidence("a", 5, "turn-in");
    Evidence less = evidence("b", -5, "turn-in");

    assertThat(sum(List.of(more, less))).isEqualTo(5);
    assertThat(sum(List.of(less, more))).isEqualTo(5);
  }

  @Test
  void theOrderOfTheLedgerChangesNothing() {
    Random random = new Random(1984);
    List<Evidence> ledger = new ArrayList<>();
    int[] weights = {2, 5, 10, -2, -5, -10};
    for (int i = 0; i < 40; i++) {
      ledger.add(evidence("rule-" + i, weights[random.nextInt(6)], "question-" + i % 15));
    }
    Map<String, List<Evidence>> counted = Weigher.counted(List.copyOf(ledger));

    for (int i = 0; i < 100; i++) {
      Collections.shuffle(ledger, random);
      assertThat(Weigher.counted(List.copyOf(ledger))).isEqualTo(counted);
    }
    assertThat(counted.get("finding")).hasSize(15);
  }

  @Test
  void eachFindingHasItsOwnSum() {
    Evidence heavy =
        new Evidence(new Origin("a", "note", List.of()), "heavy", 10, "steering-weight");
    Evidence weak =
        new Evidence(new Origin("b", "note", List.of()), "front-weak", 2, "steering-weight");

    assertThat(Weigher.findings(Weigher.counted(List.of(heavy, weak))))
        .containsExactlyInAnyOrder(new Finding("heavy", 10), new Finding("front-weak", 2));
  }

  @Test
  void otherContributionsWeighNothing() {
    assertThat(
            Weigher.counted(List.of(new Contribution.Decision(new Origin("a", "note", List.of())))))
        .isEmpty();
  }

  @Test
  void aSumIsSaidInWords() {
    assertThat(Weigher.word(-10)).isEqualTo("none");
    assertThat(Weigher.word(1)).isEqualTo("none");
    assertThat(Weigher.word(2)).isEqualTo("slight");
    assertThat(Weigher.word(4)).isEqualTo("slight");
    assertThat(Weigher.word(5)).isEqualTo("clear");
    assertThat(Weigher.word(9)).isEqualTo("clear");
    assertThat(Weigher.word(10)).isEqualTo("strong");
    assertThat(Weigher.word(25)).isEqualTo("strong");
  }
}
