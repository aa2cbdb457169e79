package insidelift.engine.logbook.entry;

/**
 * An entry that the logbook does not take. The message names the part and the reason and is meant
 * for the user as it stands.
 */
public final class RefusedEntryException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  public RefusedEntryException(String part, String reason) {
    super(part + ": " + reason);
  }
}
