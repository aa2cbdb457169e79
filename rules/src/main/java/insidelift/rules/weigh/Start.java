package insidelift.rules.weigh;

import org.kie.api.definition.rule.Rule;

/**
 * Where the trade starts a lever on a kart that nobody has a record of.
 *
 * @param value as in {@link Setting}
 */
public record Start(String rule, String note, String lever, int value) {

  /** A starting point by a rule that speaks. */
  public Start(Rule rule, String lever, int value) {
    this(rule.getName(), Notes.of(rule), lever, value);
  }
}
