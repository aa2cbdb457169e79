/** Puts a decision into the words of the notes: suggestions, steps, cautions, other levers. */
package insidelift.engine.consultation.advice;
