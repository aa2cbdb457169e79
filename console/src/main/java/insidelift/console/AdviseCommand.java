package insidelift.console;

import insidelift.engine.consultation.Advisor;
import insidelift.engine.consultation.AdvisorLoader;
import insidelift.engine.geometry.RefusedInputException;
import insidelift.engine.logbook.DataFolder;
import insidelift.engine.logbook.DemoSeason;
import insidelift.engine.logbook.Logbook;
import insidelift.engine.logbook.LogbookProblem;
import insidelift.engine.logbook.Notice;
import insidelift.engine.logbook.OwnLog;
import insidelift.engine.units.Units;
import insidelift.shared.advice.Advice;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.CaseReader;
import insidelift.shared.situation.JsonOutput;
import insidelift.shared.situation.Printable;
import insidelift.shared.situation.Situation;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
    description = {"", "The same advice as the consultation gives, without its questions.", ""})
final class AdviseCommand implements Callable<Integer> {

  @Parameters(paramLabel = "CASE", description = "the case file, or - for standard input")
  private String file;

  @Option(names = "--json", description = "print the advice as JSON")
  private boolean json;

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

  /**
   * The command for words that name a case file and say nothing else but {@code --json}. Scripts
   * ask for that over and over, and it can be understood without the library that understands
   * everything else, which takes longer than the rules do.
   *
   * @return the command; empty if the words are anything else
   */
  static Optional<AdviseCommand> plain(String... args) {
    List<String> words = new ArrayList<>(List.of(args));
    if (words.isEmpty() || !words.remove(0).equals("advise")) {
      return Optional.empty();
    }
    AdviseCommand command = new AdviseCommand();
    command.overlay = new OverlayOption();
    command.units = new UnitsOption();
    command.json = words.remove("--json");
    boolean file = words.size() == 1 && words.get(0).matches("-|[^-@].*");
    if (!file) {
      return Optional.empty();
    }
    command.file = words.get(0);
    return Optional.of(command);
  }

  @Override
  public Integer call() throws IOException {
    return call(spec.commandLine().getOut(), spec.commandLine().getErr());
  }

  int call(PrintWriter out, PrintWriter err) throws IOException {
    AdvisorLoader loader = AdvisorLoader.now(json ? Units.METRIC : units.chosen());
    String name = file.equals("-") ? "standard input" : Printable.shown(file, 200);
    Situation situation;
    try {
      situation = InputFile.read(file, in -> new CaseReader(loader.vocabulary()).read(in));
    } catch (CaseProblem e) {
      err.println("insidelift: " + name + ": " + e.getMessage());
      return Insidelift.FAILED;
    }
    if (json) {
      JsonOutput.prepare(Advice.class);
    }
    Advisor advisor;
    try {
      advisor = overlay.beside(loader.advisor());
    } catch (CaseProblem e) {
      err.println("insidelift: " + e.getMessage());
      return Insidelift.FAILED;
    }
    Advice advice;
    List<String> logged = List.of();
    boolean withLog = log || demo;
    try {
      if (withLog) {
        AdviceWithLog known = AdviceWithLog.of(advisor, situation, this::ownLog);
        advice = known.advice();
        logged = known.lines();
      } else {
        advice = advisor.advise(situation);
      }
    } catch (LogbookProblem e) {
      err.println("insidelift: " + Text.safe(e.getMessage()));
      return Insidelift.FAILED;
    } catch (RefusedInputException e) {
      err.println("insidelift: " + name + ": kart." + Text.safe(e.getMessage()));
      return Insidelift.FAILED;
    }
    if (json) {
      out.println(JsonOutput.pretty(withLog ? AdviceWithLog.json(advice, logged) : advice));
    } else {
      Glyphs glyphs = Glyphs.forOutput(Insidelift.charset(System.out));
      glyphs.fit(new AdviceText(Text.WIDTH).lines(advice)).forEach(out::println);
      if (withLog) {
        glyphs
            .fit(new Text(Text.WIDTH).line("").heading("Your own log").lines())
            .forEach(out::println);
        glyphs.fit(logged).forEach(out::println);
      }
    }
    out.flush();
    return 0;
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
    for (Notice notice : book.notices()) {
      spec.commandLine().getErr().println("insidelift: " + Text.safe(notice.sentence()));
    }
    return own;
  }
}
