package insidelift.engine.training;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Conclusion.Step;
import insidelift.engine.consultation.foresight.NextQuestion;
import insidelift.engine.logbook.entry.AttemptEntry;
import insidelift.engine.training.drill.Drill;
import insidelift.engine.training.drill.DrillCase;
import insidelift.engine.training.drill.DrillMove;
import insidelift.engine.training.drill.Judgement;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.situation.Situation;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Drills to test with: a kart that pushes in mid-corner, and what can be said of it. */
public final class Drills {

  public static final Advisor ADVISOR = Advisor.load();
  static final NextQuestion NEXT = new NextQuestion(ADVISOR.decider());

  /** A sound kart in the dry that pushes in mid-corner only. */
  public static Map<String, String> push() {
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

  public static Drill drill(Map<String, String> answers) {
    return new Drill(ADVISOR, NEXT, new DrillCase("test", Situation.of(answers)));
  }

  public static Drill with(String question, String value) {
    Map<String, String> answers = push();
    answers.put(question, value);
    return drill(answers);
  }

  public static void decide(Drill drill, String finding, Lever lever, Direction way, double far) {
    drill.say(new DrillMove.Found(finding));
    for (Lever one : Lever.values()) {
      drill.say(
          new DrillMove.Move(one, one == lever ? new Step(way, far) : new Step(Direction.HOLD, 0)));
    }
  }

  public static Judgement judged(Drill drill) {
    return new Judgement(ADVISOR, NEXT, drill);
  }

  static AttemptEntry attempt(List<String> moves) {
    return new AttemptEntry(
        "Ida Vento", "test", drill(push()).hidden().hidden(), moves, LocalDate.of(2026, 4, 12));
  }

  static AttemptEntry attempt(Drill drill) {
    return new AttemptEntry(
        "Ida Vento",
        drill.hidden().source(),
        drill.hidden().hidden(),
        drill.moves().stream().map(DrillMove::words).toList(),
        LocalDate.of(2026, 4, 12));
  }

  private Drills() {}
}
