/**
 * Teaches the knowledge that the advice is made from: cards with a schedule, and cases with a
 * hidden cause. What is right and wrong is never written down here: the rules say it each time.
 */
package insidelift.engine.training.drill;
