/** The consultation: one page for each thing that is asked, answered, kept or done afterwards. */
package insidelift.console.dialogue;
