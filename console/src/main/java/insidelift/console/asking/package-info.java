/** How something is asked, by keys or by the line, and how what is typed is understood. */
package insidelift.console.asking;
