package insidelift.rules.fact;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import org.kie.api.definition.rule.Rule;

/**
 * What one answer says for or against a finding.
 *
 * @param by the line that says so
 * @param finding a finding's id
 * @param weight a quarter of a deciban each; negative speaks against
 * @param observation the question whose answer it is: one observation counts once a finding
 */
public record Evidence(By by, String finding, int weight, String observation) implements Spoken {

  /** Evidence by a rule that speaks. */
  public Evidence(Rule rule, String finding, int weight, String observation) {
    this(By.of(rule), finding, weight, observation);
  }

  /**
   * What pieces come to. Weights of evidence add (I. J. Good, Probability and the Weighing of
   * Evidence, 1950), but what rests on one observation counts once, with the strongest weight:
   * otherwise one remark would convince by being repeated.
   *
   * @param pieces pieces of evidence for one finding
   */
  public static int sum(Collection<?> pieces) {
    Map<String, Integer> strongest = new HashMap<>();
    for (Object piece : pieces) {
      Evidence one = (Evidence) piece;
      strongest.merge(one.observation(), one.weight(), Evidence::stronger);
    }
    int sum = 0;
    for (int weight : strongest.values()) {
      sum += weight;
    }
    return sum;
  }

  /** Of equals, what speaks against: the order in which rules speak must not matter. */
  private static int stronger(int one, int other) {
    int size = Math.abs(one) - Math.abs(other);
    return size > 0 ? one : size < 0 ? other : Math.min(one, other);
  }
}
