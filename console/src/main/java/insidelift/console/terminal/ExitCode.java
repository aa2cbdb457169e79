package insidelift.console.terminal;

/** What the program ends with, as its help tells it; 0 when all is done. */
public final class ExitCode {

  /** A command failed: a file cannot be read or used. */
  public static final int FAILED = 1;

  /** Left by Ctrl-C, as shells have it: 128 and the number of the signal. */
  public static final int INTERRUPTED = 130;

  private ExitCode() {}
}
