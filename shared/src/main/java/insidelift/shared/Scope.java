package insidelift.shared;

import com.fasterxml.jackson.annotation.JsonValue;

/** What a limit holds back. */
public enum Scope implements Named {
  /** Every move. */
  ALL("all"),
  /** Only one that brings the set-up back to another condition's. */
  RESTORE("restore"),
  /** Only one by how the kart feels; an undo and what the track asks still stand. */
  MOVE("move");

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
