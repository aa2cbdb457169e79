package insidelift.console.report;

import insidelift.engine.audit.AuditReport;
import insidelift.engine.audit.AuditReport.Allowed;
import insidelift.engine.audit.AuditReport.Result;
import insidelift.engine.audit.AuditReport.Visit;
import insidelift.engine.audit.CaseLibrary;
import insidelift.engine.audit.CaseLibrary.Disagreement;
import insidelift.engine.audit.check.Remark;
import insidelift.shared.situation.Printable;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** An audit as text. */
public final class AuditText {

  /** A combination count up to here is written out; a larger one as a power of ten. */
  private static final double WRITTEN_OUT = 1e9;

  private AuditText() {}

  public static List<String> lines(AuditReport report) {
    Text text = new Text(Text.WIDTH);
    text.heading("Audit of %d rules and %d notes".formatted(report.rules(), report.notes()));
    for (Result result : report.checks()) {
      text.item("", "%s: %s".formatted(result.id(), result.title()));
      if (result.remarks().isEmpty()) {
        text.line("  Nothing found.");
      }
      result.remarks().forEach(remark -> remark(remark, text));
      for (Allowed allowed : result.allowed()) {
        text.item("  allowed  ", allowed.remark().what() + place(allowed.remark()));
        text.item("           ", allowed.reason() + " (" + allowed.date() + ")");
      }
    }
    text.heading("Situations visited: " + report.situations());
    for (Visit visit : report.visits()) {
      String of = visit.visited() == visit.size() ? "" : " of " + size(visit.size());
      String partly = visit.whole() || of.isEmpty() ? "" : ", not all of them";
      text.item("  ", visit.of() + ": " + visit.visited() + of + partly);
    }
    text.blank();
    text.paragraph(
        report.failed() ? "There is an error: see above." : "No error that is not allowed.");
    return text.lines();
  }

  private static void remark(Remark remark, Text text) {
    String mark = "  %-8s ".formatted(remark.severity().id());
    text.item(mark, remark.what() + place(remark));
    if (!remark.witness().isEmpty()) {
      String answers =
          remark.witness().entrySet().stream()
              .map(answer -> answer.getKey() + ": " + answer.getValue())
              .collect(Collectors.joining(", "));
      text.item(" ".repeat(mark.length()), "as in " + answers);
    }
  }

  private static String place(Remark remark) {
    return remark.file().isEmpty()
        ? ""
        : " (" + Printable.shown(remark.file()) + ":" + remark.line() + ")";
  }

  private static String size(double size) {
    return size < WRITTEN_OUT ? "" + (long) size : String.format(Locale.ROOT, "%.0e", size);
  }

  public static List<String> lines(CaseLibrary library, List<Disagreement> disagreements) {
    Text text = new Text(Text.WIDTH);
    text.heading("Cases by source");
    library
        .bySource()
        .forEach(
            (source, count) -> text.item("  %5d  ".formatted(count), Printable.shown(source, 200)));
    text.heading(
        "%d of %d cases disagree".formatted(disagreements.size(), library.entries().size()));
    if (disagreements.isEmpty()) {
      text.line("Nothing found.");
    }
    String file = "";
    for (Disagreement disagreement : disagreements) {
      if (!disagreement.file().equals(file)) {
        file = disagreement.file();
        text.line(Printable.shown(file) + ".json");
      }
      text.item("  ", Printable.shown(disagreement.name(), 300));
      disagreement
          .differences()
          .forEach(difference -> text.item("      ", Printable.shown(difference, 300)));
    }
    return text.lines();
  }
}
