/**
 * Did the change make the laps quicker? Lap times of the run before, the run after and, best of
 * all, a return run on the old setting go in; a verdict with its interval comes out.
 *
 * <p>{@link insidelift.engine.proof.Proof} is the way in, {@link
 * insidelift.engine.proof.laps.LapTimes} reads its files. Every seconds value here is in seconds; a
 * negative shift is quicker. What is judgement and not statistics is collected in {@code
 * Assumptions}.
 *
 * <p>Papers are cited from memory. What they say is tested here against published results, a second
 * library and simulation, not taken on trust.
 */
package insidelift.engine.proof;
