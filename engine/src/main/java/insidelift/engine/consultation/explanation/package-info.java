/** Answers why, how, why not and what if, from the sums and the notes. */
package insidelift.engine.consultation.explanation;
