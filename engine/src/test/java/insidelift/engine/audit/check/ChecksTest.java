package insidelift.engine.audit.check;

import static insidelift.engine.audit.check.Mistaken.SOUND;
import static insidelift.engine.audit.check.Mistaken.act;
import static insidelift.engine.audit.check.Mistaken.answer;
import static insidelift.engine.audit.check.Mistaken.found;
import static insidelift.engine.audit.check.Mistaken.knowledge;
import static insidelift.engine.audit.check.Mistaken.note;
import static insidelift.engine.audit.check.Mistaken.rule;
import static insidelift.engine.audit.check.Mistaken.with;
import static insidelift.engine.audit.check.Mistaken.withNote;
import static insidelift.engine.audit.check.Mistaken.without;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import insidelift.engine.audit.check.Allowances.Allowance;
import insidelift.shared.index.RuleIndex.IndexedRule;
import insidelift.shared.index.Verb;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every check finds a mistake made on purpose, names its place, and finds none without it. */
class ChecksTest {

  @Test
  void aRuleSaidTwiceIsRedundantAndHasItsPlace() {
    IndexedRule twice =
        rule("twice", "check-play", List.of(answer("play", "some")), act(Verb.CHECK, "stop"));
    List<Remark> remarks = new RepeatedRules(with(twice)).redundant();
    found(remarks, "check-play twice", "rule \"twice\" says what rule \"check-play\" says");
    assertThat(remarks.get(0).file()).isEqualTo("made-up.drl");
    assertThat(remarks.get(0).line()).isEqualTo(7);
    assertThat(new RepeatedRules(SOUND).redundant()).isEmpty();
  }

  @Test
  void aClaimAgainstOneThatNobodyDisputesIsOpposed() {
    IndexedRule contrary =
        rule(
            "contrary",
            "caster-entry-push",
            List.of(answer("turn-in", "understeer")),
            act(Verb.CLAIM, "caster", "less", "entry", "2", "80", "none", "both"));
    List<Remark> remarks = new Contradiction(with(contrary)).opposed();
    found(
        remarks,
        "caster-entry contrary",
        "\"caster-entry\" and \"contrary\" say the contrary of caster, and neither is a camp of a"
            + " dispute");
    assertThat(remarks.get(0).witness()).containsEntry("turn-in", "understeer");
    IndexedRule camp =
        rule(
            "camp",
            "caster-entry-push",
            List.of(),
            act(Verb.CLAIM, "caster", "less", "entry", "2", "80", "later", "both"));
    assertThat(new Contradiction(with(camp)).opposed()).isEmpty();
    assertThat(new Contradiction(SOUND).opposed()).isEmpty();
  }

  @Test
  void aRuleThatAMoreGeneralOneCoversIsSubsumed() {
    IndexedRule special =
        rule(
            "special",
            "check-play",
            List.of(answer("play", "some"), answer("water", "wet")),
            act(Verb.CHECK, "stop"));
    found(
        new RepeatedRules(with(special)).subsumed(),
        "special check-play",
        "rule \"special\" adds nothing: rule \"check-play\" says it whenever it speaks");
    IndexedRule other = rule("other", "check-play", special.premises(), act(Verb.CHECK, "fault"));
    assertThat(new RepeatedRules(with(other)).subsumed()).isEmpty();
  }

  @Test
  void aPremiseThatFollowsFromAnotherIsNeedless() {
    IndexedRule needless =
        rule(
            "needless",
            "check-play",
            List.of(answer("water", "damp", "wet"), answer("water", "wet")),
            act(Verb.CHECK, "look"));
    found(
        new RepeatedRules(with(needless)).needlessPremises(),
        "needless premise 1",
        "premise 1 of rule \"needless\" follows from another one");
    assertThat(new RepeatedRules(SOUND).needlessPremises()).isEmpty();
  }

  @Test
  void aFindingWithoutEvidenceIsUnreachable() {
    found(
        new Dependence(without("cold")).unreachable(),
        "cold",
        "no rule gives evidence for the finding \"cold\"");
    found(
        new Dependence(without("finding-exit-slide")).unreachable(),
        "exit-slide",
        "the finding \"exit-slide\" is not in the table of findings");
    assertThat(new Dependence(SOUND).unreachable()).isEmpty();
  }

  @Test
  void aFindingThatNoClaimBearsOnAndAClaimOnNothingAreDeadEnds() {
    found(
        new Dependence(without("camber-outer-edge")).deadEnds(),
        "outer-edge",
        "no claim bears on the finding \"outer-edge\"");
    found(
        new Dependence(without("finding-cold")).deadEnds(),
        "caster-cold cold",
        "rule \"caster-cold\" claims something of \"cold\", which nothing is found of");
    assertThat(new Dependence(SOUND).deadEnds()).isEmpty();
  }

  @Test
  void aWordThatIsNotInTheVocabularyIsIllegal() {
    IndexedRule illegal =
        rule("illegal", "check-play", List.of(answer("water", "soaked")), act(Verb.CHECK, "look"));
    assertThat(new Reading(with(illegal)).illegal())
        .singleElement()
        .satisfies(
            remark ->
                assertThat(remark.what()).startsWith("rule \"illegal\": \"soaked\" is not one of"));
    IndexedRule noteless = rule("noteless", "no-such-note", List.of(), act(Verb.CHECK, "look"));
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
    found(new Reading(SOUND).unread(), "rubber", "no rule reads \"rubber\" as normal by name");
  }

  @Test
  void aChangeWithoutItsTextsOrItsJobIsIncomplete() {
    IndexedRule bare =
        rule(
            "bare",
            "check-play",
            List.of(answer("steering-weight", "heavy")),
            act(Verb.CLAIM, "caster", "less", "heavy", "3", "90", "none", "one"));
    found(
        new Completeness(with(bare)).changes(),
        "check-play undo (section Undo)",
        "the note \"check-play\" asks for a change and has no undo (section Undo)");
    found(
        new Completeness(without("kingpin-job")).changes().isEmpty()
            ? new Completeness(
                    knowledge(
                        SOUND.rules().stream()
                            .filter(rule -> rule.acts(Verb.JOB).findAny().isEmpty())
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
