package insidelift.rules.indexer;

import insidelift.shared.index.RuleIndex.IndexedRule;

/** A rule file that this build does not accept, with the place and the reason. */
final class UnplainRuleException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  UnplainRuleException(IndexedRule rule, String reason) {
    super("%s.drl:%d, rule \"%s\": %s".formatted(rule.family(), rule.line(), rule.id(), reason));
  }

  UnplainRuleException(String family, String reason) {
    super("%s.drl: %s".formatted(family, reason));
  }
}
