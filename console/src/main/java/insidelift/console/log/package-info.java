/** The verbs of the user's own logbook, and how a run is told. */
package insidelift.console.log;
