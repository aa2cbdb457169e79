package insidelift.shared;

import com.fasterxml.jackson.annotation.JsonValue;

/** A column of the table of targets: the state of the track that a setting is meant for. */
public enum Column implements Named {
  /** Back to zero camber and neutral caster. */
  DRY("dry"),
  /** Damp. */
  DAMP("damp"),
  /** Wet. */
  WET("wet"),
  /** Standing water. */
  STANDING("standing");

  private final String id;

  Column(String id) {
    this.id = id;
  }

  @Override
  @JsonValue
  public String id() {
    return id;
  }
}
