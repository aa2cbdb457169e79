package insidelift.console;

import insidelift.engine.logbook.DataFolder;
import insidelift.engine.logbook.Logbook;
import insidelift.engine.logbook.LogbookProblem;
import insidelift.engine.proof.Feel;
import insidelift.engine.proof.LapColumns;
import insidelift.engine.proof.LapTimes;
import insidelift.engine.proof.Proof;
import insidelift.engine.proof.UnreadableLapTimes;
import insidelift.shared.situation.Printable;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code prove BEFORE AFTER [AGAIN]}: whether a change made the laps quicker. */
@Command(
    name = "prove",
    mixinStandardHelpOptions = true,
    header = "Compares lap times before and after a change: keep it, undo it, or cannot tell.",
    description = {
      "",
      "A lap file has one time a line, or \"lap,time\", in driving order with the out-lap first;",
      "run:12 is run 12 of the logbook.",
      "AGAIN is a third run with the change taken back; it is the best guard against a track that",
      "changes by itself.",
      ""
    })
final class ProveCommand implements Callable<Integer> {

  private static final String FOLDER = "this is a folder, not a file";

  @Parameters(index = "0", paramLabel = "BEFORE", description = "lap times before the change")
  private String before;

  @Parameters(index = "1", paramLabel = "AFTER", description = "lap times with the change")
  private String after;

  @Parameters(
      index = "2",
      arity = "0..1",
      paramLabel = "AGAIN",
      description = "lap times with the change taken back")
  private String again;

  @Option(
      names = "--feel",
      paramLabel = "WORD",
      defaultValue = "unknown",
      description = "what the driver felt: better, same, worse or unknown")
  private String feel;

  @Option(names = "--json", description = "print the result as JSON")
  private boolean json;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    Feel felt =
        Feel.of(feel)
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(),
                        "--feel: "
                            + Printable.quoted(feel)
                            + " is not one of better, same, worse, unknown"));
    PrintWriter out = spec.commandLine().getOut();
    Proof proof;
    try {
      proof =
          Proof.of(
              laps(before),
              laps(after),
              again == null ? Optional.empty() : Optional.of(laps(again)),
              felt);
    } catch (UnreadableLapTimes | LogbookProblem | IllegalArgumentException e) {
      return failed(e.getMessage());
    } catch (IOException e) {
      return failed(why(e));
    }
    if (json) {
      out.println(proof.toJson());
    } else {
      Glyphs.forOutput(Insidelift.charset(System.out)).fit(proof.text()).forEach(out::println);
    }
    out.flush();
    return 0;
  }

  /** The laps of a file, of standard input or of a logged run. */
  static LapTimes laps(String name) throws UnreadableLapTimes, LogbookProblem, IOException {
    if (name.matches("run:\\d{1,9}")) {
      return logged(Integer.parseInt(name.substring("run:".length())));
    }
    if (name.equals("-")) {
      return LapTimes.read("standard input", System.in, LapColumns.STANDARD);
    }
    Path file = Path.of(name);
    if (Files.isDirectory(file)) {
      throw new FileSystemException(name, null, FOLDER);
    }
    return LapTimes.read(file);
  }

  /** Why a lap file cannot be read, with its name. */
  static String why(IOException e) {
    if (!(e instanceof FileSystemException known)) {
      return "it cannot be read";
    }
    String name = Printable.shown(known.getFile(), 200);
    if (e instanceof NoSuchFileException) {
      return name + ": there is no such file";
    }
    return name + ": " + (FOLDER.equals(known.getReason()) ? FOLDER : "it cannot be read");
  }

  /** The laps of a run of the logbook, named {@code run:12}. */
  private static LapTimes logged(int number) throws LogbookProblem {
    return Logbook.read(DataFolder.find())
        .lapTimes(number)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "run:" + number + ": the logbook has no lap times of such a run"));
  }

  private int failed(String message) {
    spec.commandLine().getErr().println("insidelift: " + Text.safe(message));
    return Insidelift.FAILED;
  }
}
