package insidelift.console.advice;

import insidelift.console.cli.CaseSource;
import insidelift.console.cli.OutputFile;
import insidelift.console.cli.OverlayOption;
import insidelift.console.cli.UnitsOption;
import insidelift.console.log.LogDamage;
import insidelift.console.log.RunPlace;
import insidelift.console.page.Pages;
import insidelift.console.page.ResultPage;
import insidelift.console.report.Glyphs;
import insidelift.console.report.KartSheet;
import insidelift.console.report.SheetText;
import insidelift.console.report.Text;
import insidelift.console.terminal.ExitCode;
import insidelift.console.terminal.Outputs;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.disk.DataFolder;
import insidelift.engine.disk.LogbookProblem;
import insidelift.engine.geometry.RefusedInputException;
import insidelift.engine.logbook.entry.KartEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.Numbered;
import insidelift.engine.sheet.FrontEndSheet;
import insidelift.engine.sheet.Standing;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.LeverWord;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Printable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code sheet SOURCE}: how a kart stands for dry and for wet, to hand over and come back to. */
@Command(
    name = "sheet",
    mixinStandardHelpOptions = true,
    header = "Shows a kart's own dry and wet setting, toe and the changeover.",
    description = {
      "",
      "For example:",
      "  insidelift sheet last",
      "  insidelift sheet run:12 --out heron.html",
      "  insidelift sheet --kart \"Heron 7\" --back",
      "  insidelift sheet --all sheets",
      "A kart's own setting is kept with \"insidelift log keep\", or at the end of a consultation"
          + " whose advice is to leave the kart as it is. What nobody told stays empty; where we"
          + " would start is marked as such.",
      ""
    })
public final class SheetCommand implements Callable<Integer> {

  @Parameters(
      paramLabel = "SOURCE",
      arity = "0..1",
      description = "a case file, - for standard input, last, run:12 or run:last")
  private String file;

  @Option(names = "--kart", paramLabel = "NAME", description = "a kart of the logbook instead")
  private String kart;

  @Option(
      names = "--all",
      paramLabel = "FOLDER",
      description = "a page for every kart of the logbook, and a board of all")
  private String all;

  @Option(names = "--out", paramLabel = "FILE", description = "write it as one HTML page")
  private String out;

  @Option(names = "--force", description = "replace files that exist already")
  private boolean force;

  @Option(names = "--back", description = "the back of the sheet: the changeover both ways")
  private boolean back;

  @Option(
      names = "--for",
      paramLabel = "TEXT",
      defaultValue = "",
      description = "what the kart is called on the sheet")
  private String subject;

  @Mixin private OverlayOption overlay;
  @Mixin private UnitsOption units;
  @Spec private CommandSpec spec;

  private final CaseSource.Folder data;
  private final Pages pages = new Pages();

  SheetCommand() {
    this(DataFolder::find);
  }

  SheetCommand(CaseSource.Folder data) {
    this.data = data;
  }

  @Override
  public Integer call() {
    int named = (file == null ? 0 : 1) + (kart == null ? 0 : 1) + (all == null ? 0 : 1);
    if (named != 1) {
      throw new ParameterException(
          spec.commandLine(), "name one of SOURCE, --kart NAME and --all FOLDER");
    }
    String place = "";
    try {
      Advisor advisor = overlay.beside(Advisor.load(units.chosen()));
      if (all != null) {
        place = Printable.shown(all, 200) + ": ";
        return shop(advisor, Logbook.read(data.find()));
      }
      CaseSource.Found found;
      if (kart == null) {
        CaseSource source = new CaseSource(file);
        place = source.shown() + ": ";
        found = source.read(advisor.vocabulary(), data);
      } else {
        found = ofKart(Logbook.read(data.find()));
      }
      KartSheet sheet = sheet(advisor, found);
      if (out == null) {
        SheetText text = new SheetText(Text.WIDTH);
        print(back ? text.back(sheet) : text.front(sheet));
        return LogDamage.say(found.notices(), spec.commandLine().getErr());
      }
      place = Printable.shown(out, 200) + ": ";
      OutputFile.write(out, pages.kartSheet(sheet), force);
      print(List.of("The sheet is in " + Printable.shown(out, 200) + "."));
      return LogDamage.say(found.notices(), spec.commandLine().getErr());
    } catch (CaseProblem e) {
      return failed(place + e.getMessage());
    } catch (LogbookProblem e) {
      return failed(Text.safe(e.getMessage()));
    } catch (RefusedInputException e) {
      return failed(place + "kart." + Text.safe(e.getMessage()));
    }
  }

  private CaseSource.Found ofKart(Logbook book) {
    try {
      return CaseSource.kart(book, RunPlace.need("kart", kart, book::kart));
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), String.valueOf(e.getMessage()), e);
    }
  }

  private KartSheet sheet(Advisor advisor, CaseSource.Found found) {
    String name = subject.isEmpty() ? found.kart() : subject;
    return KartSheet.of(
        FrontEndSheet.of(advisor, found.situation()),
        levers(advisor.vocabulary()),
        name,
        LocalDate.now(ZoneId.systemDefault()));
  }

  private static List<String> levers(Vocabulary vocabulary) {
    return vocabulary.levers().stream()
        .filter(lever -> lever.most() != null && !lever.id().equals("toe"))
        .map(LeverWord::id)
        .toList();
  }

  /** A page for each kart and the board. A name never becomes a path. */
  private int shop(Advisor advisor, Logbook book) throws CaseProblem {
    if (book.karts().isEmpty()) {
      throw new CaseProblem("there is no kart in the logbook yet; insidelift log add kart NAME");
    }
    Path folder = Path.of(all);
    if (!Files.isDirectory(folder)) {
      throw new CaseProblem("there is no such folder; make it first, or name another");
    }
    List<List<String>> rows = new ArrayList<>();
    for (Numbered<KartEntry> one : book.karts()) {
      CaseSource.Found found = CaseSource.kart(book, one.number());
      String page = "kart-" + one.number() + ".html";
      OutputFile.write(
          folder.resolve(page).toString(), pages.kartSheet(sheet(advisor, found)), force);
      Standing standing = Standing.of(found.situation());
      rows.add(
          List.of(Printable.shown(found.kart(), 40), standing.track(), standing.words(), page));
    }
    ResultPage board =
        new ResultPage(
            "Every kart against its own sheet",
            subject,
            LocalDate.now(ZoneId.systemDefault()).toString(),
            "As each stood when it was last driven.",
            List.of("Kart", "Track", "Against its own sheet", "Page"),
            rows,
            List.of());
    OutputFile.write(folder.resolve("board.html").toString(), pages.results(board), force);
    Text text = new Text(Text.WIDTH).heading(board.title());
    rows.forEach(
        row ->
            text.item(
                "  ", "%s, %s: %s (%s)".formatted(row.get(0), row.get(1), row.get(2), row.get(3))));
    text.paragraph("The board is in board.html, all in " + Printable.shown(all, 200) + ".");
    print(text.lines());
    return LogDamage.say(book.notices(), spec.commandLine().getErr());
  }

  private void print(List<String> lines) {
    Glyphs.forOutput(Outputs.charset(System.out))
        .fit(lines)
        .forEach(spec.commandLine().getOut()::println);
    spec.commandLine().getOut().flush();
  }

  private int failed(String why) {
    spec.commandLine().getErr().println("insidelift: " + why);
    return ExitCode.FAILED;
  }
}
