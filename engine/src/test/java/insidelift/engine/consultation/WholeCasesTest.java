package insidelift.engine.consultation;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import insidelift.engine.audit.CaseLibrary.Entry;
import insidelift.engine.consultation.advice.Advisor;
import insidelift.rules.Reasoned;
import insidelift.rules.fact.Spoken;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.index.RuleIndex.IndexedRule;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Whole cases, from answers to advice, each with its published source or common practice. */
class WholeCasesTest {

  private static final Advisor ADVISOR = Advisor.load();
  private static final List<Entry> CASES = CaseFiles.read(CaseFiles.WHOLE);

  /** Two cases for each disputed claim: one that follows it, one that goes the other way. */
  private static final Map<String, List<String>> BOTH_SIDES =
      Map.ofEntries(
          entry(
              "camber-front-weak",
              List.of(
                  "A push in mid-corner in the dry with nothing else known asks for more camber",
                  "Outer edges hot while the kart understeers in mid-corner: the tyre outranks the"
                      + " general rule, so less camber")),
          entry(
              "camber-wet-positive",
              List.of(
                  "Wet and steady: both targets are set",
                  "More camber in the wet made it worse: it is taken back")),
          entry(
              "caster-wet-more",
              List.of(
                  "Wet and steady: both targets are set",
                  "More caster in the wet made it worse: it is taken back")),
          entry(
              "caster-rubbered-more",
              List.of(
                  "Rubbered track, mid-corner and exit understeer, inside rear stays down: camber"
                      + " first by a hair, caster waits",
                  "A rubbered track whose front bites at turn-in, the inside rear not seen: caster"
                      + " less")));

  private static Advice advice(Entry entry) {
    return ADVISOR.advise(entry.situation());
  }

  private static Suggestion suggestion(String name, Lever lever) {
    Entry found =
        CASES.stream().filter(entry -> entry.name().equals(name)).findFirst().orElseThrow();
    return advice(found).suggestions().stream()
        .filter(suggestion -> suggestion.lever() == lever)
        .findFirst()
        .orElseThrow();
  }

  @TestFactory
  Stream<DynamicTest> everyCaseEndsAsItSays() {
    return CASES.stream()
        .map(
            entry ->
                dynamicTest(
                    entry.file() + ": " + entry.name(),
                    () -> assertThat(entry.differences(advice(entry))).isEmpty()));
  }

  @Test
  void thereAreAtLeastAHundredAndTwentyCasesNoTwoAlike() {
    assertThat(CASES).hasSizeGreaterThanOrEqualTo(120);
    assertThat(CASES).extracting(Entry::name).doesNotHaveDuplicates();
    assertThat(CASES).extracting(entry -> entry.situation()).doesNotHaveDuplicates();
  }

  @Test
  void everyCaseNamesASourceAndExpectsSomething() {
    assertThat(CASES)
        .allSatisfy(
            entry -> {
              assertThat(ADVISOR.notes().bibliography().keySet()).containsAll(entry.sources());
              assertThat(entry.node().path("expect")).as(entry.name()).isNotEmpty();
            });
  }

  @Test
  void everyClaimCheckAndDecisionOfTheRulesIsHeardInSomeCase() {
    Set<String> written =
        ADVISOR.rules().index().rules().stream()
            .filter(IndexedRule::plain)
            .map(IndexedRule::note)
            .collect(Collectors.toSet());
    Set<String> heard = new TreeSet<>();
    for (Entry entry : CASES) {
      Reasoned reasoned = ADVISOR.decide(entry.situation()).reasoned();
      reasoned.all(Spoken.class).forEach(said -> heard.add(said.by().note()));
    }
    assertThat(heard).containsAll(written);
  }

  @Test
  void bothSidesOfEveryDisputedClaimAreThere() {
    Set<String> disputed =
        ADVISOR.rules().index().rules().stream()
            .map(IndexedRule::note)
            .filter(note -> ADVISOR.notes().note(note).disputed())
            .filter(note -> ADVISOR.notes().note(note).kind().equals("claim"))
            // The dispute itself, the same claim turned round, one about when to begin, and a
            // limit.
            .filter(
                note ->
                    !Set.of("camber-dispute", "camber-rear-loose", "caster-dusty-more", "side-bite")
                        .contains(note))
            .collect(Collectors.toSet());
    assertThat(BOTH_SIDES.keySet()).isEqualTo(disputed);
    BOTH_SIDES.forEach(
        (claim, names) -> {
          Lever lever = claim.startsWith("camber") ? Lever.CAMBER : Lever.CASTER;
          Suggestion follows = suggestion(names.get(0), lever);
          assertThat(follows.direction()).as(claim).isEqualTo(Direction.MORE);
          assertThat(follows.disputes()).extracting(dispute -> dispute.note()).contains(claim);
          assertThat(suggestion(names.get(1), lever).direction())
              .as(claim)
              .isEqualTo(Direction.LESS);
        });
  }

  @Test
  void aWrongExpectationIsFound() throws Exception {
    JsonNode wrong =
        JsonMapper.builder()
            .build()
            .readTree(
                """
                {"expect": {"status": "hold", "camber": "less", "caster": "none", "first": ["caster"],
                 "kind": {"camber": "correction"}, "degrees": {"camber": 0.5},
                 "checks": ["check-play"], "alternatives": ["lever-seat"], "decisions": ["by-phase"]}}
                """);
    Entry wet =
        CASES.stream()
            .filter(entry -> entry.name().equals("Wet and steady: both targets are set"))
            .findFirst()
            .orElseThrow();

    assertThat(new Entry("", "", List.of(), wet.situation(), wrong).differences(advice(wet)))
        .containsExactly(
            "status: hold expected, change",
            "camber: less expected, more",
            "camber kind: correction expected, target",
            "camber degrees: 0.5 expected, 1.0",
            "caster: none expected, more",
            "first: [caster] expected, [camber, caster]",
            "checks: check-play is missing",
            "alternatives: lever-seat is missing",
            "decisions: by-phase is missing");
  }
}
