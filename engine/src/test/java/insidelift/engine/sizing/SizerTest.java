package insidelift.engine.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.sizing.Sized.End;
import insidelift.shared.Column;
import insidelift.shared.Degrees;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.Mark;
import insidelift.shared.situation.Baseline;
import insidelift.shared.situation.Eccentrics;
import insidelift.shared.situation.FrontEnd;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.KartRecord;
import insidelift.shared.situation.Sides;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The table of sizes. Targets and steps are provisional; 2 degrees a side in standing water is
 * common practice; that one position is the smallest change is in the 2005 set-up guide (crg-2005).
 */
class SizerTest {

  private static final Eccentrics UNKNOWN = Eccentrics.UNKNOWN;

  private static Kart kart(double camber, double caster) {
    return kart(camber, caster, UNKNOWN);
  }

  private static Kart kart(double camber, double caster, Eccentrics eccentrics) {
    return new Kart(
        Optional.of(both(camber)),
        Optional.of(both(caster)),
        false,
        Optional.empty(),
        eccentrics,
        Optional.empty());
  }

  private static Kart absolute(double caster, Optional<Degrees> neutral) {
    return new Kart(
        Optional.empty(), Optional.of(both(caster)), true, neutral, UNKNOWN, Optional.empty());
  }

  private static Sides both(double degrees) {
    return Sides.both(Degrees.of(degrees));
  }

  private static Sized target(Kart kart, Lever lever, Column column) {
    return new Sizer(kart).target(lever, column, false);
  }

  private static Sized step(Kart kart, Lever lever, Direction direction, int steps) {
    return new Sizer(kart).correction(lever, direction, steps, Optional.empty());
  }

  private static void moves(Sized sized, Direction direction, double degrees, double positions) {
    assertThat(sized.direction()).isEqualTo(direction);
    assertThat(sized.degrees().same(Degrees.of(degrees))).as("%s", sized.degrees()).isTrue();
    assertThat(sized.positions()).isEqualTo(positions);
  }

  private static void stays(Sized sized, End end) {
    moves(sized, Direction.HOLD, 0, 0);
    assertThat(sized.end()).isEqualTo(end);
    assertThat(sized.moves()).isFalse();
  }

  private static Kart knowing(Kart kart, FrontEnd before, Map<String, Baseline> baseline) {
    return new Kart(
        kart.camber(),
        kart.caster(),
        kart.absolute(),
        kart.neutral(),
        kart.eccentrics(),
        kart.geometry(),
        new KartRecord(Optional.ofNullable(before), baseline));
  }

  @Test
  void anUndoGoesBackToTheReadingBefore() {
    Kart twoPositions = knowing(kart(0.5, 2.5), kart(0.5, 0.5).front(), Map.of());
    moves(new Sizer(twoPositions).undo(Lever.CASTER, Direction.LESS), Direction.LESS, 2, 2);
  }

  @Test
  void anUndoWithoutThatReadingGoesOnePositionBack() {
    moves(new Sizer(kart(0, 2)).undo(Lever.CASTER, Direction.LESS), Direction.LESS, 1, 1);
    Kart camberOnly =
        knowing(
            kart(0, 2),
            new FrontEnd(kart(1, 0).camber(), Optional.empty(), false, Optional.empty()),
            Map.of());
    moves(new Sizer(camberOnly).undo(Lever.CASTER, Direction.LESS), Direction.LESS, 1, 1);
  }

  @Test
  void aReadingBeforeThatLiesTheOtherWayIsNotBelieved() {
    Kart odd = knowing(kart(0, 2), kart(0, 3).front(), Map.of());
    moves(new Sizer(odd).undo(Lever.CASTER, Direction.LESS), Direction.LESS, 1, 1);
  }

  @Test
  void theKartsOwnBaselineComesBeforeTheTable() {
    Map<String, Baseline> own =
        Map.of(
            "wet", new Baseline(kart(1.5, 1).front(), Optional.empty()),
            "dry", new Baseline(kart(0.5, -1).front(), Optional.empty()));
    Kart kart = knowing(kart(0, 0), null, own);
    moves(target(kart, Lever.CAMBER, Column.WET), Direction.MORE, 1.5, 3);
    moves(target(kart, Lever.CASTER, Column.STANDING), Direction.MORE, 1, 1);
    moves(target(kart, Lever.CAMBER, Column.DRY), Direction.MORE, 0.5, 1);
    moves(target(kart, Lever.CASTER, Column.DRY), Direction.LESS, 1, 1);
  }

  @Test
  void aWetTrackAsksForPositiveCamberByItsColumn() {
    moves(target(Kart.UNKNOWN, Lever.CAMBER, Column.DAMP), Direction.MORE, 0.5, 1);
    moves(target(Kart.UNKNOWN, Lever.CAMBER, Column.WET), Direction.MORE, 1, 2);
    moves(target(Kart.UNKNOWN, Lever.CAMBER, Column.STANDING), Direction.MORE, 2, 4);
    assertThat(target(Kart.UNKNOWN, Lever.CAMBER, Column.WET).target()).isEqualTo(both(1));
  }

  @Test
  void aWetTrackAsksForCasterPositionsByItsColumn() {
    moves(target(Kart.UNKNOWN, Lever.CASTER, Column.DAMP), Direction.MORE, 1, 1);
    moves(target(Kart.UNKNOWN, Lever.CASTER, Column.WET), Direction.MORE, 2, 2);
    moves(target(Kart.UNKNOWN, Lever.CASTER, Column.STANDING), Direction.MORE, 3, 3);
  }

  @Test
  void aDryTrackAsksForZeroAndNeutral() {
    moves(target(kart(1, 2), Lever.CAMBER, Column.DRY), Direction.LESS, 1, 2);
    moves(target(kart(1, 2), Lever.CASTER, Column.DRY), Direction.LESS, 2, 2);
    moves(target(kart(-0.5, -1), Lever.CAMBER, Column.DRY), Direction.MORE, 0.5, 1);
    assertThat(target(kart(-0.5, -1), Lever.CASTER, Column.DRY).target()).isEqualTo(both(0));
  }

  @Test
  void onlyWhatIsMissingIsMoved() {
    moves(target(kart(0.5, 1), Lever.CAMBER, Column.WET), Direction.MORE, 0.5, 1);
    moves(target(kart(0.5, 1), Lever.CASTER, Column.WET), Direction.MORE, 1, 1);
    moves(target(kart(2, 3), Lever.CAMBER, Column.DAMP), Direction.LESS, 1.5, 3);
    moves(target(kart(2, 3), Lever.CASTER, Column.DAMP), Direction.LESS, 2, 2);
  }

  @Test
  void whatIsThereAlreadyStays() {
    stays(target(kart(1, 2), Lever.CAMBER, Column.WET), End.ALREADY_THERE);
    stays(target(kart(1, 2), Lever.CASTER, Column.WET), End.ALREADY_THERE);
    assertThat(target(kart(1, 2), Lever.CASTER, Column.WET).target()).isEqualTo(both(2));
  }

  @Test
  void lessThanAQuarterDegreeOfCamberIsNotWorthTheJob() {
    stays(target(kart(0.76, 0), Lever.CAMBER, Column.WET), End.ALREADY_THERE);
    moves(target(kart(0.75, 0), Lever.CAMBER, Column.WET), Direction.MORE, 0.25, 0.5);
  }

  @Test
  void casterMovesByWholePositions() {
    moves(target(kart(0, 0.4), Lever.CASTER, Column.WET), Direction.MORE, 2, 2);
    stays(target(kart(0, 1.6), Lever.CASTER, Column.WET), End.ALREADY_THERE);
    moves(target(kart(0, 1.4), Lever.CASTER, Column.WET), Direction.MORE, 1, 1);
  }

  @Test
  void leftAndRightCountAsTheirMiddleAndEndEqual() {
    Kart uneven = Kart.UNKNOWN.with(new Sides(Degrees.of(0), Degrees.of(0.2)), null);
    Sized sized = target(uneven, Lever.CAMBER, Column.WET);

    moves(sized, Direction.MORE, 0.9, 1.8);
    assertThat(sized.target().left().same(Degrees.of(1))).isTrue();
    assertThat(sized.target().right().same(Degrees.of(1))).isTrue();
  }

  @Test
  void aDriverOfLimitedStrengthGetsOneCasterPositionFewer() {
    Sizer sizer = new Sizer(Kart.UNKNOWN);

    stays(sizer.target(Lever.CASTER, Column.DAMP, true), End.DRIVER);
    moves(sizer.target(Lever.CASTER, Column.WET, true), Direction.MORE, 1, 1);
    moves(sizer.target(Lever.CASTER, Column.STANDING, true), Direction.MORE, 2, 2);
    stays(sizer.target(Lever.CASTER, Column.DRY, true), End.ALREADY_THERE);
    moves(sizer.target(Lever.CAMBER, Column.WET, true), Direction.MORE, 1, 2);
  }

  @Test
  void aCorrectionIsOnePositionOrTwo() {
    moves(step(Kart.UNKNOWN, Lever.CAMBER, Direction.MORE, 1), Direction.MORE, 0.5, 1);
    moves(step(Kart.UNKNOWN, Lever.CAMBER, Direction.LESS, 2), Direction.LESS, 1, 2);
    moves(step(Kart.UNKNOWN, Lever.CASTER, Direction.LESS, 1), Direction.LESS, 1, 1);
    moves(step(Kart.UNKNOWN, Lever.CASTER, Direction.MORE, 2), Direction.MORE, 2, 2);
  }

  @Test
  void aMoveEndsAtTheEndOfTheRange() {
    stays(step(kart(2, 0), Lever.CAMBER, Direction.MORE, 1), End.RANGE);
    stays(step(kart(-1, 0), Lever.CAMBER, Direction.LESS, 1), End.RANGE);
    stays(step(kart(0, 3), Lever.CASTER, Direction.MORE, 1), End.RANGE);
    stays(step(kart(0, -3), Lever.CASTER, Direction.LESS, 1), End.RANGE);

    Sized cut = step(kart(1.5, 0), Lever.CAMBER, Direction.MORE, 2);
    moves(cut, Direction.MORE, 0.5, 1);
    assertThat(cut.end()).isEqualTo(End.RANGE);
    assertThat(cut.target()).isEqualTo(both(2));
  }

  @Test
  void aMoveThatEndsExactlyAtTheEndIsNotCut() {
    assertThat(step(kart(1.5, 0), Lever.CAMBER, Direction.MORE, 1).end()).isEqualTo(End.NONE);
    assertThat(step(kart(0, 2), Lever.CASTER, Direction.MORE, 1).end()).isEqualTo(End.NONE);
  }

  @Test
  void aKartPastTheRangeIsNotMovedBackByACorrectionOutward() {
    stays(step(kart(2.5, 0), Lever.CAMBER, Direction.MORE, 1), End.RANGE);
    moves(step(kart(2.5, 0), Lever.CAMBER, Direction.LESS, 1), Direction.LESS, 0.5, 1);
  }

  @Test
  void aKartFarPastTheRangeComesBackByOneStepToo() {
    moves(step(kart(3, 0), Lever.CAMBER, Direction.LESS, 1), Direction.LESS, 0.5, 1);
    moves(step(kart(-3, 0), Lever.CAMBER, Direction.MORE, 1), Direction.MORE, 0.5, 1);
    moves(step(kart(0, 6), Lever.CASTER, Direction.LESS, 1), Direction.LESS, 1, 1);
  }

  @Test
  void aMarkStopsAMove() {
    Optional<Mark> mark = Optional.of(Mark.A_LITTLE_NEGATIVE);
    Sized first = new Sizer(Kart.UNKNOWN).correction(Lever.CAMBER, Direction.LESS, 2, mark);

    moves(first, Direction.LESS, 0.5, 1);
    assertThat(first.end()).isEqualTo(End.MARK);
    stays(new Sizer(kart(-0.5, 0)).correction(Lever.CAMBER, Direction.LESS, 1, mark), End.MARK);
    stays(new Sizer(kart(-0.8, 0)).correction(Lever.CAMBER, Direction.LESS, 1, mark), End.MARK);
    assertThat(new Sizer(Kart.UNKNOWN).correction(Lever.CAMBER, Direction.LESS, 1, mark).end())
        .isEqualTo(End.NONE);
  }

  @Test
  void theKartsOwnStepsCount() {
    Eccentrics own = new Eccentrics(Degrees.of(0.4), Degrees.of(1.5));

    moves(step(kart(0, 0, own), Lever.CAMBER, Direction.MORE, 1), Direction.MORE, 0.4, 1);
    moves(step(kart(0, 0, own), Lever.CASTER, Direction.MORE, 1), Direction.MORE, 1.5, 1);
    moves(target(kart(0, 0, own), Lever.CAMBER, Column.WET), Direction.MORE, 1, 2.5);
    moves(target(kart(0, 0, own), Lever.CASTER, Column.WET), Direction.MORE, 3, 2);
    assertThat(new Sizer(kart(0, 0, own)).measured(Lever.CASTER)).isTrue();
    assertThat(new Sizer(Kart.UNKNOWN).measured(Lever.CASTER)).isFalse();
    assertThat(new Sizer(Kart.UNKNOWN).measured(Lever.CAMBER)).isFalse();
  }

  @Test
  void oneSmallPositionOfTheKartsOwnIsACorrection() {
    Eccentrics fine = new Eccentrics(Degrees.of(0.1), Degrees.of(0.2));

    moves(step(kart(0, 0, fine), Lever.CAMBER, Direction.MORE, 1), Direction.MORE, 0.1, 1);
    moves(step(kart(0, 0, fine), Lever.CASTER, Direction.LESS, 1), Direction.LESS, 0.2, 1);
    stays(target(kart(0.8, 0, fine), Lever.CAMBER, Column.WET), End.ALREADY_THERE);
  }

  @Test
  void absoluteCasterIsCountedFromItsNeutralAndShownAsTheKartHasIt() {
    Sized sized = target(absolute(13, Optional.of(Degrees.of(12))), Lever.CASTER, Column.WET);

    moves(sized, Direction.MORE, 1, 1);
    assertThat(sized.target()).isEqualTo(both(14));
  }

  @Test
  void absoluteCasterWithoutItsNeutralIsTakenAsNeutral() {
    Sized sized = target(absolute(13, Optional.empty()), Lever.CASTER, Column.WET);

    moves(sized, Direction.MORE, 2, 2);
    assertThat(sized.target()).isEqualTo(both(15));
    assertThat(new Sizer(absolute(13, Optional.empty())).stay(Lever.CASTER, End.NONE).target())
        .isEqualTo(both(13));
  }

  @Test
  void aLeverThatStaysIsShownWhereItStands() {
    assertThat(new Sizer(kart(0.5, 1)).stay(Lever.CAMBER, End.NONE).target()).isEqualTo(both(0.5));
    assertThat(new Sizer(Kart.UNKNOWN).present(Lever.CASTER)).isEqualTo(Degrees.ZERO);
  }

  @Test
  void theNamedSizesAreThoseOfTheBrief() {
    assertThat(Sizes.CAMBER_LEAST).isEqualTo(Degrees.of(-1));
    assertThat(Sizes.CAMBER_MOST).isEqualTo(Degrees.of(2));
    assertThat(Sizes.CASTER_POSITIONS).isEqualTo(3);
    assertThat(Sizes.MINUTES_FROM).isEqualTo(20);
    assertThat(Sizes.MINUTES_TO).isEqualTo(30);
    assertThat(Sizes.LEAST_MOVE).isEqualTo(Sides.EQUAL_WITHIN);
  }
}
