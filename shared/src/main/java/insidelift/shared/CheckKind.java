package insidelift.shared;

import com.fasterxml.jackson.annotation.JsonValue;

/** How much a first check stops. */
public enum CheckKind implements Named {
  /** Stop driving. */
  STOP("stop"),
  /** Repair, re-align, drive again. */
  FAULT("fault"),
  /** Set or wait, then drive again. */
  SET_FIRST("set-first"),
  /** Look at it before driving; it blocks no advice. */
  LOOK("look");

  private final String id;

  CheckKind(String id) {
    this.id = id;
  }

  @Override
  @JsonValue
  public String id() {
    return id;
  }
}
