package insidelift.rules.weigh;

import org.kie.api.definition.rule.Rule;

/**
 * What one answer says for or against a finding.
 *
 * @param rule the line that says so
 * @param note the note it stands on
 * @param finding a finding's id
 * @param weight a quarter of a deciban each; negative speaks against
 * @param observation the question whose answer it is: one observation counts once a finding
 */
public record Evidence(String rule, String note, String finding, int weight, String observation) {

  /** Evidence by a rule that speaks. */
  public Evidence(Rule rule, String finding, int weight, String observation) {
    this(rule.getName(), Notes.of(rule), finding, weight, observation);
  }
}
