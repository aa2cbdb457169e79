/** Lap times as they come from a file or are typed, and which of them count. */
package insidelift.engine.proof.laps;
