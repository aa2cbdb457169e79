package insidelift.shared;

import com.fasterxml.jackson.annotation.JsonValue;

/** What an advice comes to. */
public enum Status implements Named {
  /** A fault or a setting must be put right before any lever is touched. */
  FIX_FIRST("fix-first"),
  /** At least one lever moves now. */
  CHANGE("change"),
  /** No lever moves now, for the reasons given. */
  HOLD("hold"),
  /** Too little is known to say anything. */
  NOT_ENOUGH("not-enough");

  private final String id;

  Status(String id) {
    this.id = id;
  }

  @Override
  @JsonValue
  public String id() {
    return id;
  }
}
