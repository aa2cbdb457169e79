/** The index of the rules, and its one evaluator of three values. */
package insidelift.shared.index;
