package insidelift.console.start;

import insidelift.console.advice.CaseAdvice;
import insidelift.console.asking.Choices;
import insidelift.console.asking.LineAsker;
import insidelift.console.cli.Habits;
import insidelift.console.dialogue.Consultation;
import insidelift.console.report.AdviceText;
import insidelift.console.terminal.Screen;
import insidelift.console.terminal.TerminalLibrary;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.session.Session;
import insidelift.engine.disk.DataFolder;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.use.DemoSeason;
import insidelift.engine.logbook.use.LogTables;
import insidelift.engine.units.Units;
import insidelift.shared.advice.Advice;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;

/**
 * Goes once through what a user does, without a word: the launcher lets the Java machine watch, and
 * keeps what it learned so that the next start is quick.
 */
@Command(name = "rehearse", hidden = true)
final class RehearseCommand implements Callable<Integer> {

  private static final String CASE =
      """
      {"schema": 1, "answers": {"water": "wet", "steering-weight": "heavy", "power": "mid"},
       "kart": {"camber": {"left": 0.0, "right": 0.0}}}
      """;

  @Override
  public Integer call() throws IOException {
    TerminalLibrary.rehearse();
    Habits.units();
    lookForTheFolder();
    adviseForAFile();
    consult("\r\r", true);
    consult("\r", false);
    Advisor advisor = Advisor.load();
    Session session = new Session(advisor);
    session.answer("water", "wet");
    session.answer("steering-weight", "heavy");
    session.open();
    Advice advice = session.advice();
    Logbook season = DemoSeason.book();
    LogTables.days(season);
    LogTables.run(season, season.lastWritten().orElseThrow().number(), Units.METRIC);
    try (Screen screen = Screen.open(Map.of("TERM", "dumb"))) {
      new AdviceText(screen.width()).lines(advice, session.situation());
      LineAsker.page(
          Choices.of(advisor.vocabulary().questions().get(0), "", List.of()), screen.width());
    }
    return 0;
  }

  private static void lookForTheFolder() {
    try {
      DataFolder.find();
    } catch (LogbookProblem e) {
      // Whoever really needs it says so.
    }
  }

  /** From the greeting to a question that nobody answers. */
  private static void consult(String pressed, boolean keys) throws IOException {
    Path folder = Files.createTempDirectory("insidelift");
    try (Screen screen = Screen.rehearsed(pressed, keys)) {
      Consultation.hold(
          screen, folder, Consultation.words(Units.METRIC), Units.METRIC, Optional.empty());
    } finally {
      try (Stream<Path> files = Files.list(folder)) {
        for (Path file : files.toList()) {
          Files.delete(file);
        }
      }
      Files.delete(folder);
    }
  }

  private static void adviseForAFile() throws IOException {
    Path file = Files.createTempFile("insidelift", ".json");
    try (PrintWriter nowhere = new PrintWriter(Writer.nullWriter())) {
      Files.writeString(file, CASE);
      CaseAdvice.plain("advise", file.toString(), "--json").orElseThrow().print(nowhere, nowhere);
    } finally {
      Files.delete(file);
    }
  }
}
