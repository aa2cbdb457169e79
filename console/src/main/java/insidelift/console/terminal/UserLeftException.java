package insidelift.console.terminal;

/** The user left: by Ctrl-C, or at the end of the input. */
public final class UserLeftException extends Exception {

  private static final long serialVersionUID = 1L;

  private final boolean interrupted;

  public UserLeftException(boolean interrupted) {
    super(interrupted ? "left by Ctrl-C" : "left at the end of the input");
    this.interrupted = interrupted;
  }

  public boolean interrupted() {
    return interrupted;
  }
}
