/** The words that all modules speak: questions, answers, findings, levers. */
package insidelift.shared;
