package insidelift.engine.consultation;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.sizing.Sizer;
import insidelift.shared.Column;
import insidelift.shared.Contribution;
import insidelift.shared.Contribution.Cap;
import insidelift.shared.Contribution.Doubles;
import insidelift.shared.Contribution.Hold;
import insidelift.shared.Contribution.Lead;
import insidelift.shared.Contribution.Limit;
import insidelift.shared.Contribution.Origin;
import insidelift.shared.Contribution.Rest;
import insidelift.shared.Contribution.SetAside;
import insidelift.shared.Direction;
import insidelift.shared.Kind;
import insidelift.shared.Lever;
import insidelift.shared.Mark;
import insidelift.shared.Rank;
import insidelift.shared.Scope;
import insidelift.shared.situation.Kart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Who gives way to whom, on wishes made up for the purpose. */
class ArbiterTest {

  private final List<Contribution> ledger = new ArrayList<>();
  private final List<Wish> wishes = new ArrayList<>();

  private static Origin by(String note) {
    return new Origin(note, note, List.of());
  }

  private void wish(String claim, Lever lever, Direction way, int strength) {
    wishes.add(
        new Wish(claim, lever, way, Kind.CORRECTION, strength, null, false, List.of(by(claim))));
  }

  private void target(Lever lever, Direction way, Column column) {
    wishes.add(
        new Wish("target", lever, way, Kind.TARGET, 10, column, false, List.of(by("target"))));
  }

  private void undo(Lever lever, Direction way) {
    wishes.add(new Wish("undo", lever, way, Kind.CORRECTION, 10, null, true, List.of(by("undo"))));
  }

  private Arbiter arbiter() {
    return new Arbiter(ledger, wishes, new Sizer(Kart.UNKNOWN));
  }

  private Optional<Verdict> of(Lever lever) {
    return arbiter().verdicts().stream().filter(v -> v.lever() == lever).findFirst();
  }

  private void ends(Lever lever, Direction way) {
    assertThat(of(lever)).map(verdict -> verdict.sized().direction()).contains(way);
  }

  private void heldBy(Lever lever, String note) {
    ends(lever, Direction.HOLD);
    assertThat(of(lever).orElseThrow().heldBy()).contains(note);
  }

  private void first(Lever... levers) {
    Arbiter arbiter = arbiter();
    assertThat(arbiter.first(arbiter.verdicts())).containsExactlyInAnyOrder(levers);
  }

  @Test
  void aLeverNobodySpeaksForHasNoVerdict() {
    wish("push", Lever.CAMBER, Direction.MORE, 5);

    assertThat(of(Lever.CASTER)).isEmpty();
  }

  @Test
  void theStrongerEvidenceDecidesTheDirection() {
    wish("push", Lever.CAMBER, Direction.MORE, 5);
    wish("edge", Lever.CAMBER, Direction.LESS, 10);

    ends(Lever.CAMBER, Direction.LESS);
    assertThat(of(Lever.CAMBER).orElseThrow().wishes())
        .extracting(Wish::claim)
        .containsExactly("edge");
  }

  @Test
  void equalEvidenceBothWaysHoldsAndSaysSo() {
    wish("push", Lever.CAMBER, Direction.MORE, 5);
    wish("edge", Lever.CAMBER, Direction.LESS, 5);

    heldBy(Lever.CAMBER, Arbiter.CONFLICT);
    first();
  }

  @Test
  void aClaimSetAsideDoesNotStand() {
    wish("push", Lever.CAMBER, Direction.MORE, 10);
    wish("edge", Lever.CAMBER, Direction.LESS, 5);
    ledger.add(new SetAside(by("decider"), List.of("push")));

    ends(Lever.CAMBER, Direction.LESS);
  }

  @Test
  void aTargetGoesBeforeACorrectionOfTheSameLever() {
    wish("edge", Lever.CAMBER, Direction.LESS, 10);
    target(Lever.CAMBER, Direction.MORE, Column.WET);

    ends(Lever.CAMBER, Direction.MORE);
    assertThat(of(Lever.CAMBER).orElseThrow().kind()).isEqualTo(Kind.TARGET);
  }

  @Test
  void aTargetThatIsReachedLeavesRoomForACorrection() {
    target(Lever.CAMBER, Direction.HOLD, Column.DRY);
    wish("push", Lever.CAMBER, Direction.MORE, 5);

    ends(Lever.CAMBER, Direction.MORE);
    assertThat(of(Lever.CAMBER).orElseThrow().kind()).isEqualTo(Kind.CORRECTION);
  }

  @Test
  void anUndoGoesBeforeEverythingAndAlone() {
    undo(Lever.CASTER, Direction.LESS);
    wish("push", Lever.CASTER, Direction.MORE, 10);
    target(Lever.CAMBER, Direction.MORE, Column.WET);

    ends(Lever.CASTER, Direction.LESS);
    first(Lever.CASTER);
  }

  @Test
  void targetsGoTogetherAndCorrectionsWait() {
    target(Lever.CAMBER, Direction.MORE, Column.WET);
    target(Lever.CASTER, Direction.MORE, Column.WET);
    first(Lever.CAMBER, Lever.CASTER);

    wishes.remove(1);
    wish("push", Lever.CASTER, Direction.MORE, 10);
    first(Lever.CAMBER);
  }

  @Test
  void ofTwoCorrectionsTheBetterRankGoesFirst() {
    wish("push", Lever.CAMBER, Direction.MORE, 5);
    wish("bite", Lever.CASTER, Direction.LESS, 10);
    ledger.add(new Lead(by("phase"), Lever.CASTER, Rank.TURN_IN));
    ledger.add(new Lead(by("phase"), Lever.CAMBER, Rank.EXIT));
    first(Lever.CASTER);

    ledger.add(new Lead(by("tyres"), Lever.CAMBER, Rank.TYRES));
    first(Lever.CAMBER);
    assertThat(arbiter().lead(Lever.CAMBER)).map(Lead::rank).contains(Rank.TYRES);
  }

  @Test
  void whatWorkedHereBeforeGoesFirstWhereOnlyThePhaseDecides() {
    wish("push", Lever.CAMBER, Direction.MORE, 5);
    wish("bite", Lever.CASTER, Direction.LESS, 10);
    ledger.add(new Lead(by("phase"), Lever.CASTER, Rank.TURN_IN));
    ledger.add(new Lead(by("phase"), Lever.CAMBER, Rank.EXIT));
    firstKnowing("push", 2, Lever.CAMBER);
    firstKnowing("push", 1.9, Lever.CASTER);
    firstKnowing("bite", -2, Lever.CAMBER);
    firstKnowing("another", 20, Lever.CASTER);
  }

  @Test
  void whatWorkedBeforeGivesWayToEveryOtherRankAndToAnUndo() {
    wish("push", Lever.CAMBER, Direction.MORE, 5);
    wish("bite", Lever.CASTER, Direction.LESS, 10);
    ledger.add(new Lead(by("phase"), Lever.CAMBER, Rank.EXIT));
    for (Rank rank : Rank.values()) {
      if (rank.compareTo(Rank.WORST_PHASE) <= 0) {
        ledger.add(new Lead(by("rank"), Lever.CASTER, rank));
        firstKnowing("push", 20, Lever.CASTER);
        ledger.remove(ledger.size() - 1);
      }
    }
    undo(Lever.CASTER, Direction.MORE);
    firstKnowing("push", 20, Lever.CASTER);
  }

  @Test
  void whatWorkedBeforeNeverMovesALeverThatALimitHolds() {
    wish("push", Lever.CAMBER, Direction.MORE, 5);
    wish("bite", Lever.CASTER, Direction.LESS, 10);
    ledger.add(new Limit(by("limit"), Lever.CAMBER, Direction.MORE, Scope.CORRECTIONS));
    firstKnowing("push", 20, Lever.CASTER);
  }

  private void firstKnowing(String claim, double decibans, Lever lever) {
    TrackRecord record = (known, moved, way) -> known.equals(claim) ? decibans : 0;
    Arbiter arbiter = new Arbiter(ledger, wishes, new Sizer(Kart.UNKNOWN), record);
    assertThat(arbiter.first(arbiter.verdicts())).containsExactly(lever);
    assertThat(arbiter.verdicts()).isEqualTo(arbiter().verdicts());
  }

  @Test
  void withoutARankTheStrongerGoesFirstAndATieGoesToCaster() {
    wish("push", Lever.CAMBER, Direction.MORE, 10);
    wish("bite", Lever.CASTER, Direction.LESS, 5);
    first(Lever.CAMBER);

    wishes.clear();
    wish("push", Lever.CAMBER, Direction.MORE, 5);
    wish("bite", Lever.CASTER, Direction.LESS, 5);
    first(Lever.CASTER);
  }

  @Test
  void aLimitOnEverythingHoldsTargetsToo() {
    target(Lever.CASTER, Direction.MORE, Column.WET);
    ledger.add(new Limit(by("limit"), Lever.CASTER, Direction.MORE, Scope.ALL));

    heldBy(Lever.CASTER, "limit");
  }

  @Test
  void aLimitOnCorrectionsLetsTargetsAndUndoesPass() {
    ledger.add(new Limit(by("limit"), Lever.CASTER, Direction.MORE, Scope.CORRECTIONS));
    wish("push", Lever.CASTER, Direction.MORE, 5);
    heldBy(Lever.CASTER, "limit");

    target(Lever.CASTER, Direction.MORE, Column.WET);
    ends(Lever.CASTER, Direction.MORE);

    wishes.clear();
    undo(Lever.CASTER, Direction.MORE);
    ends(Lever.CASTER, Direction.MORE);
  }

  @Test
  void aLimitHoldsItsOwnLeverAndDirectionOnly() {
    ledger.add(new Limit(by("limit"), Lever.CASTER, Direction.MORE, Scope.ALL));
    wish("bite", Lever.CASTER, Direction.LESS, 5);
    wish("push", Lever.CAMBER, Direction.MORE, 5);

    ends(Lever.CASTER, Direction.LESS);
    ends(Lever.CAMBER, Direction.MORE);
  }

  @Test
  void aBarredWishLeavesTheWordToTheOther() {
    ledger.add(new Limit(by("limit"), Lever.CAMBER, Direction.MORE, Scope.ALL));
    wish("push", Lever.CAMBER, Direction.MORE, 10);
    wish("edge", Lever.CAMBER, Direction.LESS, 5);

    ends(Lever.CAMBER, Direction.LESS);
  }

  @Test
  void twoPositionsNeedStrongEvidenceAndARuleThatDoubles() {
    wish("push", Lever.CASTER, Direction.MORE, 10);
    assertThat(of(Lever.CASTER).orElseThrow().sized().positions()).isEqualTo(1);

    ledger.add(new Doubles(by("size"), List.of("push")));
    assertThat(of(Lever.CASTER).orElseThrow().sized().positions()).isEqualTo(2);

    ledger.add(new Contribution.Fewer(by("strength"), Lever.CASTER));
    assertThat(of(Lever.CASTER).orElseThrow().sized().positions()).isEqualTo(1);
  }

  @Test
  void evidenceOfNineIsNotStrong() {
    wish("push", Lever.CASTER, Direction.MORE, 9);
    ledger.add(new Doubles(by("size"), List.of("push")));

    assertThat(of(Lever.CASTER).orElseThrow().sized().positions()).isEqualTo(1);
  }

  @Test
  void aMarkStopsAClaimButNotAnotherBesideIt() {
    ledger.add(new Cap(by("drag"), Lever.CAMBER, Direction.LESS, Mark.A_LITTLE_NEGATIVE));
    ledger.add(new Doubles(by("size"), List.of("drag", "edge")));
    wish("drag", Lever.CAMBER, Direction.LESS, 10);
    assertThat(of(Lever.CAMBER).orElseThrow().sized().degrees().value()).isEqualTo(0.5);

    wish("edge", Lever.CAMBER, Direction.LESS, 10);
    assertThat(of(Lever.CAMBER).orElseThrow().sized().degrees().value()).isEqualTo(1.0);
  }

  @Test
  void aHoldAndARestAreAnswersWhereNothingIsWished() {
    ledger.add(new Rest(by("nothing-asks"), Lever.CASTER));
    ledger.add(new Hold(by("all-well"), Lever.CAMBER));

    heldBy(Lever.CAMBER, "all-well");
    heldBy(Lever.CASTER, "nothing-asks");
    first();
  }
}
