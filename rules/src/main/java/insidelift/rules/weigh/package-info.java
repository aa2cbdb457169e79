/** Weigh, then choose: the facts that the rules of the front end read and make. */
package insidelift.rules.weigh;
