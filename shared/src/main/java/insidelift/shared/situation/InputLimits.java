package insidelift.shared.situation;

import com.fasterxml.jackson.core.StreamReadConstraints;

/** Every limit on what is read from outside, in one place, each with its reason. */
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

  private InputLimits() {}

  static StreamReadConstraints json() {
    return StreamReadConstraints.builder()
        .maxDocumentLength(MAX_BYTES)
        .maxNestingDepth(MAX_DEPTH)
        .maxStringLength(MAX_STRING)
        .maxNameLength(MAX_STRING)
        .maxNumberLength(MAX_DIGITS)
        .build();
  }
}
