package insidelift.engine.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import insidelift.engine.consultation.decision.Facts;
import insidelift.engine.notes.NoteBook;
import insidelift.engine.units.Units;
import insidelift.rules.Reasoned;
import insidelift.rules.RuleBase;
import insidelift.shared.Vocabulary;
import insidelift.shared.casefile.CaseReader;
import insidelift.shared.situation.CaseProblem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * What a coach would say, written down from the named sources before it was run. Where sources
 * split, several answers are accepted, and what all of them rule out is named.
 */
class CoachTest {

  private static final Path FILE = Path.of("../rules/cases/coach/coach.json");
  private static final Path SECOND = Path.of("../rules/cases/coach/second-opinion.json");
  private static final Vocabulary WORDS = Vocabulary.load();
  private static final RuleBase WEIGHING = RuleBase.load();

  @TestFactory
  Stream<DynamicTest> saysWhatACoachWouldSay() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    for (JsonNode one : JsonMapper.builder().build().readTree(FILE.toFile())) {
      tests.add(dynamicTest(one.get("name").asText(), () -> check(one)));
    }
    assertThat(tests).hasSizeGreaterThanOrEqualTo(20);
    return tests.stream();
  }

  /**
   * A second coach, who knew nothing of the tables. Nine of the 35 disagree: exit faults, slight
   * and severe ones, a hop, a heavy wheel that pushes, an undo called worse, a slow straight.
   */
  @Test
  void agreesWithMostOfASecondOpinion() throws IOException {
    int agreed = 0;
    for (JsonNode one : JsonMapper.builder().build().readTree(SECOND.toFile())) {
      try {
        check(one);
        agreed++;
      } catch (AssertionError | CaseProblem e) {
        System.out.println(
            "a second coach disagrees: " + one.get("name").asText() + e.getMessage());
      }
    }
    assertThat(agreed).isGreaterThanOrEqualTo(26);
  }

  private static void check(JsonNode one) throws IOException, CaseProblem {
    assertThat(NoteBook.open(Units.METRIC).bibliography().keySet())
        .containsAll(List.of(one.get("source").asText().split(", ", -1)));
    Reasoned weighed =
        WEIGHING.reason(Facts.of(new CaseReader(WORDS).read(one.get("case").toString()), WORDS));
    List<String> moved =
        weighed.now().stream().map(now -> now.lever() + " " + now.direction()).toList();
    JsonNode expect = one.get("expect");
    String said = weighed.choice().kind() + " " + moved + " " + weighed.sums();
    assertThat(words(expect.get("kinds"))).as(said).contains(weighed.choice().kind());
    if (expect.has("moves")) {
      assertThat(words(expect.get("moves"))).as(said).containsAll(moved);
    }
    assertThat(moved).as(said).doesNotContainAnyElementsOf(never(expect));
  }

  private static List<String> never(JsonNode expect) {
    List<String> never = new ArrayList<>(words(expect.path("never")));
    never.add("no such move");
    return never;
  }

  private static List<String> words(JsonNode list) {
    List<String> words = new ArrayList<>();
    list.forEach(word -> words.add(word.asText()));
    return words;
  }
}
