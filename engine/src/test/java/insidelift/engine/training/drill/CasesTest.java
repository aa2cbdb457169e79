package insidelift.engine.training.drill;

import static insidelift.engine.training.Drills.ADVISOR;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.engine.logbook.entry.AttemptEntry;
import insidelift.shared.situation.CaseProblem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which case comes next, and cases in a folder. */
class CasesTest {

  @Test
  void theNextCaseHasACauseTheTraineeHasMetLeast() {
    Cases cases = new Cases(ADVISOR);
    assertThat(cases.next(List.of()).source()).isEqualTo("1");
    assertThat(cases.numbered(1)).isEqualTo(cases.next(List.of()));
    AttemptEntry first =
        new AttemptEntry(
            "Ida Vento", "1", cases.numbered(1).hidden(), List.of(), LocalDate.of(2026, 4, 12));
    assertThat(cases.next(List.of(first)).hidden()).isNotEqualTo(cases.numbered(1).hidden());
  }

  @Test
  void aFolderOfCasesIsReadByNameAndEveryMistakeNamesItsPlace(@TempDir Path folder)
      throws Exception {
    Cases cases = new Cases(ADVISOR);
    refused(cases, folder, "the folder holds no case: put files that end in .json there");
    refused(cases, folder.resolve("none"), "there is no such folder");
    Files.writeString(folder.resolve("b.json"), "{\"schema\":1,\"answers\":{\"water\":\"wet\"}}");
    Files.writeString(folder.resolve("a.json"), "{\"schema\":1,\"answers\":{\"play\":\"some\"}}");
    Files.writeString(folder.resolve("notes.txt"), "no case");
    assertThat(cases.inFolder(folder))
        .extracting(DrillCase::source)
        .containsExactly("a.json", "b.json");
    refused(cases, folder.resolve("notes.txt"), "this is a file, not a folder");
    Files.writeString(
        folder.resolve("c.json"),
        "[{\"name\":\"Rain\",\"source\":\"ours\",\"answers\":{\"water\":\"wet\"}}]");
    assertThat(cases.inFolder(folder).get(2).source()).isEqualTo("c.json: Rain");
    Files.writeString(folder.resolve("c.json"), "{\"schema\":1,\"answers\":{\"water\":\"soup\"}}");
    refused(
        cases, folder, "c.json: answers.water: \"soup\" is not one of dry, damp, wet, standing");
    Files.writeString(folder.resolve("c.json"), "{\"schema\":1,\"answers\":{\"power\":\"mid\"}}");
    refused(cases, folder, "c.json: too little is told in it for the rules to say anything");
  }

  private static void refused(Cases cases, Path folder, String message) {
    assertThatThrownBy(() -> cases.inFolder(folder))
        .isInstanceOf(CaseProblem.class)
        .hasMessage(message);
  }
}
