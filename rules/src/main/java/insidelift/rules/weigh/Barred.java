package insidelift.rules.weigh;

import org.kie.api.definition.rule.Rule;

/**
 * A move that is not made, whatever it gains.
 *
 * @param rule the limit
 * @param note the note it stands on
 * @param lever a lever's id
 * @param direction which way
 * @param scope {@code all}, {@code restore} or {@code move}: the choices that it binds
 */
public record Barred(String rule, String note, String lever, String direction, String scope) {

  /** A limit by a rule that speaks. */
  public Barred(Rule rule, String lever, String direction, String scope) {
    this(rule.getName(), Notes.of(rule), lever, direction, scope);
  }
}
