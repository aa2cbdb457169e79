package insidelift.engine.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import insidelift.engine.sizing.Sized.End;
import insidelift.shared.Degrees;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.situation.Eccentrics;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
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

  private static Sized to(Kart kart, Lever lever, double degrees) {
    return new Sizer(kart).to(lever, Degrees.of(degrees));
  }

  private static Sized step(Kart kart, Lever lever, Direction direction) {
    return new Sizer(kart).one(lever, direction);
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

  @Test
  void onlyWhatIsMissingIsMoved() {
    moves(to(kart(0.5, 1), Lever.CAMBER, 1), Direction.MORE, 0.5, 1);
    moves(to(kart(0.5, 1), Lever.CASTER, 2), Direction.MORE, 1, 1);
    moves(to(kart(2, 3), Lever.CAMBER, 0.5), Direction.LESS, 1.5, 3);
    moves(to(kart(2, 3), Lever.CASTER, 1), Direction.LESS, 2, 2);
    assertThat(to(kart(-0.5, -1), Lever.CASTER, 0).target()).isEqualTo(both(0));
  }

  @Test
  void whatIsThereAlreadyStays() {
    stays(to(kart(1, 2), Lever.CAMBER, 1), End.ALREADY_THERE);
    stays(to(kart(1, 2), Lever.CASTER, 2), End.ALREADY_THERE);
    assertThat(to(kart(1, 2), Lever.CASTER, 2).target()).isEqualTo(both(2));
  }

  @Test
  void whatNobodyMeasuredIsNotRead() {
    assertThat(new Sizer(Kart.UNKNOWN).read(Lever.CAMBER)).isFalse();
    assertThat(new Sizer(kart(0, 0)).read(Lever.CAMBER)).isTrue();
    assertThat(new Sizer(absolute(12, Optional.empty())).read(Lever.CASTER)).isFalse();
  }

  @Test
  void lessThanAQuarterDegreeOfCamberIsNotWorthTheJob() {
    stays(to(kart(0.76, 0), Lever.CAMBER, 1), End.ALREADY_THERE);
    moves(to(kart(0.75, 0), Lever.CAMBER, 1), Direction.MORE, 0.25, 0.5);
  }

  @Test
  void casterMovesByWholePositions() {
    moves(to(kart(0, 0.4), Lever.CASTER, 2), Direction.MORE, 2, 2);
    stays(to(kart(0, 1.6), Lever.CASTER, 2), End.ALREADY_THERE);
    moves(to(kart(0, 1.4), Lever.CASTER, 2), Direction.MORE, 1, 1);
  }

  @Test
  void leftAndRightCountAsTheirMiddleAndEndEqual() {
    Kart uneven = Kart.UNKNOWN.with(new Sides(Degrees.of(0), Degrees.of(0.2)), null);
    Sized sized = to(uneven, Lever.CAMBER, 1);

    moves(sized, Direction.MORE, 0.9, 1.8);
    assertThat(sized.target().left().same(Degrees.of(1))).isTrue();
    assertThat(sized.target().right().same(Degrees.of(1))).isTrue();
  }

  @Test
  void aCorrectionIsOnePosition() {
    moves(step(Kart.UNKNOWN, Lever.CAMBER, Direction.MORE), Direction.MORE, 0.5, 1);
    moves(step(Kart.UNKNOWN, Lever.CAMBER, Direction.LESS), Direction.LESS, 0.5, 1);
    moves(step(Kart.UNKNOWN, Lever.CASTER, Direction.LESS), Direction.LESS, 1, 1);
  }

  @Test
  void aMoveEndsAtTheEndOfTheRange() {
    stays(step(kart(2, 0), Lever.CAMBER, Direction.MORE), End.RANGE);
    stays(step(kart(-1, 0), Lever.CAMBER, Direction.LESS), End.RANGE);
    stays(step(kart(0, 3), Lever.CASTER, Direction.MORE), End.RANGE);
    stays(step(kart(0, -3), Lever.CASTER, Direction.LESS), End.RANGE);

    Sized cut = step(kart(1.7, 0), Lever.CAMBER, Direction.MORE);
    moves(cut, Direction.MORE, 0.3, 0.6);
    assertThat(cut.end()).isEqualTo(End.RANGE);
    assertThat(cut.target()).isEqualTo(both(2));
  }

  @Test
  void aMoveThatEndsExactlyAtTheEndIsNotCut() {
    assertThat(step(kart(1.5, 0), Lever.CAMBER, Direction.MORE).end()).isEqualTo(End.NONE);
    assertThat(step(kart(0, 2), Lever.CASTER, Direction.MORE).end()).isEqualTo(End.NONE);
  }

  @Test
  void aKartPastTheRangeIsNotMovedBackByACorrectionOutward() {
    stays(step(kart(2.5, 0), Lever.CAMBER, Direction.MORE), End.RANGE);
    moves(step(kart(2.5, 0), Lever.CAMBER, Direction.LESS), Direction.LESS, 0.5, 1);
  }

  @Test
  void aKartFarPastTheRangeComesBackByOneStepToo() {
    moves(step(kart(3, 0), Lever.CAMBER, Direction.LESS), Direction.LESS, 0.5, 1);
    moves(step(kart(-3, 0), Lever.CAMBER, Direction.MORE), Direction.MORE, 0.5, 1);
    moves(step(kart(0, 6), Lever.CASTER, Direction.LESS), Direction.LESS, 1, 1);
  }

  @Test
  void theKartsOwnStepsCount() {
    Eccentrics own = new Eccentrics(Degrees.of(0.4), Degrees.of(1.5));

    moves(step(kart(0, 0, own), Lever.CAMBER, Direction.MORE), Direction.MORE, 0.4, 1);
    moves(step(kart(0, 0, own), Lever.CASTER, Direction.MORE), Direction.MORE, 1.5, 1);
    moves(to(kart(0, 0, own), Lever.CAMBER, 1), Direction.MORE, 1, 2.5);
    moves(to(kart(0, 0, own), Lever.CASTER, 3), Direction.MORE, 3, 2);
    assertThat(new Sizer(kart(0, 0, own)).measured(Lever.CASTER)).isTrue();
    assertThat(new Sizer(Kart.UNKNOWN).measured(Lever.CASTER)).isFalse();
    assertThat(new Sizer(Kart.UNKNOWN).measured(Lever.CAMBER)).isFalse();
  }

  @Test
  void oneSmallPositionOfTheKartsOwnIsACorrection() {
    Eccentrics fine = new Eccentrics(Degrees.of(0.1), Degrees.of(0.2));

    moves(step(kart(0, 0, fine), Lever.CAMBER, Direction.MORE), Direction.MORE, 0.1, 1);
    moves(step(kart(0, 0, fine), Lever.CASTER, Direction.LESS), Direction.LESS, 0.2, 1);
    stays(to(kart(0.8, 0, fine), Lever.CAMBER, 1), End.ALREADY_THERE);
  }

  @Test
  void absoluteCasterIsCountedFromItsNeutralAndShownAsTheKartHasIt() {
    Sized sized = to(absolute(13, Optional.of(Degrees.of(12))), Lever.CASTER, 2);

    moves(sized, Direction.MORE, 1, 1);
    assertThat(sized.target()).isEqualTo(both(14));
  }

  @Test
  void absoluteCasterWithoutItsNeutralIsTakenAsNeutral() {
    Sized sized = to(absolute(13, Optional.empty()), Lever.CASTER, 2);

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
