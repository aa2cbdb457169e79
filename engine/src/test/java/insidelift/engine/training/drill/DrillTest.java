package insidelift.engine.training.drill;

import static insidelift.engine.training.Drills.ADVISOR;
import static insidelift.engine.training.Drills.decide;
import static insidelift.engine.training.Drills.drill;
import static insidelift.engine.training.Drills.judged;
import static insidelift.engine.training.Drills.push;
import static insidelift.engine.training.Drills.with;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.engine.training.card.Card;
import insidelift.engine.training.drill.Feedback.Remark;
import insidelift.engine.training.drill.Judgement.Safety;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** One case, move by move: what comes back, what it is worth, and what is said of it. */
class DrillTest {

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
    decide(right, "mid-push", Lever.CAMBER, Direction.MORE, 0.5);
    assertThat(judged(right).conclusion()).isEqualTo(100);
    Drill far = drill(push());
    decide(far, "mid-push", Lever.CAMBER, Direction.MORE, 2);
    assertThat(judged(far).conclusion()).isEqualTo(75);
    Drill near = drill(push());
    decide(near, "mid-push", Lever.CAMBER, Direction.MORE, 0.7);
    assertThat(judged(near).conclusion()).isEqualTo(100);
    Drill wrongWay = drill(push());
    decide(wrongWay, "mid-push", Lever.CAMBER, Direction.LESS, 0.5);
    assertThat(judged(wrongWay).conclusion()).isEqualTo(50);
    Drill wrongLever = drill(push());
    decide(wrongLever, "mid-push", Lever.CASTER, Direction.MORE, 1);
    assertThat(judged(wrongLever).conclusion()).isEqualTo(25);
    Drill allWrong = drill(push());
    decide(allWrong, "mid-slide", Lever.CASTER, Direction.LESS, 1);
    assertThat(judged(allWrong).conclusion()).isZero();
    Drill nothing = drill(push());
    assertThat(judged(nothing).conclusion()).isZero();
  }

  @Test
  void aMissedFaultIsTheWorstMistakeAndIsSaidFirst() {
    Drill drill = with("fixings", "loose");
    drill.ask("mid-corner");
    decide(drill, "mid-push", Lever.CAMBER, Direction.MORE, 0.5);
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
    decide(drill, "mid-push", Lever.CASTER, Direction.MORE, 1);
    assertThat(judged(drill).safety()).isEqualTo(Safety.FORBIDDEN);
    assertThat(Feedback.on(ADVISOR, judged(drill)).get(0).what())
        .startsWith("Caster was moved in a way that must not be: ");
    Drill less = with("steering-weight", "heavy");
    less.look();
    decide(less, "mid-push", Lever.CASTER, Direction.LESS, 1);
    assertThat(judged(less).safety()).isEqualTo(Safety.SAFE);
  }

  @Test
  void whoDidNotLookWasLucky() {
    Drill drill = drill(push());
    decide(drill, "mid-push", Lever.CAMBER, Direction.MORE, 0.5);
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
    decide(drill, "mid-push", Lever.CAMBER, Direction.MORE, 0.5);
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
    assertThat(judged.questions().get(1).worth()).isGreaterThan(0.9);
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
}
