package insidelift.rules.weigh;

import org.kie.api.definition.rule.Rule;

/**
 * What the weighing comes to.
 *
 * @param kind {@code fix}, {@code undo}, {@code keep}, {@code restore}, {@code move}, {@code again}
 *     (drive it once more as it is) or {@code wait}
 * @param rule the rule that chose
 * @param note the note it stands on
 */
public record Choice(String kind, String rule, String note) {

  /** A choice by a rule that speaks. */
  public Choice(Rule rule, String kind) {
    this(kind, rule.getName(), Notes.of(rule));
  }
}
