/** The knowledge notes, their bibliography and how they are found. */
package insidelift.engine.notes;
