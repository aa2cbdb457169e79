package insidelift.rules.weigh;

import org.kie.api.definition.rule.Rule;

/** Which note a rule stands on. */
final class Notes {

  private Notes() {}

  /** The note that the rule's annotation names, without the quotation marks it is kept in. */
  static String of(Rule rule) {
    String note = String.valueOf(rule.getMetaData().get("note"));
    return note.startsWith("\"") ? note.substring(1, note.length() - 1) : note;
  }
}
