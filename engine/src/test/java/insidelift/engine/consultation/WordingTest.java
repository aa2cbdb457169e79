package insidelift.engine.consultation;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.consultation.advice.Advisor;
import insidelift.shared.Kind;
import insidelift.shared.Lever;
import insidelift.shared.advice.Advice;
import insidelift.shared.advice.Advice.FoundOut;
import insidelift.shared.advice.Advice.Minutes;
import insidelift.shared.advice.Advice.Observation;
import insidelift.shared.advice.Advice.OtherLever;
import insidelift.shared.advice.Advice.Reason;
import insidelift.shared.advice.Advice.Settings;
import insidelift.shared.advice.Advice.Suggestion;
import insidelift.shared.advice.Advice.Weighed;
import insidelift.shared.casefile.CaseReader;
import insidelift.shared.situation.Situation;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
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
            "Set camber 1.0° toward positive on both sides: the track is wet and gives little"
                + " grip.");
    assertThat(caster(wet))
        .isEqualTo(
            "Set caster 2 positions more (about 2.0°) on both sides: a slippery track lightens the"
                + " inside rear less by itself.");
  }

  @Test
  void aCorrectionSaysTheSame() {
    assertThat(caster(advice("turn-in", "understeer")))
        .isEqualTo(
            "Set caster 1 position more (about 1.0°) on both sides: the front pushes at turn-in.");
  }

  /** A coach: caster out for a nervous turn-in is felt as calm hands, and is undone when lazy. */
  @Test
  void whatToFeelAndWhenToUndoAreOfTheWayTheLeverIsTurned() {
    Suggestion less = of(advice("water", "dry", "turn-in", "oversteer"), Lever.CASTER);
    assertThat(less.summary()).startsWith("Set caster 1 position less");
    assertThat(less.confirm()).first().asString().startsWith("The kart turns in without a jab");
    assertThat(less.undo()).first().asString().startsWith("Undo it if the turn-in becomes lazy");

    Suggestion wet =
        of(advice("water", "wet", "setup-for", "wet", "mid-corner", "oversteer"), Lever.CAMBER);
    assertThat(wet.summary()).startsWith("Set camber 0.5° toward negative");
    assertThat(wet.confirm()).first().asString().startsWith("The kart turns in calmly");
  }

  @Test
  void noNoteIsTheReasonForOneWayInOneCaseAndForTheOtherInAnother() {
    Map<String, String> ways = new HashMap<>();
    // Zero is a place that is reached from both sides; the others speak of a comparison.
    List<String> neutral =
        List.of("camber-dry-zero", "by-phase", "camber-dispute", "last-better", "hop-no-bite");
    Stream.of(CaseFiles.WHOLE, CaseFiles.FAMILIES)
        .flatMap(folder -> CaseFiles.read(folder).stream())
        .flatMap(one -> ADVISOR.advise(one.situation()).suggestions().stream())
        .filter(suggestion -> suggestion.moves() && suggestion.kind() == Kind.CORRECTION)
        .forEach(
            suggestion ->
                suggestion.reasons().stream()
                    .map(Reason::note)
                    .filter(note -> !neutral.contains(note))
                    .forEach(
                        note ->
                            assertThat(ways.merge(note, way(suggestion), (one, other) -> one))
                                .as(note)
                                .isEqualTo(way(suggestion))));
    assertThat(ways).hasSizeGreaterThan(10);
  }

  private static String way(Suggestion suggestion) {
    return suggestion.lever().id() + " " + suggestion.direction().id();
  }

  @Test
  void anUndoTakesBack() {
    Advice worse =
        advice(
            "water",
            "dry",
            "turn-in",
            "good",
            "last-change",
            "camber-more",
            "last-effect",
            "worse");
    assertThat(camber(worse))
        .isEqualTo(
            "Take camber back 0.5° toward negative on both sides: the last change made it worse.");
  }

  @Test
  void anUndoGoesToTheReadingBefore() throws Exception {
    Advice worse =
        file(
            "\"water\": \"dry\", \"last-change\": \"camber-more\", \"last-effect\": \"worse\"",
            "\"camber\": {\"left\": 1, \"right\": 1}, \"before\": {\"camber\": {\"left\": 0,"
                + " \"right\": 0}}");
    assertThat(camber(worse))
        .isEqualTo(
            "Take camber back 1.0° toward negative on both sides, to 0.0°: the last change made it"
                + " worse.");
    assertThat(of(worse, Lever.CAMBER).kind()).isEqualTo(Kind.UNDO);
  }

  @Test
  void aKartsOwnSettingIsCalledSo() throws Exception {
    Advice own =
        file(
            "\"water\": \"wet\", \"setup-for\": \"dry\"",
            "\"camber\": {\"left\": 0, \"right\": 0}, \"baseline\": {\"wet\": {\"camber\":"
                + " {\"left\": 1.5, \"right\": 1.5}}}");
    assertThat(camber(own))
        .isEqualTo(
            "Set camber 1.5° toward positive on both sides, to +1.5°: this kart's own setting for"
                + " the wet.");
    assertThat(of(own, Lever.CAMBER).kind()).isEqualTo(Kind.RESTORE);
  }

  @Test
  void aHeldLeverSaysWhatWasWantedAndWhatHoldsIt() {
    assertThat(caster(advice("water", "wet", "steering-weight", "heavy")))
        .isEqualTo("Leave caster where it is: the steering is already too heavy for this driver.");
    assertThat(camber(advice("water", "dry", "mid-corner", "understeer", "adjustable", "none")))
        .isEqualTo(
            "Leave camber where it is (wanted, since the front pushes in mid-corner): this kart"
                + " cannot move that lever.");
  }

  @Test
  void aLeverThatIsThereAlreadySaysSo() throws Exception {
    assertThat(camber(file("\"water\": \"wet\"", "\"camber\": {\"left\": 1, \"right\": 1}")))
        .isEqualTo(
            "Leave camber where it is: it is already where it should be (+1.0° on both sides).");
  }

  @Test
  void aPositionTheDriverDoesNotGetIsSaid() {
    assertThat(caster(advice("water", "damp", "driver-strength", "limited")))
        .isEqualTo(
            "Leave caster where it is: this driver gets one caster position fewer than the water"
                + " asks for.");
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
    assertThat(reason.rule()).isEqualTo("caster-entry");
    assertThat(reason.because()).containsExactly("turn-in: understeer");
    assertThat(reason.sources())
        .contains("crg-2005: CRG / SSC Racing set-up guide, 2005. Seen: in full.");
  }

  @Test
  void aFindingShowsItsEvidenceForAndAgainst() {
    FoundOut found =
        advice("turn-in", "understeer", "corner-speed", "fast").findings().stream()
            .filter(finding -> finding.id().equals("entry-push"))
            .findFirst()
            .orElseThrow();

    assertThat(found.weight()).isEqualTo(12);
    assertThat(found.strength()).isEqualTo("slight");
    assertThat(found.ledger()).extracting(Weighed::weight).containsExactly(20, -8);
  }

  @Test
  void whatNothingExplainsIsListed() {
    assertThat(advice("tiring", "yes", "driver-strength", "average", "water", "dry").unexplained())
        .containsExactly(new Observation("tiring", "yes", "yes"));
  }

  @Test
  void anotherLeverComesWithItsFirstMoveAndItsReasonWhatGainsMostFirst() {
    assertThat(advice("hop", "hops").alternatives())
        .extracting(OtherLever::lever)
        .containsExactly("rear-width", "struts", "hubs", "ballast", "rear-height");
    assertThat(advice("hop", "hops").alternatives())
        .allSatisfy(
            other -> {
              assertThat(other.action()).isNotBlank();
              assertThat(other.why()).isNotBlank();
            });
  }

  @Test
  void aLimitIsSaidWithWhatGaveWay() {
    Advice advice = advice("water", "dry", "turn-in", "understeer", "adjustable", "camber-only");

    assertThat(advice.decisions())
        .filteredOn(decision -> decision.note().equals("limit-adjustable"))
        .singleElement()
        .satisfies(decision -> assertThat(decision.over()).contains("caster-entry-push"));
  }

  @Test
  void whatWasTakenForGrantedIsSaid() throws Exception {
    assertThat(advice("water", "wet").assumed())
        .containsExactly(
            "The camber is taken to stand where this set-up usually starts: measure it.",
            "The caster is taken to stand where this set-up usually starts: measure it.",
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
    Advice neutral =
        file(
            "\"water\": \"wet\"",
            "\"caster\": {\"left\": 0, \"right\": 0, \"reference\": \"neutral\"}");
    assertThat(of(neutral, Lever.CASTER).target()).isEqualTo(new Settings(2, 2, "neutral"));
    assertThat(of(absolute, Lever.CAMBER).target()).isNull();
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
