package insidelift.engine.audit;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.audit.RuleMutants.Mutant;
import insidelift.engine.audit.RuleMutation.Survivor;
import insidelift.engine.consultation.Advisor;
import insidelift.shared.index.RuleIndex;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The cases notice mistakes in the rules. The ordinary build makes one mistake in thirty; the
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
            : RuleMutation.of(CASES, new Effort(20, 2, 100, 1)).run(30);

    assertThat(mutation.missed()).extracting(Survivor::mutant).isEmpty();
    assertThat(mutation.killed()).isGreaterThan(mutation.mutants() * 3 / 4);
  }

  @Test
  void everyRuleIsMistakenInSomeWayAndNoMistakeIsTheRuleItself() {
    Advisor advisor = Advisor.load();
    RuleIndex index = advisor.rules().index();
    List<Mutant> mutants = RuleMutants.of(index, advisor.vocabulary());

    assertThat(mutants).hasSizeGreaterThan(1_500);
    assertThat(mutants).extracting(Mutant::what).doesNotHaveDuplicates();
    assertThat(mutants).noneMatch(mutant -> mutant.index().equals(index));
    assertThat(mutants.stream().map(mutant -> mutant.rule().id()).distinct())
        .hasSize(index.rules().size());
  }
}
