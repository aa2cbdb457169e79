package insidelift.engine.consultation;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.shared.CheckKind;
import insidelift.shared.Direction;
import insidelift.shared.Kind;
import insidelift.shared.Lever;
import insidelift.shared.Status;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Reason;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Situation;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What holds for every advice whatever is told: over all cases of the files and 3,000 random
 * situations that contradict themselves nowhere.
 */
class InvariantsTest {

  private static final Advisor ADVISOR = Advisor.load();
  private static final int RANDOM = 3_000;

  private record Given(Situation situation, Advice advice) {}

  private static final List<Given> ALL =
      Stream.concat(
              Stream.of(CaseFiles.WHOLE, CaseFiles.FAMILIES)
                  .flatMap(folder -> CaseFiles.read(folder).stream())
                  .map(entry -> entry.situation()),
              new Situations(ADVISOR.vocabulary(), 2026).some(RANDOM).stream())
          .map(situation -> new Given(situation, ADVISOR.advise(situation)))
          .toList();

  private static void everywhere(BiConsumer<Situation, Advice> holds) {
    for (Given given : ALL) {
      try {
        holds.accept(given.situation(), given.advice());
      } catch (AssertionError e) {
        throw new AssertionError(given.situation() + ": " + e.getMessage(), e);
      }
    }
  }

  private static void everySuggestion(Consumer<Suggestion> holds) {
    everywhere((situation, advice) -> advice.suggestions().forEach(holds));
  }

  private static void everyMove(Consumer<Suggestion> holds) {
    everywhere((situation, advice) -> moves(advice).forEach(holds));
  }

  private static List<Suggestion> moves(Advice advice) {
    return advice.suggestions().stream().filter(Suggestion::moves).toList();
  }

  private static boolean moves(Advice advice, Lever lever, Direction way) {
    return moves(advice).stream().anyMatch(s -> s.lever() == lever && s.direction() == way);
  }

  private static boolean told(Situation situation, String question, String value) {
    return situation.answer(question).filter(value::equals).isPresent();
  }

  @Test
  void manySituationsOfEveryOutcomeAreVisited() {
    assertThat(ALL).hasSizeGreaterThan(RANDOM + 400);
    for (Status status : Status.values()) {
      assertThat(ALL)
          .as(status.id())
          .filteredOn(given -> given.advice().status() == status)
          .hasSizeGreaterThan(10);
    }
  }

  @Test
  void aLeverHasOneEntryAtMost() {
    everywhere(
        (situation, advice) ->
            assertThat(advice.suggestions()).extracting(Suggestion::lever).doesNotHaveDuplicates());
  }

  @Test
  void aBlockingCheckMovesNoLeverAndNothingElseBlocks() {
    everywhere(
        (situation, advice) -> {
          boolean blocked =
              advice.firstChecks().stream().anyMatch(check -> check.kind() != CheckKind.LOOK);
          assertThat(advice.status() == Status.FIX_FIRST).isEqualTo(blocked);
          if (blocked) {
            assertThat(advice.suggestions()).isEmpty();
            assertThat(advice.decisions())
                .extracting(decision -> decision.note())
                .containsExactly("fault-first");
          }
        });
  }

  @Test
  void everyFaultOfTheVocabularyBlocks() {
    everywhere(
        (situation, advice) -> {
          boolean fault =
              situation.facts(ADVISOR.vocabulary()).stream()
                  .anyMatch(
                      answer ->
                          ADVISOR
                              .vocabulary()
                              .question(answer.question())
                              .flatMap(question -> question.value(answer.value()))
                              .orElseThrow()
                              .fault());
          if (fault) {
            assertThat(advice.status()).isEqualTo(Status.FIX_FIRST);
          }
        });
  }

  @Test
  void everyMoveSaysWhyHowAndWithWhatCare() {
    everyMove(
        move -> {
          assertThat(move.reasons()).isNotEmpty();
          assertThat(move.cautions()).hasSizeGreaterThan(10).doesNotContain("");
          assertThat(move.steps()).hasSizeGreaterThan(5).doesNotContain("");
          assertThat(move.minutes()).isNotNull();
          assertThat(move.confirm()).isNotEmpty().doesNotContain("");
          assertThat(move.undo()).isNotEmpty().doesNotContain("");
          assertThat(move.heldBy()).isNull();
          assertThat(move.degrees()).isPositive();
          assertThat(move.positions()).isPositive();
        });
  }

  @Test
  void everyEntryHasReasonsWithSources() {
    everySuggestion(
        suggestion -> {
          assertThat(suggestion.reasons()).isNotEmpty();
          assertThat(suggestion.reasons()).extracting(Reason::text).doesNotContain("");
          assertThat(suggestion.reasons())
              .allSatisfy(reason -> assertThat(reason.sources()).isNotEmpty());
        });
  }

  @Test
  void everyMoveIsTracedBackToAnswers() {
    everyMove(
        move ->
            assertThat(move.reasons())
                .flatExtracting(Reason::because)
                .anySatisfy(
                    link ->
                        assertThat(link.toString())
                            .matches("[a-z-]+: [a-z-]+|on this kart tried .*")));
  }

  @Test
  void whatIsHeldSaysByWhat() {
    everySuggestion(
        suggestion -> {
          if (!suggestion.moves()) {
            assertThat(suggestion.heldBy()).isNotBlank();
            assertThat(suggestion.degrees()).isZero();
            assertThat(suggestion.first()).isFalse();
            assertThat(suggestion.steps()).isEmpty();
          }
        });
  }

  @Test
  void heavySteeringNeverGetsMoreCaster() {
    everywhere(
        (situation, advice) -> {
          if (told(situation, "steering-weight", "heavy")) {
            assertThat(moves(advice, Lever.CASTER, Direction.MORE)).isFalse();
          }
        });
  }

  @Test
  void aKartThatHopsNeverGetsMoreOfEither() {
    everywhere(
        (situation, advice) -> {
          if (told(situation, "hop", "hops")) {
            assertThat(moves(advice))
                .extracting(Suggestion::direction)
                .doesNotContain(Direction.MORE);
          }
        });
  }

  @Test
  void whatCannotBeMovedIsNotMoved() {
    everywhere(
        (situation, advice) -> {
          String adjustable = situation.answer("adjustable").orElse("both");
          if (adjustable.equals("none") || told(situation, "time-left", "short")) {
            assertThat(moves(advice)).isEmpty();
          }
          if (adjustable.equals("camber-only")) {
            assertThat(moves(advice)).extracting(Suggestion::lever).doesNotContain(Lever.CASTER);
          }
          if (adjustable.equals("caster-only")) {
            assertThat(moves(advice)).extracting(Suggestion::lever).doesNotContain(Lever.CAMBER);
          }
        });
  }

  @Test
  void aFixedFrontIsGivenOtherLevers() {
    everywhere(
        (situation, advice) -> {
          boolean loose =
              told(situation, "exit", "oversteer") && situation.answer("last-change").isEmpty();
          if (told(situation, "adjustable", "none") && advice.status() == Status.HOLD && loose) {
            assertThat(!advice.alternatives().isEmpty() || advice.changeover() != null).isTrue();
          }
        });
  }

  @Test
  void targetsGoTogetherAndCorrectionsOneAtATime() {
    everywhere(
        (situation, advice) -> {
          List<Suggestion> first = advice.suggestions().stream().filter(Suggestion::first).toList();
          assertThat(!first.isEmpty()).isEqualTo(advice.status() == Status.CHANGE);
          assertThat(first.isEmpty()).isEqualTo(moves(advice).isEmpty());
          if (first.stream().anyMatch(move -> move.kind() == Kind.CORRECTION)) {
            assertThat(first).hasSize(1);
          }
          assertThat(moves(advice).stream().filter(move -> move.kind() != Kind.CORRECTION))
              .as("what is not a correction is made at once")
              .allMatch(Suggestion::first);
          assertThat(advice.suggestions().stream().limit(first.size()).toList()).isEqualTo(first);
        });
  }

  @Test
  void anUndoGoesFirstAndAlone() {
    everywhere(
        (situation, advice) -> {
          boolean undone = moves(advice).stream().anyMatch(move -> move.kind() == Kind.UNDO);
          if (undone) {
            assertThat(advice.suggestions().stream().filter(Suggestion::first))
                .allMatch(move -> move.kind() == Kind.UNDO);
            assertThat(advice.suggestions().get(0).reasons())
                .extracting(Reason::note)
                .contains("undo-worse");
          }
        });
  }

  @Test
  void bothSidesEndEqual() {
    everySuggestion(
        suggestion -> {
          if (suggestion.target() != null) {
            assertThat(suggestion.target().left()).isEqualTo(suggestion.target().right());
          }
        });
  }

  @Test
  void whereNothingWasReadNoPlaceIsNamed() {
    everywhere(
        (situation, advice) ->
            advice
                .suggestions()
                .forEach(
                    suggestion -> {
                      boolean read =
                          suggestion.lever() == Lever.CAMBER
                              ? situation.kart().camber().isPresent()
                              : situation.kart().casterFromNeutral().isPresent();
                      assertThat(suggestion.target() != null).isEqualTo(read);
                      if (!read) {
                        assertThat(suggestion.summary())
                            .doesNotContain("it is already where", ", to ");
                      }
                    }));
  }

  @Test
  void noMoveLeavesTheRange() {
    everywhere(
        (situation, advice) -> {
          for (Suggestion move : moves(advice)) {
            Kart kart = situation.kart();
            if (move.target() == null) {
              continue;
            }
            double end = move.target().left();
            if (move.lever() == Lever.CAMBER) {
              if (move.direction() == Direction.MORE) {
                assertThat(end).isLessThanOrEqualTo(2.001);
              } else {
                assertThat(end).isGreaterThanOrEqualTo(-1.001);
              }
            } else if (!kart.absolute()) {
              double step =
                  kart.eccentrics().casterPerPosition() == null
                      ? 1.0
                      : kart.eccentrics().casterPerPosition().value();
              if (move.direction() == Direction.MORE) {
                assertThat(end / step).isLessThanOrEqualTo(3.5);
              } else {
                assertThat(end / step).isGreaterThanOrEqualTo(-3.5);
              }
            }
          }
        });
  }

  @Test
  void casterMovesByWholePositionsButForTheWayBackToAReading() {
    everyMove(
        move -> {
          boolean back = move.kind() == Kind.RESTORE || move.kind() == Kind.UNDO;
          if (move.lever() == Lever.CASTER && !back) {
            assertThat(move.positions()).isEqualTo(Math.rint(move.positions()));
          }
        });
  }

  @Test
  void aCorrectionIsOnePositionAtMost() {
    everyMove(
        move -> {
          if (move.kind() == Kind.CORRECTION) {
            assertThat(move.positions()).isLessThanOrEqualTo(1);
          }
        });
  }

  @Test
  void whenAllIsGoodNothingIsCorrected() {
    everywhere(
        (situation, advice) -> {
          boolean good =
              Stream.of("turn-in", "mid-corner", "exit")
                      .allMatch(phase -> told(situation, phase, "good"))
                  && situation.facts(ADVISOR.vocabulary()).stream().noneMatch(a -> a.complaint())
                  && !told(situation, "last-effect", "worse")
                  // Which trouble comes first tells of a trouble.
                  && situation.answer("first-trouble").isEmpty();
          if (good) {
            assertThat(moves(advice)).extracting(Suggestion::kind).doesNotContain(Kind.CORRECTION);
          }
        });
  }

  @Test
  void everySummaryIsOneShortPlainSentence() {
    everySuggestion(
        suggestion ->
            assertThat(suggestion.summary())
                .hasSizeLessThan(140)
                .matches("[A-Z][\\x20-\\x7E°±]*[^.]\\.")
                .doesNotContain(". ")
                .doesNotContain("null"));
  }

  @Test
  void howSureIsSaidInWords() {
    everySuggestion(
        suggestion -> assertThat(suggestion.strength()).isIn("slight", "clear", "strong"));
  }

  @Test
  void everyAdviceIsJsonWithoutNullsAndWithoutPercentages() throws Exception {
    JsonMapper mapper = JsonMapper.builder().build();
    for (Given given : ALL) {
      String text = mapper.writeValueAsString(given.advice());
      JsonNode json = mapper.readTree(text);
      assertThat(json.path("schema").asInt()).isEqualTo(1);
      assertThat(json.path("status").asText()).isEqualTo(given.advice().status().id());
      assertThat(json.findValues("lever")).allSatisfy(v -> assertThat(v.isTextual()).isTrue());
      assertThat(text).doesNotContain(":null").doesNotContain("%");
    }
  }

  @Test
  void everyComplaintIsExplainedOrListed() {
    everywhere(
        (situation, advice) ->
            assertThat(advice.unexplained())
                .allSatisfy(
                    observation ->
                        assertThat(told(situation, observation.question(), observation.value()))
                            .isTrue()));
  }

  @Test
  void notEnoughSaysWhichQuestionWouldHelp() {
    everywhere(
        (situation, advice) -> {
          if (advice.status() == Status.NOT_ENOUGH) {
            assertThat(advice.suggestions()).isEmpty();
            assertThat(advice.wouldHelp()).isNotEmpty();
          }
        });
  }
}
