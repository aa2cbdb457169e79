package insidelift.console.learning;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.console.report.AdviceText.Part;
import insidelift.console.report.Text;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Conclusion.Step;
import insidelift.engine.consultation.foresight.NextQuestion;
import insidelift.engine.training.drill.Drill;
import insidelift.engine.training.drill.DrillCase;
import insidelift.engine.training.drill.DrillMove;
import insidelift.engine.training.drill.Judgement;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.situation.Situation;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DrillTextTest {

  private static final Advisor ADVISOR = Advisor.load();
  private static final NextQuestion NEXT = new NextQuestion(ADVISOR.decider());
  private static final DrillText TEXT = new DrillText(Text.WIDTH, ADVISOR);
  private static final Map<String, String> GOOD =
      Map.of("water", "dry", "turn-in", "good", "mid-corner", "good", "exit", "good");
  private static final Map<String, String> ENTRY_PUSH =
      Map.of("water", "dry", "turn-in", "understeer", "mid-corner", "good", "exit", "good");

  private static List<Part> result(
      Map<String, String> answers, String finding, String first, Step caster) {
    Drill drill = new Drill(ADVISOR, NEXT, new DrillCase("test", Situation.of(answers)));
    drill.take(new DrillMove.Look());
    drill.take(new DrillMove.Found(finding));
    drill.take(new DrillMove.First(first));
    drill.take(new DrillMove.Move(Lever.CAMBER, new Step(Direction.HOLD, 0)));
    drill.take(new DrillMove.Move(Lever.CASTER, caster));
    return TEXT.result(new Judgement(ADVISOR, NEXT, drill));
  }

  private static List<Part> goodKart(String first) {
    return result(GOOD, Drill.NONE, first, new Step(Direction.HOLD, 0));
  }

  private static List<Part> entryPush(String first) {
    return result(ENTRY_PUSH, "entry-push", first, new Step(Direction.MORE, 1));
  }

  private static List<String> last(List<Part> parts) {
    return parts.get(parts.size() - 1).lines();
  }

  @Test
  void whoLeavesAGoodKartAloneIsToldWhyThatIsRight() {
    assertThat(goodKart("none").get(0).lines())
        .contains("  conclusion  100 of 100 (a good kart, left alone)");
    assertThat(last(goodKart("none")))
        .containsExactly(
            "  = There is nothing to complain of, so leave it. That is a good answer, not a",
            "    missing one.");
  }

  @Test
  void whoChangesAGoodKartIsToldThatAnyChangeIsWrong() {
    List<Part> parts = goodKart("front-width more");
    assertThat(parts.get(0).lines()).contains("  conclusion  0 of 100 (a good kart, changed)");
    assertThat(parts.get(1).lines())
        .contains(
            "  - This kart is good, so any change is wrong. There is nothing to complain of,",
            "    so leave it. That is a good answer, not a missing one.");
  }

  @ParameterizedTest
  @CsvSource({
    "front-width more, 100 of 100 (what comes first: right)",
    "front-height more, 90 of 100 (what comes first: half right)",
    "front-width less, 80 of 100 (what comes first: wrong way)",
    "none, 80 of 100 (what comes first: wrong)"
  })
  void theScoreSaysHowWhatComesFirstWasJudged(String first, String score) {
    assertThat(entryPush(first).get(0).lines()).contains("  conclusion  " + score);
  }

  @Test
  void theRulesNameWhatLeadsItsMinutesAndWhatItHelps() {
    assertThat(last(entryPush("front-width more")).subList(0, 3))
        .containsExactly(
            "  > First comes, in 8 minutes: front one thin spacer wider, both sides (experts",
            "    split: try it). It helps where the front pushes at turn-in.",
            "  > Set caster 1 position more (about 1.0°) on both sides: the front pushes at");
  }

  @Test
  void whatToBewareOfWithWhatLeadsIsSaidToo() {
    assertThat(last(entryPush("front-width more")))
        .contains(
            "  ! After a change of width look at wheel nuts, hubs and toe, and stay within",
            "    the rules.");
  }

  @Test
  void aReplayHasTheVocabularysWords() {
    assertThat(TEXT.replayed(new DrillMove.First("toe less"), ""))
        .containsExactly("  first: Toe 0.5 mm less out a side");
    assertThat(TEXT.replayed(new DrillMove.First("none"), ""))
        .containsExactly("  first: no other lever");
  }
}
