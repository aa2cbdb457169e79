package insidelift.shared;

import com.fasterxml.jackson.annotation.JsonValue;

/** Why a lever moves. */
public enum Kind implements Named {
  /** The track's condition asks for it; all targets are set together. */
  TARGET("target"),
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
