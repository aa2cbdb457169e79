package insidelift.console;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import insidelift.console.Launcher.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** The audit, a shop's own cases and a shop's own claims by the packaged launcher. */
@Execution(ExecutionMode.CONCURRENT)
class AuditIT {

  private static final String OWN =
      Launcher.CONSOLE.resolve("examples/own-knowledge.json").toString();

  @TempDir private Path folder;

  @Test
  void theKnowledgeOfThisBuildPassesAndSaysWhatWasLookedFor() throws IOException {
    Outcome audit = Launcher.with("audit", "--json").run();
    assertThat(audit.err()).isEmpty();
    assertThat(audit.exit()).isZero();
    JsonNode report = JsonMapper.builder().build().readTree(audit.out());
    assertThat(report.get("failed").asBoolean()).isFalse();
    assertThat(report.get("situations").asInt()).isGreaterThan(3_000);
    assertThat(report.get("checks").findValuesAsText("id"))
        .contains(
            "opposed", "redundant", "subsumed", "unreachable", "dead-end", "gap", "invariant");
  }

  @Test
  void aShopsClaimsThatContradictAreNamedWithAnswersFileAndLine() throws IOException {
    Path own =
        Launcher.file(
            folder,
            "ours.json",
            Files.readString(Path.of(OWN))
                .replace("\"direction\": \"more\"", "\"direction\": \"less\""));
    Outcome audit = Launcher.with("audit", "--overlay", own.toString()).run();
    assertThat(audit.err()).isEmpty();
    assertThat(audit.exit()).isEqualTo(1);
    assertThat(audit.out().replaceAll("\\s+", " "))
        .contains("redundant: rules that say the same Nothing found.")
        .contains(
            "error \"caster-entry\" and \"own-hairpin-push.correction\" say the contrary of caster, and neither is"
                + " a camp of a dispute")
        .contains("as in ")
        .endsWith("There is an error: see above. ");
  }

  @Test
  void aShopsCasesAreHeldAgainstTheRules() {
    Launcher.file(
        folder,
        "ours.json",
        """
        [{"name": "We went the other way in the wet", "source": "our log",
          "answers": {"water": "wet"}, "expect": {"camber": "less"}},
         {"name": "Loose wheel nut", "source": "our log",
          "answers": {"fixings": "loose"}, "expect": {"status": "fix-first"}}]
        """);
    Outcome cases = Launcher.with("audit", "--cases", folder.toString()).run();
    assertThat(cases.err()).isEmpty();
    assertThat(cases.exit()).isEqualTo(1);
    assertThat(cases.out())
        .isEqualTo(
            """
            Cases by source
            ---------------
                  2  our log

            1 of 2 cases disagree
            ---------------------
            ours.json
              We went the other way in the wet
                  camber: less expected, more
            """);
    Outcome json = Launcher.with("audit", "--cases", folder.toString(), "--json").run();
    assertThat(json.exit()).isEqualTo(1);
    assertThat(json.out()).contains("\"disagreements\"", "\"camber: less expected, more\"");
  }

  @Test
  void aFolderOfCasesThatCannotBeUsedIsRefusedInOneSentence() throws IOException {
    String none = folder.resolve("none").toString();
    refused(Launcher.with("audit", "--cases", none).run(), none + ": there is no such folder");
    Path empty = Files.createDirectory(folder.resolve("empty"));
    refused(
        Launcher.with("audit", "--cases", empty.toString()).run(),
        empty + ": no case stands in a .json file of this folder");
    Launcher.file(empty, "bad.json", "{}");
    refused(
        Launcher.with("audit", "--cases", empty.toString()).run(),
        "bad.json: the key \"answers\" is missing");
  }

  @Test
  void anOverlayIsUsedFromTheCommandLineOrTheOwnFolderAndShownAsTheShops() throws IOException {
    Path drag =
        Launcher.file(
            folder,
            "case.json",
            "{\"schema\": 1, \"answers\": {\"corner-speed\": \"slow\", \"turn-in\":"
                + " \"understeer\"}}");
    Outcome named = Launcher.with("advise", drag.toString(), "--full", "--overlay", OWN).run();
    assertThat(named.err()).isEmpty();
    assertThat(named.out()).contains("Own rule of Heron Lane Karts");
    Files.copy(Path.of(OWN), folder.resolve("own-knowledge.json"));
    Outcome found =
        Launcher.with("advise", drag.toString(), "--full")
            .set("INSIDELIFT_DATA", folder.toString())
            .run();
    assertThat(found.out()).isEqualTo(named.out());
    Path broken = Launcher.file(folder, "own-knowledge.json", "{\"schema\": 3}");
    refused(
        Launcher.with("advise", drag.toString()).set("INSIDELIFT_DATA", folder.toString()).run(),
        broken + ": schema: 3 is not known; this build reads schema 1");
  }

  private static void refused(Outcome outcome, String sentence) {
    assertThat(outcome.err()).isEqualTo("insidelift: " + sentence + "\n");
    assertThat(outcome.exit()).isEqualTo(1);
    assertThat(outcome.out()).isEmpty();
  }
}
