package insidelift.shared;

import com.fasterxml.jackson.annotation.JsonValue;

/** A front-end setting that Insidelift moves. */
public enum Lever implements Named {
  /** Camber: the lean of the wheel, positive with its top outward. */
  CAMBER("camber"),
  /** Caster: the lean of the kingpin, more with its top further back. */
  CASTER("caster");

  private final String id;

  Lever(String id) {
    this.id = id;
  }

  /** Whether a lever's id is that of one of these, and not of a lever beside them. */
  public static boolean isOne(String id) {
    return CAMBER.id.equals(id) || CASTER.id.equals(id);
  }

  @Override
  @JsonValue
  public String id() {
    return id;
  }
}
