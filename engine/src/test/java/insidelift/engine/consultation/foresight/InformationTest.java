package insidelift.engine.consultation.foresight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Values from J. de Kleer and B. C. Williams (1987) and D. A. Huffman (1952), by their formulas.
 */
class InformationTest {

  private static final double[] PRIORS = {.4, .3, .2, .1};

  @Test
  void theEntropyOfFourUnequalChancesIsAsPublished() {
    assertThat(Information.entropy(PRIORS)).isCloseTo(1.8464, within(5e-5));
  }

  @Test
  void aQuestionThatPartsPairsGainsLessThanOneThatPartsTheLikeliest() {
    double[][] pairs = {{.4, .3, 0, 0}, {0, 0, .2, .1}};
    double[][] likeliest = {{.4, 0, 0, 0}, {0, .3, .2, .1}};

    assertThat(Information.gain(pairs)).isCloseTo(.8813, within(5e-5));
    assertThat(Information.gain(likeliest)).isCloseTo(.9710, within(5e-5));
  }

  @Test
  void notKnowingWithAChanceTakesThatPartOfTheGain() {
    double u = 0.2;
    double[][] asked = {
      {.4 * (1 - u), 0, 0, 0},
      {0, .3 * (1 - u), .2 * (1 - u), .1 * (1 - u)},
      {.4 * u, .3 * u, .2 * u, .1 * u}
    };

    assertThat(Information.gain(asked)).isCloseTo((1 - u) * .9710, within(5e-5));
  }

  @Test
  void theFloorOfYesOrNoQuestionsIsHuffmans() {
    assertThat(QuestionsReport.huffman(PRIORS, 2)).isCloseTo(1.9, within(1e-12));
  }

  @Test
  void countsThatAreOnlyChanceGainNothing() {
    double[][] counts = {{26, 24}, {24, 26}, {25, 25}};

    assertThat(Information.gain(counts)).isPositive();
    assertThat(Information.gainFromCounts(counts)).isZero();
  }
}
