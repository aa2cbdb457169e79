/** What the verbs share on the command line: sources, outputs, units, dates, numbers. */
package insidelift.console.cli;
