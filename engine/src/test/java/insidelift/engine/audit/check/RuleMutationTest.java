package insidelift.engine.audit.check;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.audit.Effort;
import insidelift.engine.audit.check.RuleMutants.Mutant;
import insidelift.engine.audit.check.RuleMutation.Survivor;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.shared.index.RuleIndex;
import insidelift.shared.index.RuleIndex.IndexedRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The cases notice mistakes in the rules. The ordinary build makes one mistake in sixty; the
 * profile {@code audit} makes them all.
 */
class RuleMutationTest {

  private static final Path CASES = Path.of("..", "rules", "cases");

  @Test
  void noMistakeThatSomeAdviceTellsGoesUnnoticed() throws IOException {
    boolean all = "thorough".equals(System.getProperty("audit"));
    RuleMutation mutation =
        all
            ? RuleMutation.of(CASES, RuleMutation.EFFORT).run(1)
            : RuleMutation.of(CASES, new Effort(20, 2, 100, 1)).run(60);

    List<String> left = left();
    assertThat(mutation.missed())
        .filteredOn(survivor -> !left.contains(survivor.mutant()))
        .isEmpty();
    if (all) {
      assertThat(mutation.missed()).extracting(Survivor::mutant).containsAll(left);
    }
    assertThat(mutation.killed()).isGreaterThan(mutation.mutants() * 3 / 4);
  }

  /** The mistakes that may be left, each with its reason behind the last bar. */
  private static List<String> left() throws IOException {
    List<String> left = new ArrayList<>();
    for (String line :
        Files.readAllLines(
            Path.of("src", "test", "resources", "insidelift", "rule-mistakes-left.txt"))) {
      if (!line.startsWith("#")) {
        int bar = line.lastIndexOf(" | ");
        assertThat(line.substring(bar + 3)).as(line).hasSizeGreaterThan(20);
        left.add(line.substring(0, bar));
      }
    }
    return left;
  }

  @Test
  void everyRuleIsMistakenInSomeWayAndNoMistakeIsTheRuleItself() {
    Advisor advisor = Advisor.load();
    RuleIndex index = advisor.rules().index();
    List<Mutant> mutants = RuleMutants.of(index, advisor.vocabulary());

    assertThat(mutants).hasSizeGreaterThan(1_200);
    assertThat(mutants).extracting(Mutant::what).doesNotHaveDuplicates();
    assertThat(mutants).noneMatch(mutant -> mutant.index().equals(index));
    assertThat(mutants.stream().map(mutant -> mutant.rule().id()).distinct())
        .hasSize((int) index.rules().stream().filter(IndexedRule::plain).count());
  }
}
