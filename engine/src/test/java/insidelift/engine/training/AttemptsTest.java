package insidelift.engine.training;

import static insidelift.engine.training.Drills.ADVISOR;
import static insidelift.engine.training.Drills.NEXT;
import static insidelift.engine.training.Drills.attempt;
import static insidelift.engine.training.Drills.decide;
import static insidelift.engine.training.Drills.drill;
import static insidelift.engine.training.Drills.judged;
import static insidelift.engine.training.Drills.push;
import static insidelift.engine.training.Drills.with;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.engine.consultation.decision.Conclusion.Step;
import insidelift.engine.logbook.entry.AttemptEntry;
import insidelift.engine.logbook.file.Logbook;
import insidelift.engine.logbook.file.Numbered;
import insidelift.engine.training.card.StudyLog;
import insidelift.engine.training.drill.Drill;
import insidelift.engine.training.drill.DrillMove;
import insidelift.engine.training.drill.Feedback;
import insidelift.engine.training.drill.Feedback.Remark;
import insidelift.engine.training.drill.Judgement;
import insidelift.engine.training.drill.ResultSheet;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Attempts that are kept: read back, judged again, and put on a sheet. */
class AttemptsTest {

  @Test
  void movesAreReadBackFromTheirWords() {
    List<DrillMove> moves =
        List.of(
            new DrillMove.Look(),
            new DrillMove.Hint(),
            new DrillMove.Ask("water"),
            new DrillMove.FixFirst(),
            new DrillMove.Found("mid-push"),
            new DrillMove.First("front-width more"),
            new DrillMove.First(Drill.NONE),
            new DrillMove.Move(Lever.CAMBER, new Step(Direction.MORE, 0.5)),
            new DrillMove.Because("camber-front-weak"));
    assertThat(moves.stream().map(DrillMove::words).map(DrillMove::of)).isEqualTo(moves);
    for (String none : List.of("", "dance", "ask", "set camber up 1.0", "set camber more far")) {
      assertThatThrownBy(() -> DrillMove.of(none)).isInstanceOf(IllegalArgumentException.class);
    }
  }

  @Test
  void anAttemptThatIsReplayedIsJudgedAsItWas() {
    Drill drill = drill(push());
    drill.look();
    drill.ask("water");
    drill.hint();
    decide(drill, "mid-push", Lever.CAMBER, Direction.LESS, 0.5);
    Drill again = ResultSheet.again(ADVISOR, NEXT, attempt(drill));
    assertThat(again.moves()).isEqualTo(drill.moves());
    assertThat(judged(again).economy()).isEqualTo(judged(drill).economy());
    assertThat(judged(again).conclusion()).isEqualTo(judged(drill).conclusion());
  }

  /** Lines as they were written before it was asked what comes first. */
  @Test
  void anAttemptFromBeforeWhatComesFirstWasAskedIsReadAndJudgedInQuarters(@TempDir Path data)
      throws Exception {
    Path folder = Files.createDirectory(data.resolve("training"));
    Files.writeString(
        folder.resolve(Logbook.FILE),
        """
        {"n":1,"at":"2026-04-12T09:14:05Z","kind":"logbook","entry":{"version":1,"about":"Insidelift's logbook"},"check":"6a0cc0c5"}
        {"n":2,"at":"2026-04-12T09:14:05Z","kind":"attempt","entry":{"trainee":"Ida Vento","case":"old","answers":{"water":"dry","turn-in":"understeer"},\
        "moves":["look","found entry-push","set camber hold 0.00","set caster more 1.00"],"day":"2026-04-12"},"check":"70ecd2c5"}
        """);
    List<Numbered<AttemptEntry>> attempts = new StudyLog(data).attempts("Ida Vento");
    assertThat(attempts).hasSize(1);
    Judgement judged = judged(ResultSheet.again(ADVISOR, NEXT, attempts.get(0).entry()));
    assertThat(judged.firstJudged()).isEmpty();
    assertThat(judged.conclusion()).isEqualTo(100);
    assertThat(Feedback.on(ADVISOR, judged))
        .extracting(Remark::what)
        .noneMatch(what -> what.contains("First comes"));
    assertThat(new ResultSheet(ADVISOR, NEXT, attempts).first()).isEmpty();
  }

  @Test
  void aSheetSaysHowOftenWhatComesFirstWasRight() {
    List<Numbered<AttemptEntry>> attempts = new ArrayList<>();
    for (String first : List.of("none", "none", "rear-pressure more", "axle more")) {
      Drill drill = drill(push());
      drill.say(new DrillMove.First(first));
      decide(drill, "mid-push", Lever.CAMBER, Direction.MORE, 0.5);
      attempts.add(new Numbered<>(attempts.size() + 2, attempt(drill), false));
    }
    assertThat(new ResultSheet(ADVISOR, NEXT, attempts).lines())
        .contains("What comes first: right in 2 of 4, half right in 1.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ask tomorrow",
        "found nobody",
        "first wing more",
        "first driver more",
        "because nothing",
        "because camber\u202e-x"
      })
  void aMoveThatNamesWhatThisBuildLacksIsRefusedInPrintableWords(String move) {
    AttemptEntry attempt = attempt(List.of("look", move));
    assertThatThrownBy(() -> ResultSheet.again(ADVISOR, NEXT, attempt))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "\"%s\" names something that this build does not have",
            move.replace("\u202e", "\\u{202e}"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "set camber more NaN",
        "set camber more 1e9",
        "set camber more -0.50",
        "set wing more 0.50",
        "dance\u001b[2J"
      })
  void aMoveThatIsNoneIsRefusedInPrintableWords(String move) {
    assertThatThrownBy(() -> DrillMove.of(move))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("\"%s\" is no move", move.replace("\u001b", "\\u{1b}"));
  }

  @Test
  void aSheetLeavesOutWhatItCannotReplayAndSaysSo() {
    Drill drill = drill(push());
    decide(drill, "mid-push", Lever.CAMBER, Direction.MORE, 0.5);
    List<String> lines =
        new ResultSheet(
                ADVISOR,
                NEXT,
                List.of(
                    new Numbered<>(2, attempt(drill), false),
                    new Numbered<>(3, attempt(List.of("ask tomorrow")), false)))
            .lines();
    assertThat(lines)
        .contains("Left out: attempt 3 names what this build lacks.")
        .anyMatch(line -> line.matches(" +2  2026-04-12  test .*"))
        .noneMatch(line -> line.matches(" +3  2026-04-12 .*"));
  }

  @Test
  void aSheetTellsWhoHasOneTrickOnly() {
    List<Numbered<AttemptEntry>> attempts = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      Drill drill = i < 3 ? drill(push()) : with("fixings", "loose");
      decide(drill, "entry-push", Lever.CASTER, Direction.MORE, 1);
      attempts.add(new Numbered<>(i + 2, attempt(drill), false));
    }
    List<String> lines = new ResultSheet(ADVISOR, NEXT, attempts).lines();
    assertThat(lines)
        .contains("Faults missed: 3 (the worst mistake there is).")
        .contains("A habit: \"more caster\" in 6 of 6 cases; the rules in 0.")
        .anyMatch(line -> line.matches(" +2  2026-04-12  test .*"))
        .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
  }

  @Test
  void aSheetOfGoodWorkHasNoHabit() {
    List<Numbered<AttemptEntry>> attempts = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      Drill drill = drill(push());
      decide(drill, "mid-push", Lever.CAMBER, Direction.MORE, 0.5);
      attempts.add(new Numbered<>(i + 2, attempt(drill), false));
    }
    assertThat(new ResultSheet(ADVISOR, NEXT, attempts).lines())
        .noneMatch(line -> line.startsWith("A habit"));
  }
}
