/** What the logbook is used for: history for advice, tables, plots, export, the invented season. */
package insidelift.engine.logbook.use;
