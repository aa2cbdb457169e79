package insidelift.engine.consultation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import insidelift.engine.audit.CaseLibrary.Entry;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.shared.index.RuleIndex.IndexedRule;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Each family of rules against a file of its own: what fires, what just misses, what borders. */
class FamilyCasesTest {

  private static final Advisor ADVISOR = Advisor.load();
  private static final List<Entry> CASES = CaseFiles.read(CaseFiles.FAMILIES);

  private static Set<String> named(String key) {
    return CASES.stream().flatMap(entry -> entry.words(key).stream()).collect(Collectors.toSet());
  }

  private static List<IndexedRule> rules() {
    return ADVISOR.rules().index().rules();
  }

  @TestFactory
  Stream<DynamicTest> everyCaseFiresAndKeepsSilentAsItSays() {
    return CASES.stream()
        .map(
            entry ->
                dynamicTest(
                    entry.file() + ": " + entry.name(),
                    () -> assertThat(entry.differences(ADVISOR)).isEmpty()));
  }

  @Test
  void everyFamilyOfPlainRulesHasItsFile() {
    assertThat(CASES.stream().map(Entry::file).collect(Collectors.toSet()))
        .isEqualTo(
            rules().stream()
                .filter(rule -> rule.plain() && !rule.premises().isEmpty())
                .map(FamilyCasesTest::file)
                .collect(Collectors.toSet()));
  }

  /** The file of a family's cases: a table's goes by its name without the endings. */
  private static String file(IndexedRule rule) {
    return rule.family().replace(".drl.csv", "");
  }

  /** What holds always can miss nowhere; what thinks is tested by itself. */
  @Test
  void everyPlainRuleFiresInOneCaseAndJustMissesInAnother() {
    Set<String> always =
        rules().stream()
            .filter(rule -> rule.plain() && rule.premises().isEmpty())
            .map(IndexedRule::id)
            .collect(Collectors.toSet());
    Set<String> plain =
        rules().stream()
            .filter(rule -> rule.plain() && !rule.premises().isEmpty())
            .map(IndexedRule::id)
            .collect(Collectors.toSet());

    assertThat(named("fires")).containsAll(plain);
    assertThat(named("silent")).isEqualTo(plain);
    assertThat(always).isNotEmpty().doesNotContainAnyElementsOf(named("silent"));
  }

  @Test
  void everyCaseNamesRulesOfItsOwnFamilyOnly() {
    assertThat(CASES)
        .allSatisfy(
            entry ->
                assertThat(Stream.of("fires", "silent").flatMap(key -> entry.words(key).stream()))
                    .isNotEmpty()
                    .allSatisfy(
                        rule ->
                            assertThat(ADVISOR.rules().index().rule(rule))
                                .get()
                                .extracting(FamilyCasesTest::file)
                                .isEqualTo(entry.file())));
  }

  @Test
  void everyCaseHasAKnownSource() {
    assertThat(CASES)
        .allSatisfy(
            entry ->
                assertThat(ADVISOR.notes().bibliography().keySet()).containsAll(entry.sources()));
  }

  @Test
  void noTwoCasesOfAFamilyHaveTheSameName() {
    assertThat(CASES.stream().map(entry -> entry.file() + ": " + entry.name()))
        .doesNotHaveDuplicates();
  }
}
