/** Entries as JSON, and back. */
package insidelift.engine.logbook.json;
