package insidelift.rules.fact;

import org.kie.api.definition.rule.Rule;

/**
 * A move that is not made, whatever it gains.
 *
 * @param by the limit
 * @param lever a lever's id
 * @param direction which way
 * @param scope a {@link insidelift.shared.Scope}'s id: the choices that it binds
 */
public record Barred(By by, String lever, String direction, String scope) implements Spoken {

  /** A limit by a rule that speaks. */
  public Barred(Rule rule, String lever, String direction, String scope) {
    this(By.of(rule), lever, direction, scope);
  }

  /** Whether it is the end of the lever's range. */
  public boolean ends() {
    return by.note().equals("limit-range");
  }

  /** Whether it binds a choice of that scope. */
  public boolean binds(String choice) {
    return scope.equals("all") || scope.equals(choice);
  }

  /** The same limit the other way round. */
  public static String other(String direction) {
    return direction.equals("more") ? "less" : "more";
  }
}
