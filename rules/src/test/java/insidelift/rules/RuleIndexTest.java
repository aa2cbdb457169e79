package insidelift.rules;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.shared.index.RuleIndex;
import insidelift.shared.index.RuleIndex.IndexedRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The compiled rules, their index and their files say the same. */
class RuleIndexTest {

  private static final Path FILES = Path.of("src/main/resources/insidelift/rules");
  private static final Pattern OPENING = Pattern.compile("rule \"([^\"]+)\"");
  private static final Pattern LINE = Pattern.compile("\"([^\" ]+)\"");
  private static final Set<String> HEADINGS = Set.of("RuleSet", "Import", "Notes", "NAME", "id");

  private final RuleBase rules = RuleBase.load();
  private final RuleIndex index = rules.index();

  /** Where a rule begins, as a plain reading of the files finds it. */
  private record Place(String rule, String family, int line) {}

  private static List<Place> places() throws IOException {
    List<Place> places = new ArrayList<>();
    try (Stream<Path> files = Files.list(FILES)) {
      for (Path file : files.sorted().toList()) {
        String family = file.getFileName().toString().replaceFirst("\\.drl$", "");
        boolean table = family.endsWith(".csv");
        List<String> lines = Files.readAllLines(file);
        for (int i = 0; i < lines.size(); i++) {
          Matcher opening = (table ? LINE : OPENING).matcher(lines.get(i));
          if (opening.lookingAt() && !HEADINGS.contains(opening.group(1))) {
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
            "checks",
            "unseen",
            "evidence.drl.csv",
            "findings.drl.csv",
            "claims.drl.csv",
            "others.drl.csv",
            "kit",
            "start.drl.csv",
            "weigh",
            "limits",
            "choose",
            "alternatives",
            "cautions");
  }

  /** A rule is plain and says all by its premises and words, or it thinks and says what it does. */
  @Test
  void everyRuleSaysWhatItDoes() {
    assertThat(index.rules())
        .allSatisfy(
            rule -> {
              assertThat(rule.acts().isEmpty()).as(rule.id()).isEqualTo(!rule.plain());
              if (!rule.plain()) {
                assertThat(rule.says()).as(rule.id()).matches("[A-Z].*[.]");
                assertThat(List.of("weigh", "limits", "choose")).contains(rule.family());
              }
            });
  }
}
