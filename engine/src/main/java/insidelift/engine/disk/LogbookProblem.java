package insidelift.engine.disk;

/** The logbook cannot be read or written; the message is one sentence for the user. */
public final class LogbookProblem extends Exception {

  private static final long serialVersionUID = 1L;

  public LogbookProblem(String message) {
    super(message);
  }

  public LogbookProblem(String message, Throwable cause) {
    super(message, cause);
  }
}
