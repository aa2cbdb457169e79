/**
 * What can be written down: karts, drivers, tracks, days, runs, attempts; each within its limits.
 */
package insidelift.engine.logbook.entry;
