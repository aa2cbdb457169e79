package insidelift.shared;

import com.fasterxml.jackson.annotation.JsonValue;

/** A named mark in the table of sizes that a rule may not move past. */
public enum Mark implements Named {
  /** A little negative camber. */
  A_LITTLE_NEGATIVE("a-little-negative");

  private final String id;

  Mark(String id) {
    this.id = id;
  }

  @Override
  @JsonValue
  public String id() {
    return id;
  }
}
