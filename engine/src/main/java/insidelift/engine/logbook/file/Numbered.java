package insidelift.engine.logbook.file;

import insidelift.engine.logbook.entry.Entry;

/**
 * A record of the logbook as it stands now, with its corrections applied.
 *
 * @param number its number, which is its line in the file; other records refer to it by that
 * @param entry what it says
 * @param corrected whether it was corrected
 * @param <E> the kind
 */
public record Numbered<E extends Entry>(int number, E entry, boolean corrected) {}
