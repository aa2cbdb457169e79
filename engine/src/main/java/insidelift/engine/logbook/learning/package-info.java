/** What past runs teach about this kart at this track. */
package insidelift.engine.logbook.learning;
