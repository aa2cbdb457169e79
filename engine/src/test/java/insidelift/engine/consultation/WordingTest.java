package insidelift.engine.consultation;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.shared.Lever;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.Decision;
import insidelift.shared.advice.Advice.FoundOut;
import insidelift.shared.advice.Advice.Minutes;
import insidelift.shared.advice.Advice.Observation;
import insidelift.shared.advice.Advice.OtherLever;
import insidelift.shared.advice.Advice.Reason;
import insidelift.shared.advice.Advice.Settings;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.advice.Advice.Weighed;
import insidelift.shared.situation.CaseReader;
import insidelift.shared.situation.Situation;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The sentences of an advice, word for word. */
class WordingTest {

  private static final Advisor ADVISOR = Advisor.load();

  private static Advice advice(String... answers) {
    Map<String, String> told = new LinkedHashMap<>();
    for (int i = 0; i < answers.length; i += 2) {
      told.put(answers[i], answers[i + 1]);
    }
    return ADVISOR.advise(Situation.of(told));
  }

  private static Advice file(String answers, String kart) throws Exception {
    String text = "{\"schema\": 1, \"answers\": {%s}, \"kart\": {%s}}".formatted(answers, kart);
    return ADVISOR.advise(new CaseReader(ADVISOR.vocabulary()).read(text));
  }

  private static Suggestion of(Advice advice, Lever lever) {
    return advice.suggestions().stream().filter(s -> s.lever() == lever).findFirst().orElseThrow();
  }

  private static String camber(Advice advice) {
    return of(advice, Lever.CAMBER).summary();
  }

  private static String caster(Advice advice) {
    return of(advice, Lever.CASTER).summary();
  }

  @Test
  void aTargetSaysHowFarWhichWayWhereToAndWhy() {
    Advice wet = advice("water", "wet");

    assertThat(camber(wet))
        .isEqualTo(
            "Set camber 1.0° toward positive on both sides, to +1.0°: the track is wet and gives"
                + " little grip.");
    assertThat(caster(wet))
        .isEqualTo(
            "Set caster 2 positions more (about 2.0°) on both sides: a slippery track lifts the"
                + " inside rear less by itself.");
  }

  @Test
  void aCorrectionSaysTheSame() {
    assertThat(caster(advice("turn-in", "understeer")))
        .isEqualTo(
            "Set caster 1 position more (about 1.0°) on both sides: the front pushes at turn-in.");
  }

  @Test
  void anUndoTakesBack() {
    assertThat(
            camber(
                advice(
                    "mid-corner",
                    "understeer",
                    "last-change",
                    "camber-more",
                    "last-effect",
                    "worse")))
        .isEqualTo(
            "Take camber back 0.5° toward negative on both sides, to -0.5°: the last change made"
                + " it worse.");
  }

  @Test
  void aHeldLeverSaysWhatWasWantedAndWhatHoldsIt() {
    assertThat(caster(advice("water", "wet", "steering-weight", "heavy")))
        .isEqualTo(
            "Leave caster where it is (wanted: more), because the steering is already too heavy"
                + " for this driver.");
  }

  @Test
  void aLeverThatIsThereAlreadySaysSo() throws Exception {
    assertThat(camber(file("\"water\": \"wet\"", "\"camber\": {\"left\": 1, \"right\": 1}")))
        .isEqualTo(
            "Leave camber where it is: it is already where it should be (+1.0° on both sides).");
  }

  @Test
  void aLeverAtItsMarkSaysSo() throws Exception {
    assertThat(
            camber(
                file(
                    "\"water\": \"dry\", \"power\": \"high\", \"exit\": \"oversteer\"",
                    "\"camber\": {\"left\": -0.5, \"right\": -0.5}")))
        .isEqualTo("Leave camber where it is: at -0.5° it is as far as this reason takes it.");
  }

  @Test
  void aPositionTheDriverDoesNotGetIsSaid() {
    assertThat(caster(advice("water", "damp", "driver-strength", "limited")))
        .isEqualTo("Leave caster where it is: this driver gets one caster position fewer.");
  }

  @Test
  void aGoodKartIsAnAnswer() {
    assertThat(camber(advice("turn-in", "good", "mid-corner", "good", "exit", "good")))
        .isEqualTo("Leave camber where it is: there is nothing to complain of.");
  }

  @Test
  void theChainRunsFromAnswersOverTheFindingToTheChange() {
    Reason reason =
        of(advice("turn-in", "understeer", "inside-rear", "stays-down"), Lever.CASTER)
            .reasons()
            .get(0);

    assertThat(reason.note()).isEqualTo("caster-entry-push");
    assertThat(reason.because())
        .containsExactly(
            "inside-rear: stays-down", "turn-in: understeer", "finding entry-push: strong");
    assertThat(reason.sources())
        .contains("crg-2005: CRG / SSC Racing set-up guide, 2005 (seen nearly in full).");
  }

  @Test
  void aFindingShowsItsEvidenceForAndAgainst() {
    FoundOut found =
        advice("turn-in", "understeer", "corner-speed", "fast").findings().stream()
            .filter(finding -> finding.id().equals("entry-push"))
            .findFirst()
            .orElseThrow();

    assertThat(found.weight()).isEqualTo(3);
    assertThat(found.strength()).isEqualTo("slight");
    assertThat(found.ledger()).extracting(Weighed::weight).containsExactly(-2, 5);
  }

  @Test
  void whatNothingExplainsIsListed() {
    assertThat(advice("tiring", "yes", "driver-strength", "average", "water", "dry").unexplained())
        .containsExactly(new Observation("tiring", "yes", "yes"));
  }

  @Test
  void anotherLeverComesWithItsFirstMoveAndItsReasonTheCheapestFirst() {
    assertThat(advice("hop", "hops").alternatives())
        .extracting(OtherLever::lever)
        .containsExactly(
            "lever-pressures", "lever-rear-width", "lever-front-width", "lever-hubs", "lever-axle");
    assertThat(advice("hop", "hops").alternatives())
        .allSatisfy(
            other -> {
              assertThat(other.action()).isNotBlank();
              assertThat(other.why()).isNotBlank();
            });
  }

  @Test
  void whoOutranksWhomIsSaidWithWhatGaveWay() {
    Advice advice = advice("water", "dry", "front-temps", "outer-hot", "mid-corner", "understeer");

    assertThat(advice.decisions())
        .filteredOn(decision -> decision.note().equals("tyre-evidence-first"))
        .singleElement()
        .extracting(Decision::over)
        .isEqualTo(java.util.List.of("camber-front-weak"));
  }

  @Test
  void whatWasTakenForGrantedIsSaid() throws Exception {
    assertThat(advice("water", "wet").assumed())
        .containsExactly(
            "The kart stands at zero camber on both sides.",
            "The kart stands at its neutral caster on both sides.",
            "One camber position moves 0.5° (provisional): measure yours.",
            "One caster position moves 1.0° (provisional): measure yours.");
    assertThat(
            file(
                    "\"water\": \"wet\"",
                    "\"camber\": {\"left\": 0, \"right\": 0}, \"caster\": {\"left\": 12,"
                        + " \"right\": 12, \"reference\": \"absolute\"}, \"eccentrics\":"
                        + " {\"camberPerPosition\": 0.4, \"casterPerPosition\": 1.2}")
                .assumed())
        .containsExactly(
            "The caster given is the kart's neutral, since the neutral was not given.");
  }

  @Test
  void nothingIsTakenForGrantedBeforeAFault() {
    assertThat(advice("play", "some").assumed()).isEmpty();
  }

  @Test
  void theTargetIsSaidInTheReferenceOfTheKart() throws Exception {
    Advice absolute =
        file(
            "\"water\": \"wet\"",
            "\"caster\": {\"left\": 12, \"right\": 12, \"reference\": \"absolute\","
                + " \"neutral\": 12}");

    assertThat(of(absolute, Lever.CASTER).target()).isEqualTo(new Settings(14, 14, "absolute"));
    assertThat(of(advice("water", "wet"), Lever.CASTER).target())
        .isEqualTo(new Settings(2, 2, "neutral"));
    assertThat(of(absolute, Lever.CAMBER).target()).isEqualTo(new Settings(1, 1, "absolute"));
  }

  @Test
  void theJobTakesANoviceTwentyToThirtyMinutes() {
    // Provisional: nobody publishes how long the job takes.
    assertThat(of(advice("water", "wet"), Lever.CAMBER).minutes()).isEqualTo(new Minutes(20, 30));
  }

  @Test
  void theTurnOfTheEccentricOpensTheStepsOfItsOwnMoveOnly() {
    Suggestion camber = of(advice("water", "wet"), Lever.CAMBER);

    assertThat(camber.steps())
        .startsWith(ADVISOR.notes().note("turn-camber-more").section("Steps").get(0))
        .containsAll(ADVISOR.notes().note("kingpin-job").section("Steps"))
        .doesNotContain(ADVISOR.notes().note("turn-caster-more").section("Steps").get(0));
  }

  @Test
  void blockingChecksComeBeforeThoseToLookAt() {
    Advice advice = advice("play", "some", "exit-drive", "bogs", "pressures", "not-set");

    assertThat(advice.firstChecks().stream().limit(3).map(check -> check.id()))
        .containsExactly("check-play", "check-pressures-not-set", "check-drive");
  }
}
