/**
 * All text that is shown: the answer on one screen, its sections, sheets, notes; one wrapper for
 * all.
 */
package insidelift.console.report;
