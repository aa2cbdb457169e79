/** Turns a situation into facts, and what the rules make of them into degrees and positions. */
package insidelift.engine.consultation.decision;
