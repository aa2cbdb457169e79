package insidelift.console.learning;

import insidelift.console.cli.OutputFile;
import insidelift.console.page.DrillSheet;
import insidelift.console.page.Pages;
import insidelift.console.report.AdviceText.Part;
import insidelift.console.report.Text;
import insidelift.console.terminal.Leaves;
import insidelift.console.terminal.ProgressLine;
import insidelift.console.terminal.Screen;
import insidelift.console.terminal.UserLeftException;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.foresight.NextQuestion;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.logbook.entry.AttemptEntry;
import insidelift.engine.logbook.file.Numbered;
import insidelift.engine.training.card.StudyLog;
import insidelift.engine.training.drill.Cases;
import insidelift.engine.training.drill.Drill;
import insidelift.engine.training.drill.DrillCase;
import insidelift.engine.training.drill.DrillMove;
import insidelift.engine.training.drill.Judgement;
import insidelift.engine.training.drill.ResultSheet;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Printable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code drill}: cases with a hidden cause; and for a coach folders, sheets and replays. */
@Command(
    name = "drill",
    mixinStandardHelpOptions = true,
    header = "Practises on cases with a hidden cause, judged by the rules.",
    description = {
      "",
      "Look the kart over, ask, measure; then name the finding, lever, direction and size. Economy,"
          + " conclusion, reason and safety are judged apart. A missed fault is the worst mistake.",
      ""
    })
public final class DrillCommand extends Practice {

  /** What to do instead of the next case. */
  static final class Way {
    @Option(names = "--case", paramLabel = "NUMBER", description = "the case of a number")
    private Long number;

    @Option(names = "--cases", paramLabel = "FOLDER", description = "a coach's own case files")
    private Path folder;

    @Option(names = "--sheet", paramLabel = "TRAINEE", description = "a trainee's result sheet")
    private String sheet;

    @Option(names = "--replay", paramLabel = "N", description = "an attempt, move by move")
    private Integer replay;
  }

  @ArgGroup private Way way = new Way();

  @Option(names = "--out", paramLabel = "FILE", description = "--sheet as a page, into this file")
  private String page;

  @Option(names = "--force", description = "replace that file if it exists already")
  private boolean force;

  @Spec private CommandSpec command;

  @Override
  int practise(Advisor advisor, StudyLog log) throws LogbookProblem, CaseProblem, IOException {
    if (page != null && way.sheet == null) {
      throw new ParameterException(
          command.commandLine(), "--out writes a result sheet: say whose, with --sheet TRAINEE");
    }
    if (way.sheet != null) {
      return sheet(advisor, log.attempts(way.sheet));
    }
    if (way.replay != null) {
      return replay(advisor, log);
    }
    Cases cases = new Cases(advisor);
    if (way.folder != null) {
      return folder(advisor, log, cases);
    }
    return hold(
        "Left. Finished cases are kept; an unfinished one comes back by its number.",
        screen -> {
          NextQuestion next = new NextQuestion(advisor.decider());
          DrillCase hidden = way.number == null ? next(cases, log) : cases.numbered(way.number);
          play(screen, advisor, next, log, "Case " + hidden.source(), hidden);
          while (another(screen)) {
            DrillCase other = next(cases, log);
            play(screen, advisor, next, log, "Case " + other.source(), other);
          }
        });
  }

  private DrillCase next(Cases cases, StudyLog log) throws LogbookProblem {
    return cases.next(log.attempts(trainee()).stream().map(Numbered::entry).toList());
  }

  private int folder(Advisor advisor, StudyLog log, Cases cases)
      throws LogbookProblem, CaseProblem, IOException {
    List<DrillCase> all;
    try {
      all = cases.inFolder(way.folder);
    } catch (CaseProblem e) {
      return failed(Printable.shown(way.folder.toString(), 200) + ": " + e.getMessage());
    }
    Set<String> done =
        log.attempts(trainee()).stream()
            .map(attempt -> attempt.entry().source())
            .collect(Collectors.toSet());
    List<DrillCase> left = all.stream().filter(one -> !done.contains(one.source())).toList();
    if (left.isEmpty()) {
      return print(List.of(done(all.size())));
    }
    return hold(
        "Left. Finished cases are kept; the others come again.",
        screen -> {
          NextQuestion next = new NextQuestion(advisor.decider());
          for (int i = 0; i < left.size(); i++) {
            // The name of a file may say too much.
            String title = "Case %d of %d".formatted(all.indexOf(left.get(i)) + 1, all.size());
            play(screen, advisor, next, log, title, left.get(i));
            if (i + 1 < left.size() && !another(screen)) {
              return;
            }
          }
          screen.say("", done(all.size()));
        });
  }

  private static String done(int cases) {
    return cases == 1
        ? "The one case of this folder is done."
        : "All %d cases of this folder are done.".formatted(cases);
  }

  private void play(
      Screen screen,
      Advisor advisor,
      NextQuestion next,
      StudyLog log,
      String title,
      DrillCase hidden)
      throws UserLeftException, LogbookProblem {
    Drill drill = new Drill(advisor, next, hidden);
    new DrillPage(screen, advisor, drill).play(title);
    Judgement judged;
    ProgressLine.begin("Judging");
    try {
      judged = new Judgement(advisor, next, drill);
    } finally {
      ProgressLine.end();
    }
    AttemptEntry attempt =
        new AttemptEntry(
            trainee(),
            hidden.source(),
            hidden.hidden(),
            drill.moves().stream().map(DrillMove::words).toList(),
            today());
    // What it came to is shown even where the disk refuses to keep it.
    try {
      int number = log.add(attempt);
      show(screen, advisor, judged);
      screen.say(
          "", "Kept as attempt %d. Again: insidelift drill --replay %d".formatted(number, number));
    } catch (LogbookProblem e) {
      show(screen, advisor, judged);
      throw e;
    }
  }

  private static void show(Screen screen, Advisor advisor, Judgement judged)
      throws UserLeftException {
    Leaves.show(screen, new DrillText(screen.width(), advisor).result(judged));
  }

  private static boolean another(Screen screen) throws UserLeftException {
    screen.say("");
    while (true) {
      String line = screen.ask("Enter: the next case, or type quit:", List.of("quit"));
      if (line.isEmpty()) {
        return true;
      }
      if ("quit".startsWith(line)) {
        return false;
      }
    }
  }

  private int sheet(Advisor advisor, List<Numbered<AttemptEntry>> attempts) {
    if (attempts.isEmpty()) {
      return failed("no attempt of " + Printable.quoted(way.sheet) + " is kept here");
    }
    String of = Printable.shown(attempts.get(0).entry().trainee());
    ResultSheet sheet = new ResultSheet(advisor, new NextQuestion(advisor.decider()), attempts);
    if (page == null) {
      List<String> lines = new ArrayList<>(List.of("Result sheet of " + of, ""));
      lines.addAll(sheet.lines());
      return print(lines);
    }
    String shown = Printable.shown(page, 200);
    try {
      OutputFile.write(page, new Pages().results(DrillSheet.of(sheet, of, today())), force);
    } catch (CaseProblem e) {
      return failed(shown + ": " + e.getMessage());
    }
    return print(List.of("The result sheet is in " + shown + "."));
  }

  private int replay(Advisor advisor, StudyLog log) throws LogbookProblem {
    Optional<Numbered<AttemptEntry>> found =
        log.attempts().stream().filter(one -> one.number() == way.replay).findFirst();
    if (found.isEmpty()) {
      return failed(
          "there is no attempt %d; a result sheet has their numbers".formatted(way.replay));
    }
    AttemptEntry attempt = found.get().entry();
    NextQuestion next = new NextQuestion(advisor.decider());
    Drill drill = new Drill(advisor, next, new DrillCase(attempt.source(), attempt.hidden()));
    DrillText text = new DrillText(Text.WIDTH, advisor);
    List<String> lines =
        new ArrayList<>(text.opening("Case " + Printable.shown(attempt.source()), drill.hidden()));
    lines.set(
        0,
        "Attempt %d, %s, on %s"
            .formatted(way.replay, Printable.shown(attempt.trainee()), attempt.day()));
    try {
      for (String words : attempt.moves()) {
        DrillMove move = DrillMove.of(words);
        lines.addAll(text.replayed(move, drill.take(move)));
      }
    } catch (IllegalArgumentException e) {
      return failed(
          "attempt %d cannot be replayed: %s".formatted(way.replay, Text.safe(e.getMessage())));
    }
    Judgement judged = new Judgement(advisor, next, drill);
    for (Part part : text.result(judged)) {
      Text page = new Text(Text.WIDTH).line("").heading(part.title());
      part.lines().forEach(page::line);
      lines.addAll(page.lines());
    }
    return print(lines);
  }
}
