package insidelift.console.learning;

import insidelift.console.cli.OverlayOption;
import insidelift.console.report.AuditText;
import insidelift.console.report.Glyphs;
import insidelift.console.terminal.ExitCode;
import insidelift.console.terminal.Outputs;
import insidelift.engine.audit.Audit;
import insidelift.engine.audit.AuditReport;
import insidelift.engine.audit.CaseLibrary;
import insidelift.engine.audit.CaseLibrary.Disagreement;
import insidelift.engine.audit.Effort;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.shared.casefile.JsonOutput;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Printable;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code audit}: the rules and notes against themselves, or against a shop's own cases. */
@Command(
    name = "audit",
    mixinStandardHelpOptions = true,
    header = "Audits the rules and notes, or holds them against your cases.",
    description = {
      "",
      "Looks for rules that contradict, repeat or never speak, for changes without cautions,"
          + " sources that do not resolve and situations without an answer. Exit 1 if it finds an error.",
      ""
    })
public final class AuditCommand implements Callable<Integer> {

  @Option(names = "--json", description = "print the report as JSON")
  private boolean json;

  @Option(names = "--thorough", description = "visit far more situations; this takes many minutes")
  private boolean thorough;

  @Option(
      names = "--cases",
      paramLabel = "FOLDER",
      description = "hold the rules against the cases in this folder instead")
  private String cases;

  @Mixin private OverlayOption overlay;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    try {
      Advisor advisor = overlay.beside(Advisor.load());
      boolean failed = cases == null ? audit(advisor, out) : cases(advisor, out);
      out.flush();
      return failed ? ExitCode.FAILED : 0;
    } catch (CaseProblem e) {
      spec.commandLine().getErr().println("insidelift: " + e.getMessage());
      return ExitCode.FAILED;
    }
  }

  private boolean audit(Advisor advisor, PrintWriter out) throws IOException {
    AuditReport report =
        Audit.of(
            advisor,
            LocalDate.now(ZoneId.systemDefault()),
            thorough ? Effort.THOROUGH : Effort.QUICK);
    if (json) {
      out.println(JsonOutput.pretty(report));
    } else {
      print(AuditText.lines(report), out);
    }
    return report.failed();
  }

  private boolean cases(Advisor advisor, PrintWriter out) throws IOException, CaseProblem {
    CaseLibrary library = library(advisor);
    List<Disagreement> disagreements = library.disagreements(advisor);
    if (json) {
      Map<String, Object> report = new LinkedHashMap<>();
      report.put("schema", AuditReport.SCHEMA);
      report.put("cases", library.entries().size());
      report.put("bySource", library.bySource());
      report.put("disagreements", disagreements);
      out.println(JsonOutput.pretty(report));
    } else {
      print(AuditText.lines(library, disagreements), out);
    }
    return !disagreements.isEmpty();
  }

  private CaseLibrary library(Advisor advisor) throws IOException, CaseProblem {
    String name = Printable.shown(cases, 200);
    try {
      Path folder = Path.of(cases);
      if (!Files.isDirectory(folder)) {
        throw new CaseProblem(name + ": there is no such folder");
      }
      CaseLibrary library = CaseLibrary.read(folder, advisor.vocabulary());
      if (library.entries().isEmpty()) {
        throw new CaseProblem(name + ": no case stands in a .json file of this folder");
      }
      return library;
    } catch (InvalidPathException e) {
      throw new CaseProblem(name + ": there is no such folder");
    }
  }

  private static void print(List<String> lines, PrintWriter out) {
    Glyphs.forOutput(Outputs.charset(System.out)).fit(lines).forEach(out::println);
  }
}
