package insidelift.rules.fact;

import insidelift.rules.fact.Spoken.By;
import org.kie.api.definition.rule.Rule;

/**
 * What the weighing comes to.
 *
 * @param kind {@code fix}, {@code undo}, {@code keep}, {@code restore}, {@code move}, {@code again}
 *     (drive it once more as it is) or {@code wait}
 * @param by the rule that chose
 */
public record Choice(String kind, By by) {

  /** A choice by a rule that speaks. */
  public Choice(Rule rule, String kind) {
    this(kind, By.of(rule));
  }
}
