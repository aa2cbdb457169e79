/** The tests and estimates that the proof stands on. */
package insidelift.engine.proof.statistics;
