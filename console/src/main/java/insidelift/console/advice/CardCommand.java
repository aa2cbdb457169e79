package insidelift.console.advice;

import insidelift.console.cli.CaseSource;
import insidelift.console.cli.OutputFile;
import insidelift.console.cli.OverlayOption;
import insidelift.console.cli.UnitsOption;
import insidelift.console.log.LogDamage;
import insidelift.console.page.Pages;
import insidelift.console.page.PitCardMaker;
import insidelift.console.report.Text;
import insidelift.console.terminal.ExitCode;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.disk.DataFolder;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.geometry.RefusedInputException;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Printable;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code card CASE --out FILE}: the advice as a page to print and to take to the kart. */
@Command(
    name = "card",
    mixinStandardHelpOptions = true,
    header = "Writes the advice as a pit card: a page to do, a page why.",
    description = {
      "",
      "For example:",
      "  insidelift card my-case.json --out card.html",
      "  insidelift card last --out card.html --for \"Mira, heat 2\"",
      "  insidelift card run:12 --out card.html",
      "The card is one HTML file. It needs no network, prints on A4 and Letter and can be read on"
          + " a phone. last takes the last consultation that was finished, run:12 what the logbook"
          + " knows of run 12, run:last what it knows of the run written last.",
      ""
    })
public final class CardCommand implements Callable<Integer> {

  @Parameters(paramLabel = CaseSource.LABEL, description = CaseSource.WAYS)
  private String file;

  @Option(names = "--out", paramLabel = "FILE", required = true, description = "the file to write")
  private String out;

  @Option(names = "--force", description = "replace the file if it exists already")
  private boolean force;

  @Option(
      names = "--for",
      paramLabel = "TEXT",
      defaultValue = "",
      description = "whom and what it is for: a line on top of the card")
  private String subject;

  @Mixin private OverlayOption overlay;

  private final CaseSource.Folder data;

  CardCommand() {
    this(DataFolder::find);
  }

  CardCommand(CaseSource.Folder data) {
    this.data = data;
  }

  @Mixin private UnitsOption units;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    Advisor advisor;
    try {
      advisor = overlay.beside(Advisor.load(units.chosen()));
    } catch (CaseProblem e) {
      return failed(e.getMessage());
    }
    CaseSource source = new CaseSource(file);
    CaseSource.Found found;
    try {
      found = source.read(advisor.vocabulary(), data);
    } catch (CaseProblem e) {
      return failed(source.shown() + ": " + e.getMessage());
    } catch (LogbookProblem e) {
      return failed(Text.safe(e.getMessage()));
    }
    String page;
    try {
      page =
          new Pages()
              .pitCard(
                  PitCardMaker.card(
                      found.situation(),
                      advisor.advise(found.situation()),
                      subject.isEmpty() ? found.subject() : subject,
                      LocalDate.now(ZoneId.systemDefault())));
    } catch (RefusedInputException e) {
      return failed(source.shown() + ": kart." + Text.safe(e.getMessage()));
    }
    String shown = Printable.shown(out, 200);
    try {
      OutputFile.write(out, page, force);
    } catch (CaseProblem e) {
      return failed(shown + ": " + e.getMessage());
    }
    spec.commandLine().getOut().println("The pit card is in " + shown + ".");
    return LogDamage.say(found.notices(), spec.commandLine().getErr());
  }

  private int failed(String why) {
    spec.commandLine().getErr().println("insidelift: " + why);
    return ExitCode.FAILED;
  }
}
