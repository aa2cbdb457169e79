package insidelift.engine.notes;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.audit.Audit;
import insidelift.engine.audit.AuditReport;
import insidelift.engine.audit.AuditReport.Result;
import insidelift.engine.audit.CaseLibrary;
import insidelift.engine.audit.Effort;
import insidelift.engine.audit.check.Severity;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.rules.RuleBase;
import insidelift.rules.indexer.WriteRuleIndex;
import insidelift.shared.ShippedJson;
import insidelift.shared.index.RuleIndex;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The guide for knowledge editors, followed as it stands: note, rule, cases, audit. */
class EditorsGuideTest {

  private static final Path GUIDE = Path.of("..", "DEVELOPERS.md");
  private static final Path RULES =
      Path.of("..", "rules", "src", "main", "resources", "insidelift", "rules");

  private static final Advisor BASE = Advisor.load();

  @TempDir private Path folder;

  /** The blocks of that kind in the guide, in their order. */
  private static List<String> blocks(String kind) throws IOException {
    List<String> blocks = new ArrayList<>();
    StringBuilder block = null;
    for (String line : Files.readAllLines(GUIDE)) {
      if (line.equals("```" + kind)) {
        block = new StringBuilder();
      } else if (block != null && line.equals("```")) {
        blocks.add(block.toString());
        block = null;
      } else if (block != null) {
        block.append(line).append('\n');
      }
    }
    return blocks;
  }

  private Advisor edited() throws IOException {
    Note note = NoteReader.read(blocks("markdown").get(0));
    Path rules = Files.createDirectory(folder.resolve("rules"));
    try (Stream<Path> files = Files.list(RULES)) {
      for (Path file : files.toList()) {
        Files.copy(file, rules.resolve(file.getFileName()));
      }
    }
    Files.writeString(
        rules.resolve("evidence.drl.csv"), blocks("csv").get(0), StandardOpenOption.APPEND);
    Path index = folder.resolve("rule-index.json");
    WriteRuleIndex.main(new String[] {rules.toString(), index.toString()});
    RuleIndex edited;
    try (InputStream in = Files.newInputStream(index)) {
      edited = RuleIndex.of(ShippedJson.read(in));
    }
    assertThat(edited.rules()).hasSize(BASE.rules().index().rules().size() + 1);
    return BASE.with(RuleBase.plain(edited), BASE.notes().with(List.of(note), Map.of()));
  }

  @Test
  void theNoteTheRuleTheCasesAndTheAuditWorkAsTheGuideSays() throws Exception {
    Advisor advisor = edited();
    Path cases = Files.createDirectory(folder.resolve("cases"));
    Files.writeString(cases.resolve("evidence.json"), blocks("json").get(0));
    Files.writeString(cases.resolve("heavy-steering.json"), blocks("json").get(1));
    CaseLibrary library = CaseLibrary.read(cases, advisor.vocabulary());
    assertThat(library.entries()).hasSize(3);
    assertThat(library.disagreements(advisor)).isEmpty();
    assertThat(library.disagreements(BASE)).hasSize(1);

    AuditReport report =
        Audit.of(advisor, LocalDate.parse("2026-11-25"), new Effort(200, 2, 100, 1_000));
    assertThat(report.checks())
        .flatExtracting(Result::remarks)
        .noneMatch(remark -> remark.severity() == Severity.ERROR);
  }

  @Test
  void theGuideNamesTheFilesThatAreThere() throws IOException {
    String guide = Files.readString(GUIDE);
    assertThat(guide)
        .contains("evidence.drl.csv", "rules/cases/families/evidence.json")
        .contains("console/insidelift audit --cases rules/cases/whole");
    assertThat(RULES.resolve("evidence.drl.csv")).exists();
    assertThat(Path.of("..", "rules", "cases", "families", "evidence.json")).exists();
    assertThat(Path.of("..", "rules", "cases", "whole", "heavy-steering.json")).exists();
    assertThat(Path.of("src", "main", "resources", "insidelift", "audit-allowed.json")).exists();
  }
}
