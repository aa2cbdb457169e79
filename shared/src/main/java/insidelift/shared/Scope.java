package insidelift.shared;

import com.fasterxml.jackson.annotation.JsonValue;

/** What a limit holds back. */
public enum Scope implements Named {
  /** Every move. */
  ALL("all"),
  /** Corrections only; the track's targets still stand. */
  CORRECTIONS("corrections");

  private final String id;

  Scope(String id) {
    this.id = id;
  }

  @Override
  @JsonValue
  public String id() {
    return id;
  }
}
