package insidelift.engine.audit.check;

import com.fasterxml.jackson.annotation.JsonValue;
import insidelift.shared.Named;

/** How much a remark matters. */
public enum Severity implements Named {
  /** The knowledge is wrong or unsafe: the audit fails. */
  ERROR("error"),
  /** Somebody should look at it. */
  WARNING("warning"),
  /** Worth knowing. */
  NOTE("note");

  private final String id;

  Severity(String id) {
    this.id = id;
  }

  @Override
  @JsonValue
  public String id() {
    return id;
  }
}
