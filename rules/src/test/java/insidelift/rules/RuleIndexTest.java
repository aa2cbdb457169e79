package insidelift.rules;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.shared.index.RuleIndex;
import insidelift.shared.index.RuleIndex.IndexedRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The compiled rules, their index and their files say the same. */
class RuleIndexTest {

  private static final Path FILES = Path.of("src/main/resources/insidelift/rules");
  private static final Pattern OPENING = Pattern.compile("rule \"([^\"]+)\"");

  private final RuleBase rules = RuleBase.load();
  private final RuleIndex index = rules.index();

  /** Where a rule begins, as a plain reading of the files finds it. */
  private record Place(String rule, String family, int line) {}

  private static List<Place> places() throws IOException {
    List<Place> places = new ArrayList<>();
    try (Stream<Path> files = Files.list(FILES)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        String family = file.getFileName().toString().replace(".drl", "");
        List<String> lines = Files.readAllLines(file);
        for (int i = 0; i < lines.size(); i++) {
          Matcher opening = OPENING.matcher(lines.get(i));
          if (opening.lookingAt()) {
            places.add(new Place(opening.group(1), family, i + 1));
          }
        }
      }
    }
    return places;
  }

  @Test
  void everyIndexedRuleIsCompiledAndTheOtherWayRound() {
    assertThat(rules.names())
        .containsExactlyInAnyOrderElementsOf(index.rules().stream().map(IndexedRule::id).toList());
  }

  @Test
  void noRuleIsLostOnTheWay() throws Exception {
    assertThat(rules.size()).isGreaterThan(200).isEqualTo(places().size());
    assertThat(index.rules()).hasSize(rules.size());
  }

  @Test
  void everyRuleIsIndexedUnderItsFileAndLine() throws Exception {
    assertThat(index.rules().stream().map(r -> new Place(r.id(), r.family(), r.line())).toList())
        .containsExactlyInAnyOrderElementsOf(places());
  }

  @Test
  void theFilesAreTheFamiliesOfTheDesign() {
    assertThat(index.rules().stream().map(IndexedRule::family).distinct().toList())
        .containsExactlyInAnyOrder(
            "first-checks",
            "findings",
            "limits",
            "targets",
            "corrections",
            "history",
            "substitutes",
            "alternatives",
            "deciders",
            "order",
            "answers-without-a-move",
            "cautions",
            "unseen",
            "over-the-day");
  }

  @Test
  void everyRuleReadsSomethingAndRecordsSomething() {
    assertThat(index.rules())
        .allSatisfy(
            rule -> {
              assertThat(rule.premises()).as(rule.id()).isNotEmpty();
              assertThat(rule.acts()).as(rule.id()).isNotEmpty();
            });
  }
}
