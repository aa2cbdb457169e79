package insidelift.shared;

import com.fasterxml.jackson.annotation.JsonValue;

/** Why a lever moves. */
public enum Kind implements Named {
  /** The trade's starting point for this track; all are set together. */
  TARGET("target"),
  /** This kart's own setting for this track; all are set together. */
  RESTORE("restore"),
  /** The last change is taken back. */
  UNDO("undo"),
  /** A symptom asks for it; one correction at a time. */
  CORRECTION("correction");

  private final String id;

  Kind(String id) {
    this.id = id;
  }

  @Override
  @JsonValue
  public String id() {
    return id;
  }
}
