/**
 * The verbs that teach, and those for who edits the knowledge: notes, lessons, cards, drill, audit.
 */
package insidelift.console.learning;
