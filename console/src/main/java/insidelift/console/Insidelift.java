package insidelift.console;

import insidelift.engine.logbook.DataFolder;
import insidelift.engine.logbook.LogbookProblem;
import insidelift.engine.units.Units;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command line: the consultation by itself, and a verb for everything else. */
@Command(
    name = "insidelift",
    version = "insidelift 0.1.0",
    mixinStandardHelpOptions = true,
    header = {
      "An advisor for the front end of a racing kart: what to change, and why.",
      "",
      "For example:",
      "  insidelift                               asks, and answers",
      "  insidelift demo                          shows an invented day",
      "  insidelift advise my-case.json           answers for a file",
      "  insidelift card --last --out card.html   the last answer, to print",
      "  insidelift notes                         what it all stands on",
      ""
    },
    description = {
      "",
      "Without a verb it asks, and answers with the next camber or caster change.",
      "It is no substitute for the chassis maker's manual, the rule book or a competent person.",
      ""
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done (also when the advice is to hold, or to fix something first)",
      "1:failed: a file cannot be read or used",
      "2:the command line is not understood",
      "129:the terminal went away",
      "130:left with Ctrl-C"
    },
    subcommands = {
      AdviseCommand.class,
      CardCommand.class,
      DemoCommand.class,
      PicturesCommand.class,
      PredictCommand.class,
      PositionsCommand.class,
      GaugeCommand.class,
      ManualCommand.class,
      ProveCommand.class,
      LogCommand.class,
      NotesCommand.class,
      LessonsCommand.class,
      CardsCommand.class,
      DrillCommand.class,
      AuditCommand.class,
      RehearseCommand.class
    })
public final class Insidelift implements Runnable {

  /** A command failed: a file cannot be read or used. */
  static final int FAILED = 1;

  /** Left by Ctrl-C, as shells have it: 128 and the number of the signal. */
  static final int INTERRUPTED = 130;

  @Mixin private UnitsOption units;

  @Spec private CommandSpec spec;

  private int consulted;

  /**
   * What libraries write in a log belongs on no screen: where the disk is full, the terminal is
   * read without its native library, and that is all. Java makes one of these instead of a log on
   * the screen, and only if something is logged at all.
   */
  public static final class Unheard {}

  /** Runs the command line and exits with its code. */
  public static void main(String[] args) {
    System.setProperty("java.util.logging.config.class", Unheard.class.getName());
    int code;
    try {
      code = run(args);
    } catch (LinkageError e) {
      System.err.println("insidelift: this build is incomplete: build it again (" + e + ")");
      code = FAILED;
    } catch (RuntimeException | Error e) {
      if (!ending()) {
        System.err.println("insidelift: " + fault(e));
      }
      code = FAILED;
    }
    System.exit(code);
  }

  private static String fault(Throwable e) {
    return "a fault of this program, not of yours: "
        + Text.safe(e.getClass().getSimpleName() + ": " + e.getMessage());
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

  static int run(String... args) {
    if (args.length == 0) {
      // Without a word to understand, the first question need not wait for whoever understands it.
      return consult(writer(System.out), writer(System.err), new UnitsOption().chosen());
    }
    if (!List.of(args).contains("-")) {
      // Whoever types into standard input is not waiting.
      Progress.begin("Working");
    }
    try {
      return understood(args);
    } finally {
      Progress.end();
    }
  }

  private static int understood(String... args) {
    Optional<AdviseCommand> advise = AdviseCommand.plain(args);
    if (advise.isPresent()) {
      PrintWriter err = writer(System.err);
      try {
        int code = advise.get().call(writer(System.out), err);
        return written(err) ? code : FAILED;
      } catch (IOException | RuntimeException e) {
        return broke(e, err);
      }
    }
    // Its warnings would print what was typed as it stands.
    CommandLine.tracer().setLevel(CommandLine.TraceLevel.OFF);
    Insidelift top = new Insidelift();
    CommandLine line =
        new CommandLine(top)
            .setOut(writer(System.out))
            .setErr(writer(System.err))
            .registerConverter(Double.class, new Decimal())
            .registerConverter(double.class, new Decimal())
            .setCaseInsensitiveEnumValuesAllowed(true)
            .setParameterExceptionHandler(Insidelift::misunderstood)
            .setExecutionExceptionHandler((e, broken, parsed) -> broke(e, broken.getErr()));
    int code = line.execute(args);
    return written(line.getErr()) ? (code == 0 ? top.consulted : code) : FAILED;
  }

  /** Whether all output reached its end; if not, that is said. */
  private static boolean written(PrintWriter err) {
    if (System.out.checkError() && !readerLeft()) {
      err.println("insidelift: the output cannot be written; is the disk full?");
      return false;
    }
    return true;
  }

  /** Whether whoever read the output has gone, as {@code head} does: that is no fault of a disk. */
  private static boolean readerLeft() {
    try (FileOutputStream out = new FileOutputStream(FileDescriptor.out)) {
      out.write('\n');
      return false;
    } catch (IOException e) {
      return String.valueOf(e.getMessage()).contains("pipe");
    }
  }

  @Override
  public void run() {
    consulted = consult(spec.commandLine().getOut(), spec.commandLine().getErr(), units.chosen());
  }

  private static int consult(PrintWriter out, PrintWriter err, Units units) {
    try {
      return Consultation.start(out, DataFolder.find(), units);
    } catch (LogbookProblem e) {
      err.println("insidelift: " + Text.safe(e.getMessage()));
      return FAILED;
    }
  }

  private static int misunderstood(ParameterException e, String[] args) {
    CommandLine line = e.getCommandLine();
    line.getErr().println("insidelift: " + Misunderstood.words(e));
    line.getErr().println("Try: " + line.getCommandSpec().qualifiedName() + " --help");
    return line.getCommandSpec().exitCodeOnInvalidInput();
  }

  private static int broke(Exception e, PrintWriter err) {
    if (!ending()) {
      err.println("insidelift: " + fault(e));
    }
    return FAILED;
  }

  /** The encoding of an output: what the terminal said when Java started, else the platform's. */
  static Charset charset(PrintStream stream) {
    return encoding(stream == System.err ? "stderr.encoding" : "stdout.encoding");
  }

  private static Charset encoding(String property) {
    // Java 17 knows the property by its older name.
    String name = System.getProperty(property, System.getProperty("sun." + property, ""));
    return name.isEmpty() || !Charset.isSupported(name)
        ? Charset.defaultCharset()
        : Charset.forName(name);
  }

  private static PrintWriter writer(PrintStream stream) {
    return new PrintWriter(new OutputStreamWriter(Progress.before(stream), charset(stream)), true);
  }
}
