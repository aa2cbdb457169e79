/** The screen, standard output, the end of the program, and how somebody leaves it. */
package insidelift.console.terminal;
