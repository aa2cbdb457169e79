package insidelift.engine.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.engine.audit.CaseLibrary.Disagreement;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.shared.situation.CaseProblem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A shop's cases: read, refused with their place, and held against the rules. */
class CaseLibraryTest {

  private static final Advisor ADVISOR = Advisor.load();

  @TempDir private Path folder;

  private CaseLibrary read(String json) throws IOException, CaseProblem {
    Files.writeString(folder.resolve("ours.json"), json.replace('\'', '"'));
    Files.writeString(folder.resolve("notes.txt"), "not a case");
    return CaseLibrary.read(folder, ADVISOR.vocabulary());
  }

  @Test
  void whatAShopSawIsHeldAgainstTheRules() throws Exception {
    CaseLibrary library =
        read(
            """
            [{'name': 'Wet: we went the other way', 'source': 'our log, common-practice',
              'answers': {'water': 'wet'}, 'expect': {'status': 'change', 'camber': 'less'},
              'fires': ['check-play'], 'silent': ['track-wet']},
             {'name': 'Play: we stopped', 'source': 'our log', 'answers': {'play': 'some'},
              'expect': {'status': 'fix-first', 'checks': ['check-play']}}]
            """);
    assertThat(library.disagreements(ADVISOR))
        .containsExactly(
            new Disagreement(
                "ours",
                "Wet: we went the other way",
                "our log, common-practice",
                List.of(
                    "camber: less expected, more",
                    "rule check-play: expected to speak, silent",
                    "rule track-wet: expected silent, speaks")));
    assertThat(library.bySource()).containsEntry("our log", 2).containsEntry("common-practice", 1);
  }

  @Test
  void everyKindOfWrongExpectationIsNamed() throws Exception {
    CaseLibrary library =
        read(
            """
            [{'name': 'All wrong', 'source': 'our log',
              'answers': {'water': 'wet', 'steering-weight': 'heavy', 'front-wear': 'feathered'},
              'expect': {'findings': {'heavy': 'slight', 'binding': 'clear'},
                'checkKind': {'check-toe': 'fault'},
                'heldBy': {'caster': 'hop-no-bite', 'camber': 'nothing'},
                'over': {'caster-heavy-limit': []},
                'because': {'camber': ['water: wet', 'water: dry']},
                'unexplained': ['steering-weight'],
                'cautions': {'camber': ['caution-torque', 'caution-heavier-steering']},
                'without': {'camber': ['caution-feather']}}}]
            """);
    assertThat(library.disagreements(ADVISOR))
        .singleElement()
        .satisfies(
            found ->
                assertThat(found.differences())
                    .containsExactly(
                        "finding heavy: slight expected, strong",
                        "finding binding: clear expected, none",
                        "kind of check-toe: fault expected, look",
                        "held by, for caster: hop-no-bite expected, caster-heavy-limit",
                        "over, by caster-heavy-limit: [] expected, [caster-wet-more]",
                        "because, for camber: water: dry is missing",
                        "unexplained: [steering-weight] expected, []",
                        "camber: caution caution-heavier-steering is missing",
                        "camber: caution caution-feather is there"));
  }

  @Test
  void theCasesOfThisProjectAllAgree() throws Exception {
    for (String part : List.of("whole", "families")) {
      CaseLibrary library =
          CaseLibrary.read(Path.of("..", "rules", "cases", part), ADVISOR.vocabulary());
      assertThat(library.entries()).hasSizeGreaterThan(120);
      assertThat(library.disagreements(ADVISOR)).isEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{} | ours.json: the key \"answers\" is missing",
        "[{'source': 'x', 'answers': {}}] | ours.json: case 1: the key \"name\" is missing",
        "[{'name': ' ', 'source': 'x', 'answers': {}}] | ours.json: case 1.name: a case is named"
            + " by a sentence",
        "[{'name': 'a', 'source': 'x', 'answers': {'water': 'soaked'}}] | ours.json: case 1:"
            + " answers.water: \"soaked\" is not one of dry, damp, wet, standing",
        "[{'name': 'a', 'source': 'x', 'answers': {}, 'expect': {'camber': 'up'}}] | ours.json:"
            + " case 1.expect.camber: \"up\" is not one of more, less, hold, none",
        "[{'name': 'a', 'source': 'x', 'answers': {}, 'expect': {'status': 'good'}}] | ours.json:"
            + " case 1.expect.status: \"good\" is not one of fix-first, change, hold, not-enough",
        "[{'name': 'a', 'source': 'x', 'answers': {}, 'expect': {'findings': {'heavy': 'sure'}}}] |"
            + " ours.json: case 1.expect.findings.heavy: \"sure\" is not one of none, slight,"
            + " clear, strong",
        "[{'name': 'a', 'source': 'x', 'answers': {}, 'expects': {}}] | ours.json: case 1:"
            + " \"expects\" is not a key here; the keys are answers, expect, fires, kart, name,"
            + " silent, source",
      })
  void aFileThatCannotBeUsedIsRefusedWithItsPlace(String json, String sentence) {
    assertThatThrownBy(() -> read(json)).isInstanceOf(CaseProblem.class).hasMessage(sentence);
  }
}
