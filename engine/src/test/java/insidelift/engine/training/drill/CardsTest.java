package insidelift.engine.training.drill;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.Conclusion;
import insidelift.engine.logbook.entry.ReviewEntry;
import insidelift.engine.training.card.Card;
import insidelift.engine.training.card.Card.Kind;
import insidelift.engine.training.card.Card.Option;
import insidelift.engine.training.card.LearningProgress;
import insidelift.engine.training.card.Lessons;
import insidelift.engine.training.card.Schedule;
import insidelift.engine.training.drill.Examiner.Judged;
import insidelift.shared.Status;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The cards, and the answers that the rules give to them. */
class CardsTest {

  private static final Advisor ADVISOR = Advisor.load();
  private static final List<Card> CARDS = new CardBox(ADVISOR).cards();
  private final Examiner examiner = new Examiner(ADVISOR);

  private static Card.Choice choice(String id) {
    return (Card.Choice)
        CARDS.stream().filter(card -> card.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void everyCardHasAnIdOfItsOwnThatTheLogTakes() {
    assertThat(CARDS).extracting(Card::id).doesNotHaveDuplicates();
    assertThat(CARDS).allSatisfy(card -> assertThat(card.id()).hasSizeLessThanOrEqualTo(60));
    assertThat(CARDS).hasSizeGreaterThan(250);
  }

  @Test
  void everyTopicHasCardsAndEveryRecallASectionToReadBack() {
    Map<String, Long> topics =
        CARDS.stream().collect(Collectors.groupingBy(Card::topic, Collectors.counting()));
    assertThat(topics.keySet())
        .containsExactlyInAnyOrder(
            "faults first",
            "words",
            "other levers",
            "care and the job",
            "what goes first",
            "camber",
            "caster",
            "camber and caster");
    for (Card card : CARDS) {
      if (card instanceof Card.Recall recall) {
        assertThat(ADVISOR.notes().note(recall.note()).section(recall.section())).isNotEmpty();
      }
    }
  }

  @Test
  void whatLeadsIsAskedAndAWrongLeverIsShownWrongByItsLine() {
    List<Card.Choice> leads =
        CARDS.stream()
            .filter(Card.Choice.class::isInstance)
            .map(Card.Choice.class::cast)
            .filter(choice -> choice.kind() == Kind.LEAD)
            .toList();
    assertThat(leads).hasSizeGreaterThan(10);
    Card.Choice push =
        leads.stream()
            .filter(card -> card.id().equals("first:entry-push"))
            .findFirst()
            .orElseThrow();
    assertThat(examiner.ask(push))
        .contains("Which of these comes first, before camber and caster?");
    assertThat(examiner.judge(push, "front-width more").right()).isTrue();
    Examiner.Judged wrong = examiner.judge(push, "hubs less");
    assertThat(wrong.right()).isFalse();
    assertThat(wrong.answer()).contains("Front one thin spacer wider, both sides");
    assertThat(wrong.shown()).isNotEmpty();
  }

  @Test
  void everyChoiceHasItsAnswerAmongOthersThatTheRulesDoNotGive() {
    for (Card card : CARDS) {
      if (card instanceof Card.Choice choice) {
        List<Option> options = examiner.options(choice);
        long right =
            options.stream().filter(o -> examiner.rightOnes(choice).contains(o.id())).count();
        assertThat(right).as(choice.id()).isEqualTo(1);
        assertThat(options).as(choice.id()).hasSizeGreaterThanOrEqualTo(4);
        assertThat(options).extracting(Option::words).doesNotHaveDuplicates();
        if (choice.kind() == Kind.DECISION) {
          assertThat(Conclusion.of(ADVISOR.decider(), choice.told()).status())
              .as(choice.id())
              .isNotEqualTo(Status.NOT_ENOUGH);
        }
      }
    }
  }

  @Test
  void aWrongAnswerIsShownWrongByTheLedger() {
    Card.Choice push = choice("speaks:mid-push");
    Judged right = examiner.judge(push, "mid-push");
    assertThat(right.right()).isTrue();
    assertThat(right.shown()).isEmpty();
    Judged wrong = examiner.judge(push, "mid-slide");
    assertThat(wrong.right()).isFalse();
    assertThat(wrong.answer()).isEqualTo("the front pushes in mid-corner");
    assertThat(wrong.shown()).contains("Nothing that is known speaks for it or against it.");

    Card.Choice heavy = choice("now:limit.heavy");
    assertThat(examiner.judge(heavy, "caster-less").right()).isTrue();
    Judged more = examiner.judge(heavy, "caster-more");
    assertThat(more.right()).isFalse();
    assertThat(String.join("\n", more.shown()))
        .startsWith("Why not more caster:")
        .contains("Barred: ");
    Card.Choice even = choice("now:limit.feathered");
    assertThat(examiner.judge(even, "leave").shown().get(0)).startsWith("How: ");

    Card.Choice loose = choice("now:check-loose");
    assertThat(examiner.judge(loose, "fix").right()).isTrue();
    assertThat(String.join("\n", examiner.judge(loose, "camber-more").shown()))
        .contains("Before any lever: put right first");
  }

  @Test
  void theSameCardAlwaysOffersTheSame() {
    Card.Choice card = choice("speaks:binding-bogs");
    assertThat(examiner.options(card)).isEqualTo(new Examiner(ADVISOR).options(card));
  }

  @Test
  void thereAreElevenLessonsEachWithACheckAndAQuestionTheRulesAnswer() {
    List<Lessons.Lesson> lessons = Lessons.of(ADVISOR.notes());
    assertThat(lessons).hasSize(11);
    for (Lessons.Lesson lesson : lessons) {
      String id = lesson.note().id();
      assertThat(id).startsWith("lesson-%02d-".formatted(lesson.number()));
      assertThat(lesson.note().text(Lessons.HANDS_ON)).as(id).isNotBlank();
      lesson
          .question()
          .told()
          .answers()
          .forEach((question, value) -> ADVISOR.vocabulary().answer(question, value));
      assertThat(Conclusion.of(ADVISOR.decider(), lesson.question().told()).status())
          .as(id)
          .isNotEqualTo(Status.NOT_ENOUGH);
    }
  }

  @Test
  void progressNamesWhatWasNeverSeenFirst() {
    List<Card> cards =
        List.of(
            new Card.Recall("a", "old", List.of(), "water", "Claim"),
            new Card.Recall("b", "new", List.of(), "water", "Claim"));
    LocalDate day = LocalDate.of(2026, 3, 1);
    Schedule schedule = new Schedule(List.of(new ReviewEntry("Ida Vento", "a", 5, day)), day);
    assertThat(LearningProgress.of(cards, schedule))
        .containsExactly(
            new LearningProgress("new", 1, 1, 0, 0), new LearningProgress("old", 1, 0, 1, 0));
  }
}
