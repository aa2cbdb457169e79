package insidelift.engine.logbook;

import java.time.Instant;

/**
 * One line of the file.
 *
 * @param number its number, from 1
 * @param at when it was written, to the second
 * @param entry what it says
 */
record Line(int number, Instant at, Entry entry) {}
