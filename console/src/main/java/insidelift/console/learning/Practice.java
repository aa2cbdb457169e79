package insidelift.console.learning;

import insidelift.console.cli.UnitsOption;
import insidelift.console.report.Glyphs;
import insidelift.console.report.Text;
import insidelift.console.terminal.ExitCode;
import insidelift.console.terminal.Outputs;
import insidelift.console.terminal.Screen;
import insidelift.console.terminal.UserLeftException;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.disk.DataFolder;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.file.Notice;
import insidelift.engine.training.card.StudyLog;
import insidelift.shared.situation.CaseProblem;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** A command that teaches: it keeps what a trainee did in the training log. */
abstract class Practice implements Callable<Integer> {

  @Option(
      names = "--trainee",
      paramLabel = "NAME",
      defaultValue = "me",
      description = "who practises; without it \"me\"")
  private String trainee;

  @Mixin private UnitsOption units;

  @Spec private CommandSpec spec;

  /** Does it, with everything at hand. */
  abstract int practise(Advisor advisor, StudyLog log)
      throws LogbookProblem, CaseProblem, IOException;

  @Override
  public final Integer call() throws IOException {
    try {
      trainee = StudyLog.name(trainee);
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), "--" + e.getMessage(), e);
    }
    try {
      StudyLog log = new StudyLog(DataFolder.find());
      for (Notice notice : log.notices()) {
        spec.commandLine().getErr().println("insidelift: " + Text.safe(notice.sentence()));
      }
      return practise(Advisor.load(units.chosen()), log);
    } catch (LogbookProblem | CaseProblem | IllegalArgumentException e) {
      return failed(e.getMessage());
    }
  }

  final String trainee() {
    return trainee;
  }

  /** The day it is here. */
  static LocalDate today() {
    return LocalDate.now(ZoneId.systemDefault());
  }

  /** Says that it failed, and why. */
  final int failed(String message) {
    spec.commandLine().getErr().println("insidelift: " + Text.safe(message));
    return ExitCode.FAILED;
  }

  /** Prints lines without a dialogue. */
  final int print(List<String> lines) {
    Glyphs.forOutput(Outputs.charset(System.out))
        .fit(lines)
        .forEach(spec.commandLine().getOut()::println);
    spec.commandLine().getOut().flush();
    return 0;
  }

  /** What is done on a screen. */
  interface Dialogue {
    /** Holds it to its end. */
    void hold(Screen screen) throws UserLeftException, LogbookProblem;
  }

  /** Holds a dialogue on the terminal, with a last line when the user leaves. */
  final int hold(String farewell, Dialogue dialogue) throws LogbookProblem, IOException {
    try (Screen screen = Screen.open(System.getenv())) {
      screen.onLeaving(() -> screen.say(farewell));
      try {
        dialogue.hold(screen);
        return 0;
      } catch (UserLeftException left) {
        screen.say("", farewell);
        return left.interrupted() ? ExitCode.INTERRUPTED : 0;
      }
    }
  }
}
