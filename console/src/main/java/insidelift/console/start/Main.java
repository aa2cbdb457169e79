package insidelift.console.start;

import insidelift.console.advice.CaseAdvice;
import insidelift.console.cli.Habits;
import insidelift.console.dialogue.Consultation;
import insidelift.console.report.Text;
import insidelift.console.terminal.ExitCode;
import insidelift.console.terminal.Outputs;
import insidelift.console.terminal.ProgressLine;
import insidelift.engine.consultation.session.AdvisorLoader;
import insidelift.engine.disk.DataFolder;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.units.Units;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;

/**
 * Where the program starts. What is asked for most often is begun here, without the library that
 * understands command lines: its classes are too old to be kept ready between starts, and reading
 * them takes as long as deciding on a case. So nothing in this class may name one of them.
 */
public final class Main {

  private Main() {}

  /**
   * What libraries write in a log belongs on no screen: where the disk is full, the terminal is
   * read without its native library, and that is all. Java makes one of these instead of a log on
   * the screen, and only if something is logged at all.
   */
  public static final class Unheard {}

  /** Runs the command line and exits with its code. */
  public static void main(String[] args) {
    if (args.length > 1 && args[0].equals("advise")) {
      AdvisorLoader.ahead();
    }
    System.setProperty("java.util.logging.config.class", Unheard.class.getName());
    int code;
    try {
      code = run(args);
    } catch (LinkageError e) {
      System.err.println("insidelift: this build is incomplete: build it again (" + e + ")");
      code = ExitCode.FAILED;
    } catch (RuntimeException | Error e) {
      code = broke(e, Outputs.writer(System.err));
    }
    System.exit(code);
  }

  public static int run(String... args) {
    if (args.length == 0) {
      // Without a word to understand, the first question need not wait for whoever understands it.
      return consult(
          Outputs.writer(System.out), Outputs.writer(System.err), Habits.units(), Optional.empty());
    }
    if (!List.of(args).contains("-")) {
      // Whoever types into standard input is not waiting.
      ProgressLine.begin("Working");
    }
    try {
      int code = understood(args);
      return Outputs.arrived() ? code : ExitCode.FAILED;
    } finally {
      ProgressLine.end();
    }
  }

  private static int understood(String... args) {
    Optional<CaseAdvice> advise = CaseAdvice.plain(args);
    if (advise.isEmpty()) {
      return Insidelift.execute(args);
    }
    PrintWriter err = Outputs.writer(System.err);
    try {
      return advise.get().print(Outputs.writer(System.out), err);
    } catch (IOException | RuntimeException e) {
      return broke(e, err);
    }
  }

  /** A consultation; what was said already, if anything, is read back first. */
  static int consult(PrintWriter out, PrintWriter err, Units units, Optional<String> said) {
    try {
      return Consultation.start(out, DataFolder.find(), units, said);
    } catch (LogbookProblem e) {
      err.println("insidelift: " + Text.safe(e.getMessage()));
      return ExitCode.FAILED;
    }
  }

  /** Says that the program is at fault, in one line; the code to exit with. */
  static int broke(Throwable e, PrintWriter err) {
    if (!ending()) {
      err.println(
          "insidelift: a fault of this program, not of yours: "
              + Text.safe(e.getClass().getSimpleName() + ": " + e.getMessage()));
    }
    return ExitCode.FAILED;
  }

  /** Whether a signal ends the program: then whoever reads the terminal is cut off, rightly. */
  private static boolean ending() {
    Thread hook = new Thread(() -> {});
    try {
      Runtime.getRuntime().addShutdownHook(hook);
      Runtime.getRuntime().removeShutdownHook(hook);
      return false;
    } catch (IllegalStateException e) {
      return true;
    }
  }
}
