/** What is known of a kart and its day. */
package insidelift.shared.situation;
