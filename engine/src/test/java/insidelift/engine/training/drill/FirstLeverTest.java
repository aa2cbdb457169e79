package insidelift.engine.training.drill;

import static insidelift.engine.training.Drills.ADVISOR;
import static insidelift.engine.training.Drills.decide;
import static insidelift.engine.training.Drills.drill;
import static insidelift.engine.training.Drills.judged;
import static insidelift.engine.training.Drills.push;
import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.training.card.Card;
import insidelift.engine.training.drill.Feedback.Remark;
import insidelift.engine.training.drill.Judgement.First;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Vocabulary.LeverWord;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What comes before camber and caster, and the kart that is good as it stands. */
class FirstLeverTest {

  private static final String WIDER =
      "First comes, in 8 minutes: front one thin spacer wider, both sides (experts split: try it)."
          + " It helps where the front pushes at turn-in.";

  /** A kart that pushes at turn-in only: more caster, and three quicker levers before it. */
  private static Drill entryPush(String first) {
    Map<String, String> answers = push();
    answers.put("turn-in", "understeer");
    answers.put("mid-corner", "good");
    return played(answers, "entry-push", first, Lever.CASTER, Direction.MORE, 1);
  }

  /** A kart that pushes in mid-corner only: camber toward positive, and nothing before it. */
  private static Drill midPush(String first) {
    return played(push(), "mid-push", first, Lever.CAMBER, Direction.MORE, 0.5);
  }

  private static Map<String, String> good() {
    Map<String, String> answers = push();
    answers.put("mid-corner", "good");
    answers.remove("severity");
    return answers;
  }

  private static Drill goodKart(String first, Direction camber) {
    return played(good(), Drill.NONE, first, Lever.CAMBER, camber, 0.5);
  }

  private static Drill played(
      Map<String, String> answers,
      String finding,
      String first,
      Lever lever,
      Direction way,
      double far) {
    Drill drill = drill(answers);
    drill.look();
    drill.take(new DrillMove.First(first));
    decide(drill, finding, lever, way, far);
    return drill;
  }

  private static List<String> said(Drill drill) {
    return Feedback.on(ADVISOR, judged(drill)).stream()
        .map(Remark::what)
        .filter(what -> what.contains("irst") || what.contains("good"))
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "front-width more, RIGHT, 100",
    "toe more, RIGHT, 100",
    "rear-width less, RIGHT, 100",
    "front-height more, HALF, 90",
    "front-width less, WRONG_WAY, 80",
    "axle more, WRONG, 80",
    "none, WRONG, 80"
  })
  void whatLeadsIsRightWhatIsNamedHalfRightAndTheRestWrong(String said, First how, int conclusion) {
    Judgement judged = judged(entryPush(said));
    assertThat(judged.firstJudged()).contains(how);
    assertThat(judged.conclusion()).isEqualTo(conclusion);
    assertThat(judged.rightDecision()).isEqualTo(how == First.RIGHT);
  }

  @ParameterizedTest
  @CsvSource({
    "none, RIGHT, 100",
    "rear-pressure more, HALF, 90",
    "rear-pressure less, WRONG_WAY, 80",
    "axle more, WRONG, 80"
  })
  void whereNothingLeadsNoneIsRight(String said, First how, int conclusion) {
    Judgement judged = judged(midPush(said));
    assertThat(judged.firstJudged()).contains(how);
    assertThat(judged.conclusion()).isEqualTo(conclusion);
  }

  @Test
  void whatWasWrongIsSaidWithTheLeverThatLeadsWhyAndItsMinutes() {
    assertThat(said(entryPush("front-width more"))).isEmpty();
    assertThat(said(entryPush("front-height more")))
        .containsExactly("Worth a try, but not first. " + WIDER);
    assertThat(said(entryPush("axle more"))).containsExactly("Axle does not come first. " + WIDER);
    assertThat(said(entryPush("none"))).containsExactly("Something was left out. " + WIDER);
    assertThat(said(midPush("none"))).isEmpty();
    assertThat(said(midPush("rear-pressure more")))
        .containsExactly(
            "Worth a try, but not first. Nothing comes before camber and caster here: one change at"
                + " a time shows what helped.");
  }

  @Test
  void theWrongWayIsAnsweredWithTheRightWayOfThatLeverWhereItLeads() {
    assertThat(said(entryPush("toe less")))
        .containsExactly(
            "Right lever, wrong way. First comes, in 18 minutes: toe 0.5 mm further out a side. It"
                + " helps where the front pushes at turn-in.");
    assertThat(said(entryPush("front-height less")))
        .containsExactly("Wrong way, and not first. " + WIDER);
    assertThat(said(midPush("rear-pressure less")))
        .containsExactly(
            "Wrong way, and not first. Nothing comes before camber and caster here: one change at a"
                + " time shows what helped.");
  }

  @Test
  void theWrongWayIsSaidAsSuchWithWhatTheLeversNoteHas() {
    Remark remark =
        Feedback.on(ADVISOR, judged(entryPush("front-width less"))).stream()
            .filter(one -> one.what().equals("Right lever, wrong way. " + WIDER))
            .findFirst()
            .orElseThrow();
    assertThat(String.join(" ", remark.ledger()))
        .contains("Note lever-front-width (disputed): A wider front is mostly said to bite more")
        .contains("source crg-2005: ");
  }

  @Test
  void aFindingIsWorthAFifthBesideWhatComesFirst() {
    Drill drill = drill(push());
    drill.say(new DrillMove.First(Drill.NONE));
    decide(drill, "mid-slide", Lever.CAMBER, Direction.MORE, 0.5);
    assertThat(judged(drill).conclusion()).isEqualTo(80);
    Drill half = drill(push());
    half.say(new DrillMove.First("rear-pressure more"));
    decide(half, "mid-slide", Lever.CASTER, Direction.MORE, 1);
    assertThat(judged(half).conclusion()).isEqualTo(10);
  }

  @Test
  void whoLeavesAGoodKartAloneIsRightAndToldWhy() {
    Judgement judged = judged(goodKart(Drill.NONE, Direction.HOLD));
    assertThat(judged.firstJudged()).contains(First.RIGHT);
    assertThat(judged.conclusion()).isEqualTo(100);
    assertThat(judged.goodKart().orElseThrow().text("Claim"))
        .isEqualTo(
            "There is nothing to complain of, so leave it. That is a good answer, not a missing"
                + " one.");
    assertThat(judged(entryPush(Drill.NONE)).goodKart()).isEmpty();
  }

  @Test
  void whoChangesAGoodKartIsWrongWhateverTheLever() {
    Drill fault = drill(good());
    fault.say(new DrillMove.FixFirst());
    assertThat(judged(fault).conclusion()).isZero();
    List<Drill> changed = new ArrayList<>(List.of(goodKart(Drill.NONE, Direction.MORE)));
    FirstLever.steps(ADVISOR).keySet().forEach(step -> changed.add(goodKart(step, Direction.HOLD)));
    assertThat(changed)
        .hasSizeGreaterThan(30)
        .allSatisfy(
            drill -> {
              assertThat(judged(drill).conclusion()).isZero();
              assertThat(judged(drill).rightDecision()).isFalse();
              assertThat(said(drill))
                  .contains(
                      "This kart is good, so any change is wrong. There is nothing to complain of,"
                          + " so leave it. That is a good answer, not a missing one.");
            });
  }

  @Test
  void whereTheFrontEndStaysTheEqualsOfWhatLeadsAreAsRight() {
    Situation told =
        Situation.of(
            Map.of(
                "turn-in", "understeer",
                "mid-corner", "understeer",
                "severity", "slight",
                "worst-phase", "turn-in",
                "corner-speed", "fast",
                "steering-weight", "heavy"));
    assertThat(ADVISOR.outline(told).lead().orElseThrow().move()).isEqualTo("front-height more");
    assertThat(FirstLever.leads(ADVISOR.decide(told)))
        .containsExactly("front-height more", "rear-width less", "toe more");
  }

  @Test
  void theLastHintNamesTheLeverThatLeads() {
    Drill drill = entryPush(Drill.NONE);
    ADVISOR.vocabulary().questions().forEach(question -> drill.ask(question.id()));
    drill.hint();
    drill.hint();
    assertThat(drill.hint()).isEqualTo("What to do: more caster, by 1.0°. " + WIDER);
  }

  /**
   * Three lines of a screen of 80 columns hold 76 characters each, and a few are lost in wrapping.
   */
  @Test
  void whatLeadsIsSaidInThreeLines() {
    Set<String> seen = FirstLever.steps(ADVISOR).keySet();
    assertThat(seen).hasSize(31);
    Imagined imagined = new Imagined(ADVISOR.decider());
    for (int number = 1; number <= 100; number++) {
      ADVISOR
          .outline(imagined.whole(number))
          .lead()
          .map(Feedback::words)
          .ifPresent(words -> assertThat(words).hasSizeLessThan(190));
    }
  }

  @Test
  void everyLeverThatLeadsInSomeCaseHasACardThatOffersIt() {
    Examiner examiner = new Examiner(ADVISOR);
    List<String> offered = new ArrayList<>();
    for (Card card : new CardBox(ADVISOR).cards()) {
      if (card instanceof Card.Choice choice && choice.kind() == Card.Kind.LEAD) {
        examiner.options(choice).stream()
            .map(Card.Option::id)
            .filter(examiner.rightOnes(choice)::contains)
            .forEach(offered::add);
      }
    }
    Imagined imagined = new Imagined(ADVISOR.decider());
    for (int number = 1; number <= 400; number++) {
      assertThat(offered)
          .as("case %d", number)
          .containsAll(FirstLever.leads(ADVISOR.decide(imagined.whole(number))));
    }
    assertThat(offered)
        .contains("axle more", "ballast less", "bars less", "front-height more", "rear-height less")
        .contains(
            "seat more", "seat-height less", "seat-height more", "struts less", "struts more");
  }

  @Test
  void everyStepIsOneOfTheVocabularys() {
    FirstLever.steps(ADVISOR)
        .forEach(
            (step, words) -> {
              String[] parts = step.split(" ", -1);
              LeverWord word = ADVISOR.vocabulary().lever(parts[0]).orElseThrow();
              assertThat(Optional.of(words))
                  .contains(parts[1].equals("more") ? word.more() : word.less());
            });
  }
}
