/** The advice, and its JSON. */
package insidelift.shared.advice;
