package insidelift.engine.geometry;

/**
 * An input that this package will not compute with. The message names the place and the reason and
 * is meant for the user as it stands.
 */
public final class RefusedInputException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  RefusedInputException(String place, String reason) {
    super(printable(place + ": " + reason));
  }

  /** A key or value quoted from a file must not steer the terminal that shows it. */
  private static String printable(String message) {
    return message.replaceAll("\\p{Cntrl}", "?");
  }
}
