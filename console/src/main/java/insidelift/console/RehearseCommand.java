package insidelift.console;

import insidelift.engine.consultation.Advisor;
import insidelift.engine.consultation.Session;
import insidelift.engine.logbook.DemoSeason;
import insidelift.engine.logbook.LogTables;
import insidelift.engine.logbook.Logbook;
import insidelift.engine.units.Units;
import insidelift.shared.advice.Advice;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/**
 * Goes once through what a user does, without a word: the launcher lets the Java machine watch, and
 * keeps what it learned so that the next start is quick.
 */
@Command(name = "rehearse", hidden = true)
final class RehearseCommand implements Callable<Integer> {

  @Override
  public Integer call() throws IOException {
    Advisor advisor = Advisor.load();
    Session session = new Session(advisor);
    session.answer("water", "wet");
    session.answer("steering-weight", "heavy");
    session.open();
    Advice advice = session.advice();
    JsonFileCommand.pretty(advice);
    Logbook season = DemoSeason.book();
    LogTables.days(season);
    LogTables.run(season, season.lastWritten().orElseThrow().number(), Units.METRIC);
    try (Screen screen = Screen.open(Map.of("TERM", "dumb"))) {
      new AdviceText(screen.width()).lines(advice);
      LineAsker.page(
          Choices.of(advisor.vocabulary().questions().get(0), "", List.of()), screen.width());
    }
    return 0;
  }
}
