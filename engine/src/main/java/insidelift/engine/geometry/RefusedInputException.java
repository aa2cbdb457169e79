package insidelift.engine.geometry;

import insidelift.shared.situation.Printable;

/**
 * An input that this package will not compute with. The message names the place and the reason and
 * is meant for the user as it stands.
 */
public final class RefusedInputException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** The longest message: a place, a reason and a quoted word. */
  private static final int LONGEST = 1000;

  public RefusedInputException(String place, String reason) {
    super(Printable.shown(place + ": " + reason, LONGEST));
  }
}
