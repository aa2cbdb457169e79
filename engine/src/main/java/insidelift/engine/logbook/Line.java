package insidelift.engine.logbook;

/**
 * One line of the file.
 *
 * @param number its number, from 1
 * @param at when it was written, in UTC to the second, as in {@code 2026-04-12T09:14:05Z}
 * @param entry what it says
 */
record Line(int number, String at, Entry entry) {}
