/** The facts that rules read and insert. */
package insidelift.rules.fact;
