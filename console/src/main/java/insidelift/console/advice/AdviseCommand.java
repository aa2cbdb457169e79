package insidelift.console.advice;

import insidelift.console.cli.CaseSource;
import insidelift.console.cli.OverlayOption;
import insidelift.console.cli.UnitsOption;
import insidelift.console.log.LogDamage;
import insidelift.console.log.RunPlace;
import insidelift.console.report.AdviceWithLog;
import insidelift.engine.disk.DataFolder;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.use.DemoSeason;
import insidelift.engine.logbook.use.OwnLog;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code advise CASE}: the advice for a case file. */
@Command(
    name = "advise",
    mixinStandardHelpOptions = true,
    header = "Gives the advice for a case file.",
    description = {"", "The same answer as the consultation gives, without its questions.", ""})
public final class AdviseCommand implements Callable<Integer> {

  @Parameters(paramLabel = CaseSource.LABEL, description = CaseSource.WAYS)
  private String file;

  @Option(names = "--json", description = "print the advice as JSON")
  private boolean json;

  @Option(names = "--full", description = "print all that stands behind the answer too")
  private boolean full;

  @Option(
      names = "--log",
      description = {
        "let your own log fill in what the case leaves open, and order the corrections",
        "by what has worked; --kart, --driver and --track, or else those of the last run"
      })
  private boolean log;

  @Option(names = "--demo", description = "--log with the log of an invented season")
  private boolean demo;

  @Mixin private RunPlace place;

  @Mixin private OverlayOption overlay;

  @Mixin private UnitsOption units;

  @Spec private CommandSpec spec;

  private int damage;

  @Override
  public Integer call() throws IOException {
    AdviceWithLog.Source source = log || demo ? this::ownLog : null;
    int code =
        new CaseAdvice(file, json, full, units::chosen, overlay, source)
            .print(spec.commandLine().getOut(), spec.commandLine().getErr());
    return Math.max(code, damage);
  }

  private OwnLog ownLog() throws LogbookProblem {
    Path folder = DataFolder.find();
    Logbook book = demo ? DemoSeason.book() : Logbook.read(folder);
    OwnLog own;
    try {
      own = OwnLog.of(folder, book, place.kart(book), place.driver(book), place.track(book));
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), "--log: " + e.getMessage(), e);
    }
    damage = LogDamage.say(book.notices(), spec.commandLine().getErr());
    return own;
  }
}
