package insidelift.engine.audit;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.audit.AuditReport.Result;
import insidelift.engine.audit.AuditReport.Visit;
import insidelift.engine.audit.check.Severity;
import insidelift.engine.consultation.advice.Advisor;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The audit of this build's own knowledge: no error that is not allowed. {@code -Daudit=thorough}
 * visits far more situations; the profile {@code audit} does that.
 */
class AuditTest {

  private static final Effort EFFORT =
      "thorough".equals(System.getProperty("audit")) ? Effort.THOROUGH : Effort.ORDINARY;

  private static final AuditReport REPORT =
      Audit.of(Advisor.load(), LocalDate.parse("2026-11-25"), EFFORT);

  @Test
  void noErrorIsFoundThatIsNotAllowed() {
    assertThat(REPORT.checks())
        .flatExtracting(Result::remarks)
        .allSatisfy(
            remark -> assertThat(remark.severity()).as("%s", remark).isEqualTo(Severity.NOTE));
    assertThat(REPORT.failed()).isFalse();
  }

  @Test
  void everyFaultAndNearlyEveryFindingIsVisitedWhole() {
    assertThat(REPORT.visits())
        .filteredOn(visit -> visit.of().startsWith("fault "))
        .hasSizeGreaterThanOrEqualTo(20)
        .allMatch(Visit::whole);
    assertThat(REPORT.visits())
        .filteredOn(visit -> visit.of().startsWith("finding ") && visit.whole())
        .hasSizeGreaterThanOrEqualTo(15);
  }

  @Test
  void everyCombinationOfSoManyQuestionsIsVisited() {
    for (String of : List.of("all answers", "a sound kart")) {
      assertThat(REPORT.visits())
          .extracting(Visit::of)
          .anyMatch(
              one -> one.startsWith(of + ", every combination of " + EFFORT.strength() + " ("));
    }
    assertThat(REPORT.situations()).isGreaterThan(15_000);
    System.getLogger("audit")
        .log(System.Logger.Level.INFO, "{0} situations visited", REPORT.situations());
  }
}
