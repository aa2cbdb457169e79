/**
 * Which question to ask next.
 *
 * <p>Completions of what is known are drawn and decided off the index. Of the open questions that a
 * rule which can still come true reads, those that make sense are ranked by the information they
 * give on what to do now for their effort, and the best is asked only if its answer changes what to
 * do now. That is trying, not proof: a test counts how often a completion drawn anew still comes to
 * something else.
 */
package insidelift.engine.consultation.foresight;
