package insidelift.console.page;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.foresight.NextQuestion;
import insidelift.engine.logbook.entry.AttemptEntry;
import insidelift.engine.logbook.file.Numbered;
import insidelift.shared.situation.Situation;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A trainee's sheet as a page. */
class DrillSheetTest {

  private static final LocalDate DAY = LocalDate.of(2026, 4, 12);

  @Test
  void anAttemptThatCannotBeReplayedIsNamedOnThePageToo() {
    Advisor advisor = Advisor.load();
    AttemptEntry attempt =
        new AttemptEntry(
            "Ida Vento",
            "test",
            Situation.of(Map.of("water", "wet", "steering-weight", "heavy")),
            List.of("ask tomorrow"),
            DAY);
    ResultPage page =
        DrillSheet.of(
            new insidelift.engine.training.drill.ResultSheet(
                advisor,
                new NextQuestion(advisor.decider()),
                List.of(new Numbered<>(3, attempt, false))),
            "Ida Vento",
            DAY);
    assertThat(page.next()).contains("Left out: attempt 3 names what this build lacks.");
    assertThat(page.summary()).startsWith("0 cases.");
  }
}
