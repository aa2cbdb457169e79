package insidelift.engine.consultation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import insidelift.rules.fact.Evidence;
import insidelift.rules.fact.Spoken.By;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The sums of evidence held against published certainty factors. A weight of evidence w in decibans
 * and a certainty factor CF are two displays of one likelihood ratio: 10^(w/10) = 1/(1 - CF) for CF
 * >= 0 and 1 + CF for CF < 0; the parallel rule of certainty factors is then the product of ratios,
 * that is, the sum of weights.
 *
 * <p>Sources: B. Buchanan and E. Shortliffe, Rule-Based Expert Systems (1984), the parallel rule;
 * P. Norvig, Paradigms of Artificial Intelligence Programming (1992), chapter 16, values and
 * exercise 16.1; G. Novak, lecture notes, University of Texas at Austin.
 */
class CertaintyFactorsTest {

  private static final double DIGITS = 5e-4;

  private static double cf(double decibans) {
    return decibans >= 0 ? 1 - Math.pow(10, -decibans / 10) : Math.pow(10, decibans / 10) - 1;
  }

  private static double decibans(double cf) {
    return cf >= 0 ? -10 * Math.log10(1 - cf) : 10 * Math.log10(1 + cf);
  }

  /** The parallel rule as it is published. */
  private static double parallel(double a, double b) {
    if (a >= 0 && b >= 0) {
      return a + b - a * b;
    }
    if (a < 0 && b < 0) {
      return a + b + a * b;
    }
    return (a + b) / (1 - Math.min(Math.abs(a), Math.abs(b)));
  }

  private static double bySum(double a, double b) {
    return cf(decibans(a) + decibans(b));
  }

  /** The rules keep quarters of a deciban. */
  private static double weighed(double... decibans) {
    List<Evidence> pieces = new ArrayList<>();
    for (double one : decibans) {
      String name = "observation-" + pieces.size();
      pieces.add(new Evidence(new By(name, "note"), "finding", (int) Math.round(4 * one), name));
    }
    return Evidence.sum(pieces) / 4.0;
  }

  @Test
  void theTableOfDecibansIsThePublishedOne() {
    assertThat(cf(-10)).isCloseTo(-.900, within(DIGITS));
    assertThat(cf(-5)).isCloseTo(-.684, within(DIGITS));
    assertThat(cf(2)).isCloseTo(.369, within(DIGITS));
    assertThat(cf(5)).isCloseTo(.684, within(DIGITS));
    assertThat(cf(10)).isCloseTo(.900, within(DIGITS));
  }

  @Test
  void sumsGiveThePublishedCombinations() {
    assertThat(bySum(.60, .40)).isCloseTo(.76, within(1e-12)); // Norvig, chapter 16
    assertThat(bySum(.36, .76)).isCloseTo(.8464, within(1e-12)); // Norvig, chapter 16
    assertThat(bySum(.5, .6)).isCloseTo(.8, within(1e-12)); // Novak
    assertThat(bySum(.6, .5)).isCloseTo(.8, within(1e-12)); // Novak, the other way round
  }

  @Test
  void oppositesCancel() {
    // Norvig, chapter 16: combine(x, -x) is zero.
    for (double x : new double[] {.1, .369, .5, .684, .9, .99}) {
      assertThat(bySum(x, -x)).isCloseTo(0, within(1e-12));
    }
    assertThat(weighed(5, -5)).isZero();
    assertThat(weighed(10, -10)).isZero();
  }

  @Test
  void theWeightsOfTheRulesCombineAsTheParallelRuleSays() {
    double[] weights = {-10, -5, -2, 1.25, 2, 3, 5, 10};
    for (double a : weights) {
      for (double b : weights) {
        assertThat(cf(weighed(a, b)))
            .as("%s and %s", a, b)
            .isCloseTo(parallel(cf(a), cf(b)), within(1e-12));
        for (double c : weights) {
          assertThat(cf(weighed(a, b, c)))
              .as("%s, %s and %s", a, b, c)
              .isCloseTo(parallel(parallel(cf(a), cf(b)), cf(c)), within(1e-12));
        }
      }
    }
  }

  @Test
  void aRemarkRepeatedWouldConvinceUnlessItCountsOnce() {
    // Norvig, exercise 16.1: from .01, 298 further copies lift the factor above .95.
    double factor = .01;
    int copies = 0;
    while (factor <= .95) {
      factor = parallel(factor, .01);
      copies++;
    }
    assertThat(copies).isEqualTo(298);

    List<Evidence> repeated = new ArrayList<>();
    for (int i = 0; i <= copies; i++) {
      repeated.add(new Evidence(new By("rule-" + i, "note"), "finding", 8, "turn-in"));
    }
    assertThat(Evidence.sum(repeated)).isEqualTo(8);
  }
}
