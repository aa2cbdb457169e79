package insidelift.engine.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.engine.audit.Allowances.Allowance;
import insidelift.engine.consultation.Advisor;
import insidelift.engine.consultation.Decided;
import insidelift.engine.notes.Note;
import insidelift.rules.RuleBase;
import insidelift.shared.index.RuleIndex;
import insidelift.shared.index.RuleIndex.Act;
import insidelift.shared.index.RuleIndex.Constraint;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.RuleIndex.Premise;
import insidelift.shared.situation.Situation;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every check finds a mistake made on purpose, names its place, and finds none without it. */
class ChecksTest {

  private static final Advisor ADVISOR = Advisor.load();
  private static final LocalDate DAY = LocalDate.parse("2026-11-25");
  private static final Knowledge SOUND = new Knowledge(ADVISOR, DAY);

  private static Premise answer(String question, String... values) {
    return new Premise(
        "Answer",
        false,
        List.of(
            new Constraint("question", "==", List.of(question)),
            new Constraint("value", "in", List.of(values))));
  }

  private static Premise finding(String id, int least) {
    return new Premise(
        "Finding",
        false,
        List.of(
            new Constraint("id", "==", List.of(id)),
            new Constraint("strength", ">=", List.of("" + least))));
  }

  private static IndexedRule rule(
      String id, String note, String stage, List<Premise> premises, Act... acts) {
    return new IndexedRule(id, note, "", "made-up", 7, stage, premises, List.of(acts));
  }

  private static Act act(String verb, String... words) {
    return new Act(verb, List.of(words));
  }

  /** The knowledge of this build with other rules beside its own. */
  private static Knowledge with(IndexedRule... more) {
    List<IndexedRule> rules = new ArrayList<>(SOUND.rules());
    rules.addAll(List.of(more));
    return knowledge(rules);
  }

  private static Knowledge without(String id) {
    return knowledge(SOUND.rules().stream().filter(rule -> !rule.id().equals(id)).toList());
  }

  private static Knowledge knowledge(List<IndexedRule> rules) {
    return new Knowledge(
        ADVISOR.with(RuleBase.plain(new RuleIndex(1, rules)), ADVISOR.notes()), DAY);
  }

  private static Knowledge withNote(Note note) {
    return new Knowledge(
        ADVISOR.with(ADVISOR.rules(), ADVISOR.notes().with(List.of(note), Map.of())), DAY);
  }

  private static Note note(
      String id, List<String> sources, boolean disputed, String review, String section) {
    return new Note(
        id,
        "claim",
        "camber",
        "Made up",
        "",
        sources,
        disputed,
        review,
        Map.of("Claim", List.of("Made up."), section, List.of("One side: a", "Other side: b")));
  }

  private static void found(List<Remark> remarks, String id, String what) {
    assertThat(remarks)
        .filteredOn(remark -> remark.id().equals(id))
        .singleElement()
        .satisfies(remark -> assertThat(remark.what()).isEqualTo(what));
  }

  private static Decided decided(Knowledge knowledge, Situation situation) {
    return knowledge.advisor().decide(situation);
  }

  private static Situation situation(String... answers) {
    Situation situation = Situation.UNKNOWN;
    for (int i = 0; i < answers.length; i += 2) {
      situation = situation.with(answers[i], answers[i + 1]);
    }
    return situation;
  }

  @Test
  void aRuleSaidTwiceIsRedundantAndHasItsPlace() {
    IndexedRule twice =
        rule("twice", "check-play", "MAIN", List.of(answer("play", "some")), act("check", "stop"));
    List<Remark> remarks = new Repetition(with(twice)).redundant();
    found(remarks, "check-play twice", "rule \"twice\" says what rule \"check-play\" says");
    assertThat(remarks.get(0).file()).isEqualTo("made-up.drl");
    assertThat(remarks.get(0).line()).isEqualTo(7);
    assertThat(new Repetition(SOUND).redundant()).isEmpty();
  }

  @Test
  void aRuleThatAMoreGeneralOneCoversIsSubsumed() {
    IndexedRule special =
        rule(
            "special",
            "check-play",
            "MAIN",
            List.of(answer("play", "some"), answer("water", "wet")),
            act("check", "stop"));
    found(
        new Repetition(with(special)).subsumed(),
        "special check-play",
        "rule \"special\" adds nothing: rule \"check-play\" says it whenever it speaks");
    IndexedRule other =
        rule("other", "check-play", "MAIN", special.premises(), act("check", "fault"));
    assertThat(new Repetition(with(other)).subsumed()).isEmpty();
  }

  @Test
  void aPremiseThatFollowsFromAnotherIsNeedless() {
    IndexedRule needless =
        rule(
            "needless",
            "check-play",
            "MAIN",
            List.of(answer("water", "damp", "wet"), answer("water", "wet")),
            act("check", "look"));
    found(
        new Repetition(with(needless)).needlessPremises(),
        "needless premise 1",
        "premise 1 of rule \"needless\" follows from another one");
    assertThat(new Repetition(SOUND).needlessPremises()).isEmpty();
  }

  @Test
  void aRuleThatRestsOnItsOwnResultIsCircular() {
    IndexedRule circle =
        rule(
            "circle",
            "camber-front-weak",
            "advise",
            List.of(finding("front-weak", 5), answer("exit", "good")),
            act("evidence", "front-weak", "5"));
    found(
        new Dependence(with(circle)).circles(),
        "circle",
        "rule \"circle\" rests on what follows from it");
    assertThat(new Dependence(SOUND).circles()).isEmpty();
  }

  @Test
  void aRuleThatReadsAFactBeforeThereIsAnyIsTooEarly() {
    IndexedRule early =
        rule("early", "check-play", "MAIN", List.of(finding("heavy", 5)), act("check", "look"));
    found(
        new Dependence(with(early)).tooEarly(),
        "early Finding",
        "rule \"early\" reads a Finding before there is any");
    assertThat(new Dependence(SOUND).tooEarly()).isEmpty();
  }

  @Test
  void aFindingThatCannotBeThatStrongIsUnreachable() {
    IndexedRule greedy =
        rule(
            "greedy",
            "camber-rear-loose",
            "advise",
            List.of(finding("power-slide", 10)),
            act("correction", "camber", "less", "power-slide"));
    found(
        new Dependence(with(greedy)).unreachable(),
        "greedy power-slide",
        "rule \"greedy\" asks for 10 decibans of \"power-slide\", and all evidence for it is 5");
    found(
        new Dependence(without("power-slide.exit")).unreachable(),
        "power-slide",
        "no rule gives evidence for the finding \"power-slide\"");
    assertThat(new Dependence(SOUND).unreachable()).isEmpty();
  }

  @Test
  void aFindingThatNobodyReadsAndAClaimThatNobodyMakesAreDeadEnds() {
    found(
        new Dependence(without("camber-high-power-stable")).deadEnds(),
        "power-slide",
        "no rule reads the finding \"power-slide\"");
    IndexedRule lost =
        rule("lost", "by-phase", "decide", List.of(), act("setsAside", "check-play"));
    found(
        new Dependence(with(lost)).deadEnds(),
        "lost check-play",
        "rule \"lost\" names the claim \"check-play\", which asks for nothing");
    assertThat(new Dependence(SOUND).deadEnds()).isEmpty();
  }

  @Test
  void aWordThatIsNotInTheVocabularyIsIllegal() {
    IndexedRule illegal =
        rule(
            "illegal", "check-play", "MAIN", List.of(answer("water", "soaked")), act("check", "x"));
    assertThat(new Reading(with(illegal)).illegal())
        .singleElement()
        .satisfies(
            remark ->
                assertThat(remark.what()).startsWith("rule \"illegal\": \"soaked\" is not one of"));
    IndexedRule noteless =
        rule("noteless", "no-such-note", "MAIN", List.of(), act("check", "look"));
    found(
        new Reading(with(noteless)).illegal(),
        "noteless no-such-note",
        "rule \"noteless\" stands on the note \"no-such-note\", which is not there");
    assertThat(new Reading(SOUND).illegal()).isEmpty();
  }

  @Test
  void aFaultThatNobodyReadsIsAnErrorAndASoundValueANote() {
    found(
        new Reading(without("check-axle")).unread(),
        "axle bent",
        "no rule reads \"axle: bent\", which is a fault or a complaint");
    assertThat(new Reading(SOUND).unread())
        .noneMatch(remark -> remark.severity() == Severity.ERROR);
    found(new Reading(SOUND).unread(), "gearbox", "no rule reads the question \"gearbox\"");
    found(new Reading(SOUND).unread(), "trend", "no rule reads \"trend\" as steady by name");
  }

  @Test
  void aChangeWithoutItsTextsOrItsJobIsIncomplete() {
    IndexedRule bare =
        rule(
            "bare",
            "check-play",
            "advise",
            List.of(finding("heavy", 5)),
            act("correction", "caster", "less", "heavy"));
    found(
        new Completeness(with(bare)).changes(),
        "check-play undo (section Undo)",
        "the note \"check-play\" asks for a change and has no undo (section Undo)");
    found(
        new Completeness(without("kingpin-job")).changes().isEmpty()
            ? new Completeness(
                    knowledge(
                        SOUND.rules().stream()
                            .filter(
                                rule -> rule.acts().stream().noneMatch(a -> a.verb().equals("job")))
                            .toList()))
                .changes()
            : List.of(),
        "camber more job",
        "a move of camber to more has no job");
    assertThat(new Completeness(SOUND).changes()).isEmpty();
  }

  @Test
  void notesAreHeldToTheirSourcesSidesAndDates() {
    List<String> practice = List.of("common-practice");
    found(
        new Completeness(withNote(note("m", practice, true, "2027-01-01", "Dispute"))).disputes(),
        "m",
        "the note \"m\" is disputed and lacks a side or what decides");
    found(
        new Completeness(withNote(note("m", practice, false, "2027-01-01", "Dispute"))).disputes(),
        "m",
        "the note \"m\" tells a dispute and is not marked so");
    found(
        new Completeness(withNote(note("m", List.of("x"), false, "2027-01-01", "Why"))).sources(),
        "m x",
        "the source \"x\" of the note \"m\" is not in the bibliography");
    found(
        new Completeness(withNote(note("m", List.of(""), false, "2027-01-01", "Why"))).sources(),
        "m",
        "the note \"m\" has no source");
    found(
        new Completeness(withNote(note("m", practice, false, "2026-11-24", "Why"))).reviews(),
        "m",
        "the note \"m\" was to be reviewed by 2026-11-24");
    assertThat(
            new Completeness(withNote(note("m", practice, false, "2026-11-25", "Why"))).reviews())
        .isEmpty();
    found(
        new Completeness(withNote(note("m", practice, false, "soon", "Why"))).reviews(),
        "m",
        "the review date of the note \"m\" is no day");
  }

  @Test
  void opposedCorrectionsWithoutADeciderAreShownByTheirAnswers() {
    Situation both = situation("water", "dry", "mid-corner", "oversteer", "exit", "understeer");
    Knowledge undecided = without("by-phase.mid-loose");
    Voices voices = new Voices(undecided);
    voices.see(both, decided(undecided, both));
    found(
        voices.opposed(),
        "camber-front-weak camber-rear-loose",
        "\"camber-front-weak\" and \"camber-rear-loose\" ask camber both ways and no rule decides");
    assertThat(voices.opposed().get(0).witness()).containsEntry("exit", "understeer");
    Voices sound = new Voices(SOUND);
    sound.see(both, decided(SOUND, both));
    assertThat(sound.opposed()).isEmpty();
  }

  @Test
  void aRuleThatNeverSpeaksIsNamed() {
    Voices voices = new Voices(SOUND);
    Situation loose = situation("play", "some");
    voices.see(loose, decided(SOUND, loose));
    assertThat(voices.silent()).extracting(Remark::id).contains("check-loose");
    assertThat(voices.silent()).extracting(Remark::id).doesNotContain("check-play");
  }

  @Test
  void aSilenceWithoutAReasonIsAGap() {
    Knowledge mute = without("nothing-asks.caster");
    Situation some = situation("water", "dry", "turn-in", "good");
    Voices voices = new Voices(mute);
    voices.see(some, decided(mute, some));
    found(
        voices.gaps(),
        "no lever moves, and nothing says why",
        "no lever moves, and nothing says why");
    Voices sound = new Voices(SOUND);
    sound.see(some, decided(SOUND, some));
    assertThat(sound.gaps()).isEmpty();
  }

  @Test
  void everyInvariantThatRulesCanBreakIsSeenBroken() {
    broken(without("check-play"), situation("play", "some"), "a fault moves no lever");
    broken(
        without("caster-heavy-limit"),
        situation("steering-weight", "heavy", "water", "wet"),
        "too heavy a steering gets no more caster");
    broken(
        knowledge(
            SOUND.rules().stream()
                .filter(rule -> rule.acts().stream().noneMatch(a -> a.verb().equals("caution")))
                .toList()),
        situation("water", "wet"),
        "a move has reasons, cautions and a job");
    IndexedRule meddling =
        rule(
            "meddling",
            "camber-rear-loose",
            "advise",
            List.of(finding("even-contact", 5)),
            act("correction", "camber", "less", "even-contact"));
    broken(
        knowledge(
            Stream.concat(without("camber-even").rules().stream(), Stream.of(meddling)).toList()),
        situation("turn-in", "good", "mid-corner", "good", "exit", "good", "front-wear", "even"),
        "where all is good nothing is corrected");
  }

  private static void broken(Knowledge knowledge, Situation situation, String invariant) {
    Invariants invariants = new Invariants(knowledge.words());
    assertThat(invariants.names()).contains(invariant);
    invariants.see(situation, decided(knowledge, situation));
    found(invariants.remarks(), invariant, "it does not hold that " + invariant);
    Invariants sound = new Invariants(SOUND.words());
    sound.see(situation, decided(SOUND, situation));
    assertThat(sound.remarks()).isEmpty();
  }

  @Test
  void aComparisonThatRulesBreakIsSeenBroken() {
    IndexedRule leftOnly =
        rule(
            "left-only",
            "check-play",
            "MAIN",
            List.of(answer("pull", "left")),
            act("check", "fault"));
    Knowledge lopsided =
        knowledge(
            Stream.concat(without("caster-unequal").rules().stream(), Stream.of(leftOnly))
                .toList());
    compared(
        lopsided,
        situation("pull", "left", "water", "wet"),
        "a mirrored kart gets the same advice");
    IndexedRule backward =
        rule(
            "backward",
            "camber-wet-positive",
            "advise",
            List.of(answer("water", "standing")),
            act("target", "camber", "damp"));
    compared(
        knowledge(
            Stream.concat(
                    without("camber-wet-positive.standing").rules().stream(), Stream.of(backward))
                .toList()),
        situation("water", "wet"),
        "more water never asks for less");
  }

  private static void compared(Knowledge knowledge, Situation situation, String comparison) {
    Comparisons comparisons = new Comparisons(knowledge.advisor(), 1);
    comparisons.see(situation, decided(knowledge, situation));
    found(comparisons.remarks(), comparison, "it does not hold that " + comparison);
    Comparisons sound = new Comparisons(ADVISOR, 1);
    sound.see(situation, decided(SOUND, situation));
    assertThat(sound.remarks()).isEmpty();
    assertThat(sound.compared()).isEqualTo(1);
  }

  @Test
  void anIndexThatSaysOtherThanTheRulesIsSeen() {
    Situation loose = situation("play", "some");
    Agreement agreement = new Agreement(ADVISOR, 1);
    agreement.see(loose, decided(SOUND, loose));
    assertThat(agreement.remarks()).isEmpty();
    agreement.see(loose, decided(without("check-play"), loose));
    found(agreement.remarks(), "index", "the compiled rules say other than their index");
  }

  @Test
  void anAllowanceNeedsAReasonAndADayAndSomethingToAllow() {
    assertThatThrownBy(() -> Allowances.of(List.of(new Allowance("a", "b", " ", "2026-11-25"))))
        .hasMessage("a: b is allowed without a reason");
    assertThatThrownBy(() -> Allowances.of(List.of(new Allowance("a", "b", "so", "today"))))
        .hasMessage("a: b is allowed on no day");
    Allowance one = new Allowance("a", "b", "so", "2026-11-25");
    assertThatThrownBy(() -> Allowances.of(List.of(one, one))).hasMessage("a: b is allowed twice");
    Allowances allowances = Allowances.of(List.of(one));
    found(allowances.idle(), "a: b", "the allow-list allows \"a: b\", which is not there");
    assertThat(allowances.find("a", Remark.of("b", Severity.ERROR, ""))).contains(one);
    assertThat(allowances.idle()).isEmpty();
  }
}
