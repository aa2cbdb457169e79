/**
 * The rules, compiled or off the index: who reasons, and what comes of it.
 *
 * <p>Only the parts of the rule engine that run compiled rules are shipped. {@code RuleBase} enters
 * the compiled model directly and counts the rules, since an engine that finds none reports no
 * error.
 */
package insidelift.rules;
