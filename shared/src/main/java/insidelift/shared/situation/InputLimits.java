package insidelift.shared.situation;

import com.fasterxml.jackson.core.StreamReadConstraints;

/**
 * Every limit on the size of what is read from outside, in one place, each with its reason. Ranges
 * of values stand where the values are read.
 */
public final class InputLimits {

  /**
   * Bytes of a case or kart file: a full one has under 4 kB, so this is generous 250 times over.
   */
  public static final int MAX_BYTES = 1 << 20;

  /** Levels of nesting: a case needs five (temperatures of a side), the rest is room for shops. */
  public static final int MAX_DEPTH = 16;

  /** Characters of one string or key: the longest word of the vocabulary has under 20. */
  public static final int MAX_STRING = 10_000;

  /** Digits of one number: more than a double can hold is a mistake or an attack. */
  public static final int MAX_DIGITS = 40;

  /** Characters of outside text that are ever echoed in a message: enough to find the place. */
  public static final int MAX_ECHO = 60;

  /** Files of a folder of cases: a coach's season; a larger folder is the wrong one. */
  public static final int MAX_CASE_FILES = 500;

  /** Claims of a shop's file: ten times what a shop can keep in its head. */
  public static final int MAX_CLAIMS = 200;

  /** Bytes of a logger's table: a long run at 100 samples a second, with twenty columns. */
  public static final int MAX_LOGGER_BYTES = 32_000_000;

  /** Bytes of the seal of a logbook: one line that names another. */
  public static final int MAX_SEAL_BYTES = 1000;

  /** Bytes of a file of lap times: a day is a few kilobytes; a megabyte is some other file. */
  public static final int MAX_LAP_BYTES = 1_000_000;

  /** Characters of pasted lap times: 500 laps of twenty characters, and some. */
  public static final int MAX_PASTED = 20_000;

  /** Characters of a sentence that are listened to: a spoken sentence has under 200. */
  public static final int MAX_SENTENCE = 1_000;

  /** Bytes of a line of a logbook: 500 laps, every answer and a geometry take under 40 kB. */
  public static final int MAX_LOG_LINE = 256 * 1024;

  /** Bytes of a logbook: fifty thousand runs; it is read into memory. */
  public static final int MAX_LOG_BYTES = 128 * 1024 * 1024;

  /** Characters of a key in a logbook: a setting's name, written in full. */
  private static final int MAX_LOG_KEY = 2_000;

  private InputLimits() {}

  /** For a file of its own. */
  public static StreamReadConstraints json() {
    return json(MAX_BYTES, MAX_STRING, MAX_STRING);
  }

  /** For one line of a logbook. */
  public static StreamReadConstraints logLine() {
    return json(MAX_LOG_LINE, MAX_LOG_LINE, MAX_LOG_KEY);
  }

  private static StreamReadConstraints json(int document, int string, int key) {
    return StreamReadConstraints.builder()
        .maxDocumentLength(document)
        .maxNestingDepth(MAX_DEPTH)
        .maxStringLength(string)
        .maxNameLength(key)
        .maxNumberLength(MAX_DIGITS)
        .build();
  }
}
