package insidelift.shared;

import com.fasterxml.jackson.annotation.JsonValue;

/** What lets one correction go before another, the first in this list first. */
public enum Rank implements Named {
  /** The last change made it worse. */
  UNDO("undo"),
  /** The last change made it better, and it is not there yet. */
  CARRY_ON("carry-on"),
  /** Inner edges hot and the rear loose at turn-in: caster first. */
  ENTRY_EDGE("entry-edge"),
  /** The tyres show it, and their profile does not come back. */
  TYRES("tyres"),
  /** The state of the track names the lever. */
  TRACK("track"),
  /** The power class names the lever. */
  CLASS("class"),
  /** The driver cannot hold the steering. */
  CONTROL("control"),
  /** The phase that hurts most. */
  WORST_PHASE("worst-phase"),
  /** The earliest phase with a complaint: turn-in. */
  TURN_IN("turn-in"),
  /** Mid-corner. */
  MID_CORNER("mid-corner"),
  /** The exit. */
  EXIT("exit");

  private final String id;

  Rank(String id) {
    this.id = id;
  }

  @Override
  @JsonValue
  public String id() {
    return id;
  }
}
