package insidelift.engine.consultation.foresight;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.engine.consultation.decision.ToDo;
import insidelift.engine.consultation.session.Session;
import insidelift.rules.fact.Evidence;
import insidelift.shared.Status;
import insidelift.shared.Vocabulary;
import insidelift.shared.Vocabulary.Question;
import insidelift.shared.situation.Situation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class NextQuestionTest {

  private static final Advisor ADVISOR = Advisor.load();
  private static final Vocabulary WORDS = ADVISOR.vocabulary();
  private static final Grid GRID = new Grid(WORDS);
  private static final Consistent CONSISTENT = new Consistent(GRID);
  private static final Completions COMPLETIONS =
      new Completions(GRID, CONSISTENT, new Chances(GRID), 1);

  private final NextQuestion next = new NextQuestion(ADVISOR.decider());
  private final Random random = new Random(5);

  @Test
  void aDrawnSituationMakesSense() {
    for (int i = 0; i < 500; i++) {
      assertThat(CONSISTENT.holds(complete(Situation.UNKNOWN), WORDS)).isTrue();
    }
  }

  @Test
  void nothingMakesSenseThatIsAboutASymptomNobodyHas() {
    Situation situation = Situation.of(Map.of("turn-in", "good", "severity", "severe"));

    assertThat(CONSISTENT.holds(situation, WORDS)).isFalse();
    assertThat(CONSISTENT.holds(situation.with("exit", "oversteer"), WORDS)).isTrue();
  }

  @Test
  void rubberOnAWetTrackMakesNoSense() {
    assertThat(CONSISTENT.holds(Situation.of(Map.of("water", "wet", "rubber", "dusty")), WORDS))
        .isFalse();
    assertThat(CONSISTENT.holds(Situation.of(Map.of("water", "dry", "rubber", "dusty")), WORDS))
        .isTrue();
  }

  /**
   * Whoever is asked no more has told all that matters, as far as trying can tell: of completions
   * drawn anew, faults and rare answers as often as others, hardly one comes to anything else.
   */
  @Test
  void itHardlyEverStopsWhileACompletionCouldStillChangeWhatToDoNow() {
    int tried = 0;
    int other = 0;
    for (int i = 0; i < 40; i++) {
      Situation truth = complete(Situation.UNKNOWN);
      Situation known = play(truth);
      ToDo now = now(known);
      for (int j = 0; j < 60; j++) {
        Situation completion = forget(complete(known), j % 3 == 0 ? 0.5 : 0, known);
        tried++;
        other += now(completion).equals(now) ? 0 : 1;
      }
    }
    assertThat(other).as("of %d", tried).isLessThanOrEqualTo(tried / 100);
  }

  @Test
  void theBoundOnTheQuestionsLeftHolds() {
    for (int i = 0; i < 4; i++) {
      Situation truth = complete(Situation.UNKNOWN);
      Session session = new Session(ADVISOR);
      int atMost = session.atMost();
      int first = atMost;
      int asked = 0;
      while (!session.open().isEmpty()) {
        assertThat(session.atMost()).isBetween(1, atMost);
        atMost = session.atMost();
        asked++;
        assertThat(asked).isLessThanOrEqualTo(first);
        answer(session, truth);
      }
      assertThat(session.atMost()).isZero();
    }
  }

  @Test
  void theSafetyChecksComeFirst() {
    List<Question> open = new Session(ADVISOR).open();
    long safety = WORDS.questions().stream().filter(Question::safety).count();

    assertThat(open.subList(0, (int) safety)).allMatch(Question::safety);
    assertThat(open.get((int) safety).safety()).isFalse();
  }

  @Test
  void aFaultEndsTheQuestions() {
    Session session = new Session(ADVISOR);
    healthy(session);
    session.note("play", "some");

    assertThat(session.open()).isEmpty();
    assertThat(session.advice().status()).isEqualTo(Status.FIX_FIRST);
  }

  @Test
  void aKartWithAFixedFrontIsAskedForWhatTheOtherLeversHangOn() {
    Session session = new Session(ADVISOR);
    healthy(session);
    session.answer("adjustable", "none");
    session.answer("tyres", "slicks");
    session.answer("water", "dry");

    List<String> asked = new ArrayList<>();
    while (!session.open().isEmpty()) {
      asked.add(session.open().get(0).id());
      session.answer(session.open().get(0).id(), Vocabulary.UNKNOWN);
    }
    assertThat(asked)
        .contains("turn-in", "exit")
        .doesNotContain("power", "trend", "driver-strength", "setup-for");
  }

  @Test
  void howBadItIsIsNotAskedWhereNothingIsBad() {
    Session session = new Session(ADVISOR);
    healthy(session);

    assertThat(session.open())
        .extracting(Question::id)
        .doesNotContain("severity", "corners", "run-phase", "worst-phase", "last-effect");
  }

  @Test
  void anAnswerGivenAndChangedBackLeavesTheSameQuestionsAndTheSameAdvice() {
    Session session = new Session(ADVISOR);
    healthy(session);
    session.answer("water", "dry");
    session.answer("mid-corner", "understeer");
    List<Question> open = session.open();
    var advice = session.advice();
    session.answer("mid-corner", "oversteer");
    session.open();
    session.answer("mid-corner", "understeer");

    assertThat(session.open()).isEqualTo(open);
    assertThat(session.advice()).isEqualTo(advice);
  }

  @Test
  void theOrderOfVolunteeringChangesNothing() {
    for (int i = 0; i < 20; i++) {
      Situation whole = Situation.of(forget(complete(Situation.UNKNOWN), 0.5).answers());
      List<String> questions = new ArrayList<>(whole.answers().keySet());
      Collections.shuffle(questions, random);
      Situation other = Situation.UNKNOWN;
      for (String question : questions) {
        other = other.with(question, whole.answers().get(question));
      }

      assertThat(next.worthAsking(other)).isEqualTo(next.worthAsking(whole));
      assertThat(ToDo.of(ADVISOR.decide(other))).isEqualTo(ToDo.of(ADVISOR.decide(whole)));
    }
  }

  @Test
  void unknownNeverRaisesAFinding() {
    for (int i = 0; i < 60; i++) {
      Situation whole = complete(Situation.UNKNOWN);
      Map<String, Integer> before = strengths(whole);
      for (String question : whole.answers().keySet()) {
        Map<String, Integer> after = strengths(whole.with(question, Vocabulary.UNKNOWN));
        after.forEach(
            (finding, strength) ->
                // Dropping a piece of evidence against something is the only way up, and it goes
                // toward zero, never past it.
                assertThat(strength)
                    .as("%s without %s: %s", finding, question, whole.answers())
                    .isLessThanOrEqualTo(
                        Math.max(before.getOrDefault(finding, 0), against(whole, finding))));
      }
    }
  }

  private static int against(Situation whole, String finding) {
    return ADVISOR.decide(whole).reasoned().spoken(Evidence.class).stream()
        .filter(piece -> piece.finding().equals(finding))
        .mapToInt(piece -> Math.max(0, piece.weight()))
        .sum();
  }

  private static Map<String, Integer> strengths(Situation situation) {
    Map<String, Integer> strengths = new TreeMap<>();
    ADVISOR.decide(situation).reasoned().spoken(Evidence.class).stream()
        .collect(Collectors.groupingBy(Evidence::finding))
        .forEach((finding, pieces) -> strengths.put(finding, Evidence.sum(pieces)));
    return strengths;
  }

  private static ToDo now(Situation situation) {
    return ToDo.of(ADVISOR.decide(situation)).brief();
  }

  private Situation complete(Situation known) {
    int[] box = GRID.box(known, WORDS, known.declined());
    boolean[] open = new boolean[box.length];
    for (int q = 0; q < box.length; q++) {
      open[q] = box[q] == GRID.full(q);
    }
    // Faults and rare answers are drawn as often as others, so that rare completions are tried too.
    double[] luck = random.doubles(box.length).toArray();
    return GRID.situation(COMPLETIONS.draw(luck, box, open), known);
  }

  private Situation forget(Situation situation, double part) {
    return forget(situation, part, Situation.UNKNOWN);
  }

  private Situation forget(Situation situation, double part, Situation kept) {
    Situation left = situation;
    for (String question : situation.answers().keySet()) {
      boolean keep = kept.answer(question).isPresent();
      if (!keep && random.nextDouble() < part) {
        left = left.with(question, Vocabulary.UNKNOWN);
      }
    }
    return left;
  }

  private Situation play(Situation truth) {
    Situation known = Situation.UNKNOWN;
    List<Question> open = next.worthAsking(known);
    while (!open.isEmpty()) {
      Question question = open.get(0);
      String answer =
          random.nextInt(6) == 0
              ? Vocabulary.UNKNOWN
              : truth.answer(question.id()).orElse(Vocabulary.UNKNOWN);
      known = known.with(question.id(), answer);
      open = next.worthAsking(known);
    }
    return known;
  }

  private static void answer(Session session, Situation truth) {
    List<Question> open = session.open();
    List<Question> step =
        open.get(0).safety()
            ? open.stream().filter(Question::safety).toList()
            : List.of(open.get(0));
    session.begin("step");
    for (Question question : step) {
      session.note(question.id(), truth.answer(question.id()).orElse(Vocabulary.UNKNOWN));
    }
  }

  private static void healthy(Session session) {
    session.begin("safety");
    WORDS.questions().stream()
        .filter(Question::safety)
        .forEach(question -> session.note(question.id(), question.values().get(0).id()));
    assertThat(Arrays.asList("none", "free")).contains(session.situation().answers().get("play"));
  }
}
