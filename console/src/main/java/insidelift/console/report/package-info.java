/** What is shown as text: the answer on one screen, its sections, sheets, notes, help. */
package insidelift.console.report;
