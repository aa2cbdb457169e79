package insidelift.engine.training;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.engine.consultation.Advisor;
import insidelift.engine.consultation.Conclusion.Step;
import insidelift.engine.consultation.NextQuestion;
import insidelift.engine.logbook.AttemptEntry;
import insidelift.engine.logbook.Numbered;
import insidelift.engine.training.Feedback.Remark;
import insidelift.engine.training.Judgement.Safety;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.Situation;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One case, move by move: what comes back, what it is worth, and what is said of it. */
class DrillTest {

  private static final Advisor ADVISOR = Advisor.load();
  private static final NextQuestion NEXT = new NextQuestion(ADVISOR);

  /** A sound kart in the dry that pushes in mid-corner only. */
  private static Map<String, String> push() {
    Map<String, String> answers = new LinkedHashMap<>();
    ADVISOR
        .vocabulary()
        .questions()
        .forEach(
            question ->
                question.values().stream()
                    .filter(value -> !value.fault() && !value.complaint())
                    .findFirst()
                    .ifPresent(value -> answers.put(question.id(), value.id())));
    answers.putAll(
        Map.of(
            "rubber", "normal",
            "turn-in", "good",
            "mid-corner", "understeer",
            "severity", "clear",
            "steering-weight", "fine",
            "driver-strength", "average",
            "power", "mid",
            "last-change", "none",
            "time-left", "enough"));
    List.of("front-wear", "front-temps", "worst-phase", "last-effect", "inside-rear")
        .forEach(answers::remove);
    return answers;
  }

  private static Drill drill(Map<String, String> answers) {
    return new Drill(ADVISOR, NEXT, new DrillCase("test", Situation.of(answers)));
  }

  private static Drill with(String question, String value) {
    Map<String, String> answers = push();
    answers.put(question, value);
    return drill(answers);
  }

  private static void decide(Drill drill, String finding, Lever lever, Direction way, double far) {
    drill.say(new DrillMove.Found(finding));
    for (Lever one : Lever.values()) {
      drill.say(
          new DrillMove.Move(one, one == lever ? new Step(way, far) : new Step(Direction.HOLD, 0)));
    }
  }

  private static Judgement judged(Drill drill) {
    return new Judgement(ADVISOR, NEXT, drill);
  }

  @Test
  void theKartTheDriverAndTheTyresAnswer() {
    Drill drill = with("play", "some");
    assertThat(drill.ask("water")).isEqualTo("dry");
    assertThat(drill.take(new DrillMove.Ask("mid-corner"))).isEqualTo("pushes wide (understeer)");
    assertThat(drill.take(new DrillMove.Ask("front-temps"))).isEqualTo("nobody can say");
    assertThat(drill.take(new DrillMove.Look()))
        .isEqualTo("there is play in a kingpin, a tie-rod or the steering");
    assertThat(drill(push()).take(new DrillMove.Look())).isEqualTo("nothing is wrong with it");
    assertThatThrownBy(() -> drill.ask("weather"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("there is no question \"weather\"");
  }

  @Test
  void aCaseInWhichTooLittleIsToldIsRefused() {
    assertThatThrownBy(() -> drill(Map.of("power", "mid")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("too little is known in this case to say anything");
  }

  @Test
  void findingLeverDirectionAndSizeAreAQuarterEach() {
    Drill right = drill(push());
    decide(right, "front-weak", Lever.CAMBER, Direction.MORE, 0.5);
    assertThat(judged(right).conclusion()).isEqualTo(100);
    Drill far = drill(push());
    decide(far, "front-weak", Lever.CAMBER, Direction.MORE, 2);
    assertThat(judged(far).conclusion()).isEqualTo(75);
    Drill near = drill(push());
    decide(near, "front-weak", Lever.CAMBER, Direction.MORE, 0.7);
    assertThat(judged(near).conclusion()).isEqualTo(100);
    Drill wrongWay = drill(push());
    decide(wrongWay, "front-weak", Lever.CAMBER, Direction.LESS, 0.5);
    assertThat(judged(wrongWay).conclusion()).isEqualTo(50);
    Drill wrongLever = drill(push());
    decide(wrongLever, "front-weak", Lever.CASTER, Direction.MORE, 1);
    assertThat(judged(wrongLever).conclusion()).isEqualTo(25);
    Drill allWrong = drill(push());
    decide(allWrong, "rear-loose", Lever.CASTER, Direction.LESS, 1);
    assertThat(judged(allWrong).conclusion()).isZero();
    Drill nothing = drill(push());
    assertThat(judged(nothing).conclusion()).isZero();
  }

  @Test
  void aMissedFaultIsTheWorstMistakeAndIsSaidFirst() {
    Drill drill = with("fixings", "loose");
    drill.ask("mid-corner");
    decide(drill, "front-weak", Lever.CAMBER, Direction.MORE, 0.5);
    Judgement judged = judged(drill);
    assertThat(judged.safety()).isEqualTo(Safety.MISSED);
    assertThat(judged.safety().points()).isZero();
    assertThat(judged.conclusion()).isZero();
    Remark first = Feedback.on(ADVISOR, judged).get(0);
    assertThat(first.what()).startsWith("A fault was missed, the worst mistake there is: ");
    assertThat(first.ledger()).contains("Rule check-loose");
  }

  @Test
  void aFaultThatIsFoundIsAllThereIsToFind() {
    Drill drill = with("fixings", "loose");
    drill.look();
    drill.say(new DrillMove.FixFirst());
    drill.say(new DrillMove.Because("check-loose"));
    Judgement judged = judged(drill);
    assertThat(judged.economy()).isEqualTo(100);
    assertThat(judged.conclusion()).isEqualTo(100);
    assertThat(judged.reason()).isEqualTo(100);
    assertThat(judged.safety()).isEqualTo(Safety.SAFE);
    assertThat(Feedback.on(ADVISOR, judged)).isEmpty();
  }

  @Test
  void aFaultThatIsNotThereIsWrongButSafe() {
    Drill drill = drill(push());
    drill.look();
    drill.say(new DrillMove.FixFirst());
    Judgement judged = judged(drill);
    assertThat(judged.conclusion()).isZero();
    assertThat(judged.safety()).isEqualTo(Safety.SAFE);
    assertThat(Feedback.on(ADVISOR, judged).get(0).what())
        .startsWith("Nothing had to be put right first. What to do: camber toward positive");
  }

  @Test
  void aMoveThatALimitForbidsIsNotSafe() {
    Drill drill = with("steering-weight", "heavy");
    drill.look();
    decide(drill, "front-weak", Lever.CASTER, Direction.MORE, 1);
    assertThat(judged(drill).safety()).isEqualTo(Safety.FORBIDDEN);
    assertThat(Feedback.on(ADVISOR, judged(drill)).get(0).what())
        .startsWith("Caster was moved in a way that must not be: ");
    Drill less = with("steering-weight", "heavy");
    less.look();
    decide(less, "front-weak", Lever.CASTER, Direction.LESS, 1);
    assertThat(judged(less).safety()).isEqualTo(Safety.SAFE);
  }

  @Test
  void whoDidNotLookWasLucky() {
    Drill drill = drill(push());
    decide(drill, "front-weak", Lever.CAMBER, Direction.MORE, 0.5);
    assertThat(judged(drill).safety()).isEqualTo(Safety.LUCKY);
    assertThat(judged(drill).economy()).isZero();
    assertThat(judged(drill).leftOut()).startsWith("look", "water");
  }

  @Test
  void aQuestionThatCannotTellAnythingIsWorthNothingAndIsSpokenOf() {
    Drill drill = drill(push());
    drill.ask("gearbox");
    drill.look();
    Judgement judged = judged(drill);
    assertThat(judged.questions().get(0).worth()).isLessThan(0.5);
    assertThat(judged.questions().get(0).better()).isEqualTo("look");
    assertThat(judged.questions().get(1).worth()).isEqualTo(1);
    assertThat(Feedback.on(ADVISOR, judged))
        .extracting(Remark::what)
        .anyMatch(what -> what.startsWith("\"gearbox\" was expected to tell "));
  }

  @Test
  void aWrongReasonIsShownWrongByItsRule() {
    Drill drill = drill(push());
    drill.look();
    decide(drill, "front-weak", Lever.CAMBER, Direction.MORE, 0.5);
    String wrong =
        drill.reasons().stream()
            .map(Card.Option::id)
            .filter(note -> !note.equals("camber-front-weak"))
            .findFirst()
            .orElseThrow();
    assertThat(drill.reasons()).extracting(Card.Option::id).contains("camber-front-weak");
    drill.say(new DrillMove.Because(wrong));
    assertThat(judged(drill).reason()).isZero();
    assertThat(Feedback.on(ADVISOR, judged(drill)))
        .extracting(Remark::what)
        .anyMatch(what -> what.contains(" is not the reason here: its rule did not speak. "));
  }

  @Test
  void hintsClimbALadderAndWhatTheyGiveAwayCountsNought() {
    Drill drill = drill(push());
    assertThat(drill.hint()).isEqualTo("Look next at the kart itself, before anything else.");
    assertThat(drill.hint()).isEqualTo("Look the kart over: a fault comes before any lever.");
    drill.look();
    assertThat(drill.hint()).isEqualTo("Look next at the track.");
    drill.ask("water");
    Judgement judged = judged(drill);
    assertThat(judged.hints()).isEqualTo(3);
    assertThat(judged.questions().get(0).worth()).isZero();
    assertThat(judged.questions().get(1).worth()).isEqualTo(1);
  }

  @Test
  void theLastRungsSayWhatToDoAndLeaveNothingToConclude() {
    Drill drill = with("play", "some");
    drill.look();
    assertThat(drill.hint()).isEqualTo("No answer still open can change what to do now: decide.");
    assertThat(drill.hint()).isEqualTo("Something has to be put right before a lever is touched.");
    assertThat(drill.hint()).startsWith("What to do: put right first: ");
    drill.say(new DrillMove.FixFirst());
    assertThat(judged(drill).conclusion()).isZero();
    assertThat(judged(drill).safety()).isEqualTo(Safety.SAFE);
  }

  @Test
  void movesAreReadBackFromTheirWords() {
    List<DrillMove> moves =
        List.of(
            new DrillMove.Look(),
            new DrillMove.Hint(),
            new DrillMove.Ask("water"),
            new DrillMove.FixFirst(),
            new DrillMove.Found("front-weak"),
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
    decide(drill, "front-weak", Lever.CAMBER, Direction.LESS, 0.5);
    Drill again = ResultSheet.again(ADVISOR, NEXT, attempt(drill));
    assertThat(again.moves()).isEqualTo(drill.moves());
    assertThat(judged(again).economy()).isEqualTo(judged(drill).economy());
    assertThat(judged(again).conclusion()).isEqualTo(judged(drill).conclusion());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"ask tomorrow", "found nobody", "because nothing", "because camber\u202e-x"})
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
    decide(drill, "front-weak", Lever.CAMBER, Direction.MORE, 0.5);
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

  private static AttemptEntry attempt(List<String> moves) {
    return new AttemptEntry(
        "Ida Vento", "test", drill(push()).hidden().hidden(), moves, LocalDate.of(2026, 4, 12));
  }

  private static AttemptEntry attempt(Drill drill) {
    return new AttemptEntry(
        "Ida Vento",
        drill.hidden().source(),
        drill.hidden().hidden(),
        drill.moves().stream().map(DrillMove::words).toList(),
        LocalDate.of(2026, 4, 12));
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
      decide(drill, "front-weak", Lever.CAMBER, Direction.MORE, 0.5);
      attempts.add(new Numbered<>(i + 2, attempt(drill), false));
    }
    assertThat(new ResultSheet(ADVISOR, NEXT, attempts).lines())
        .noneMatch(line -> line.startsWith("A habit"));
  }

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
