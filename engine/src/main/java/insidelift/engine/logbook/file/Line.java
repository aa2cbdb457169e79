package insidelift.engine.logbook.file;

import insidelift.engine.logbook.entry.Entry;

/**
 * One line of the file.
 *
 * @param number its number, from 1
 * @param at when it was written, in UTC to the second, as in {@code 2026-04-12T09:14:05Z}
 * @param held what it says
 */
public record Line(int number, String at, RecordContent held) {

  /** A line that says this. */
  public Line(int number, String at, Entry entry) {
    this(number, at, RecordContent.of(entry));
  }

  /**
   * What it says.
   *
   * @throws IllegalStateException if it is damaged
   */
  public Entry entry() {
    return held.entry()
        .orElseThrow(() -> new IllegalStateException("line " + number + " is damaged"));
  }
}
