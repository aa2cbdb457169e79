package insidelift.shared;

import com.fasterxml.jackson.annotation.JsonValue;

/** Which way a lever goes. */
public enum Direction implements Named {
  /** Toward positive camber; toward more caster. */
  MORE("more"),
  /** Toward negative camber; toward less caster. */
  LESS("less"),
  /** Nowhere: it stays as it is. */
  HOLD("hold");

  private final String id;

  Direction(String id) {
    this.id = id;
  }

  @Override
  @JsonValue
  public String id() {
    return id;
  }
}
