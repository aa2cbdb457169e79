package insidelift.engine.sizing;

import insidelift.engine.sizing.Sized.End;
import insidelift.shared.Degrees;
import insidelift.shared.Direction;
import insidelift.shared.Lever;
import insidelift.shared.situation.FrontEnd;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
import java.util.Optional;

/**
 * Turns a wish into degrees and positions for the kart as it stands. Both sides end equal. What the
 * kart does not tell is taken as zero camber and neutral caster.
 */
public final class Sizer {

  private final Kart kart;

  /** A sizer for one kart. */
  public Sizer(Kart kart) {
    this.kart = kart;
  }

  /** The move that brings a lever to a place: camber absolute, caster from neutral. */
  public Sized to(Lever lever, Degrees wanted) {
    return move(lever, wanted, End.ALREADY_THERE);
  }

  /** The move back to how this kart was read once, each side exactly as it was. */
  public Sized back(Lever lever, FrontEnd read) {
    Degrees middle = at(read, lever).orElseThrow();
    Degrees way = middle.minus(present(lever));
    if (Sizes.LEAST_MOVE.exceeds(way.size())) {
      return stay(lever, End.ALREADY_THERE);
    }
    Sides sides = (lever == Lever.CAMBER ? read.camber() : read.caster()).orElseThrow();
    Degrees zero = shown(lever, middle).left().minus(sides.middle());
    return new Sized(
        way.value() > 0 ? Direction.MORE : Direction.LESS,
        way.size(),
        Math.round(way.size().value() / step(lever).value() * 10) / 10.0,
        new Sides(sides.left().plus(zero), sides.right().plus(zero)),
        End.NONE);
  }

  /** The move by so much, for a lever of which nobody knows where it stands. */
  public Sized by(Lever lever, Degrees way) {
    return move(lever, present(lever).plus(way), End.ALREADY_THERE);
  }

  /** The move by one position; it stops at the end of the range that it goes toward. */
  public Sized one(Lever lever, Direction direction) {
    double sign = direction == Direction.MORE ? 1 : -1;
    Degrees wanted = present(lever).plus(step(lever).times(sign));
    Degrees least = lever == Lever.CAMBER ? Sizes.CAMBER_LEAST : casterEnd(-1);
    Degrees most = lever == Lever.CAMBER ? Sizes.CAMBER_MOST : casterEnd(1);
    // Only the end that the move goes toward can stop it: a kart past the other end comes back by
    // the same single step.
    if (sign < 0 && least.exceeds(wanted)) {
      return stopped(lever, direction, least, End.RANGE);
    }
    if (sign > 0 && wanted.exceeds(most)) {
      return stopped(lever, direction, most, End.RANGE);
    }
    return move(lever, wanted, leastCorrection(lever), End.ALREADY_THERE);
  }

  /** Whether it was measured where a lever stands. */
  public boolean read(Lever lever) {
    return at(kart.front(), lever).isPresent();
  }

  private static Optional<Degrees> at(FrontEnd front, Lever lever) {
    return lever == Lever.CAMBER ? front.camber().map(Sides::middle) : front.casterFromNeutral();
  }

  /** The lever where it stands. */
  public Sized stay(Lever lever, End end) {
    return new Sized(Direction.HOLD, Degrees.ZERO, 0, shown(lever, present(lever)), end);
  }

  /** What one position moves, measured or assumed. */
  public Degrees step(Lever lever) {
    return lever == Lever.CAMBER ? camberStep() : casterStep();
  }

  /** Whether the size of a position was measured on this kart. */
  public boolean measured(Lever lever) {
    return kart.eccentrics().measured(lever);
  }

  /** The setting now: camber absolute, caster from neutral. */
  public Degrees present(Lever lever) {
    return at(kart.front(), lever).orElse(Degrees.ZERO);
  }

  /** A move that a limit cut short; a kart already past the limit is not moved back to it. */
  private Sized stopped(Lever lever, Direction direction, Degrees stop, End end) {
    Degrees way = stop.minus(present(lever));
    boolean past = direction == Direction.MORE ? way.value() < 0 : way.value() > 0;
    Sized sized = past ? stay(lever, end) : move(lever, stop, end);
    return new Sized(sized.direction(), sized.degrees(), sized.positions(), sized.target(), end);
  }

  /** One position is a correction even where it moves less than readings can be told apart. */
  private Degrees leastCorrection(Lever lever) {
    Degrees step = step(lever);
    return Sizes.LEAST_MOVE.exceeds(step) ? step : Sizes.LEAST_MOVE;
  }

  private Sized move(Lever lever, Degrees wanted, End nothingLeft) {
    return move(lever, wanted, Sizes.LEAST_MOVE, nothingLeft);
  }

  private Sized move(Lever lever, Degrees wanted, Degrees least, End nothingLeft) {
    Degrees way = wanted.minus(present(lever));
    double positions = Math.abs(way.value()) / step(lever).value();
    boolean small = least.exceeds(way.size());
    if (lever == Lever.CASTER) {
      // Caster is set by whole positions, so half a position is the least that can be meant.
      positions = Math.rint(positions);
      small = positions == 0;
    }
    if (small) {
      return stay(lever, nothingLeft);
    }
    Degrees size = lever == Lever.CASTER ? step(lever).times(positions) : way.size();
    Degrees end = present(lever).plus(way.value() > 0 ? size : size.times(-1));
    return new Sized(
        way.value() > 0 ? Direction.MORE : Direction.LESS,
        size,
        Math.round(positions * 10) / 10.0,
        shown(lever, end),
        End.NONE);
  }

  /** Where both sides end, in the reference that the kart's own readings have. */
  private Sides shown(Lever lever, Degrees end) {
    if (lever == Lever.CASTER && kart.absolute() && kart.caster().isPresent()) {
      return Sides.both(kart.caster().get().middle().plus(end.minus(present(lever))));
    }
    return Sides.both(end);
  }

  private Degrees casterEnd(int sign) {
    return casterStep().times(sign * (double) Sizes.CASTER_POSITIONS);
  }

  private Degrees camberStep() {
    Degrees own = kart.eccentrics().camberPerPosition();
    return own == null ? Sizes.CAMBER_STEP : own;
  }

  private Degrees casterStep() {
    Degrees own = kart.eccentrics().casterPerPosition();
    return own == null ? Sizes.CASTER_STEP : own;
  }
}
