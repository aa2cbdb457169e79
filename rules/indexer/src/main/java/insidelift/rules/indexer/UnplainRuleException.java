package insidelift.rules.indexer;

import insidelift.shared.index.RuleIndex.IndexedRule;

/** A rule file that this build does not accept, with the place and the reason. */
final class UnplainRuleException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  UnplainRuleException(IndexedRule rule, String reason) {
    super("%s:%d, rule \"%s\": %s".formatted(rule.file(), rule.line(), rule.id(), reason));
  }

  UnplainRuleException(String family, String reason) {
    super("%s: %s".formatted(IndexedRule.file(family), reason));
  }
}
