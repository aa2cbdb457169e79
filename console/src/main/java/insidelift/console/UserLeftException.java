package insidelift.console;

/** The user left: by Ctrl-C, or at the end of the input. */
final class UserLeftException extends Exception {

  private static final long serialVersionUID = 1L;

  private final boolean interrupted;

  UserLeftException(boolean interrupted) {
    super(interrupted ? "left by Ctrl-C" : "left at the end of the input");
    this.interrupted = interrupted;
  }

  boolean interrupted() {
    return interrupted;
  }
}
