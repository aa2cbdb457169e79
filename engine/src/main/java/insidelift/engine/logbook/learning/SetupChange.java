package insidelift.engine.logbook.learning;

import insidelift.engine.logbook.entry.Pressures;
import insidelift.engine.logbook.entry.RunEntry;
import insidelift.shared.Degrees;
import insidelift.shared.situation.Kart;
import insidelift.shared.situation.Sides;
import java.util.Optional;

/**
 * What was changed between two runs, as the vocabulary's answers to {@code last-change}. Two levers
 * at once count as {@code other}: no clock can tell their effects apart.
 */
public final class SetupChange {

  public static final String NONE = "none";
  public static final String OTHER = "other";

  /**
   * Smaller differences are the same setting read twice. Provisional: less than half the smallest
   * step that is ever advised, and about what a careful reading repeats to.
   */
  private static final Degrees READING = Degrees.of(0.1);

  /** Cold pressures that differ by more were changed on purpose; provisional, in bar. */
  private static final double BAR = 0.05;

  /** The noise of arithmetic: 0.80 less 0.75 is a hair more than 0.05. */
  private static final double NOISE = 1e-9;

  private SetupChange() {}

  /** The change; empty where too little was written down to know. */
  public static Optional<String> between(RunEntry before, RunEntry after) {
    Kart old = before.situation().kart();
    Kart now = after.situation().kart();
    boolean sameScale = old.absolute() == now.absolute();
    boolean unknown =
        old.camber().isPresent() != now.camber().isPresent()
            || old.caster().isPresent() != now.caster().isPresent()
            || (old.caster().isPresent() && !sameScale);
    boolean nothingKnown =
        old.camber().isEmpty()
            && old.caster().isEmpty()
            && before.settings().isEmpty()
            && after.settings().isEmpty();
    if (unknown || nothingKnown) {
      return Optional.empty();
    }
    String camber = moved("camber", old.camber(), now.camber());
    String caster = moved("caster", old.caster(), now.caster());
    boolean elsewhere = !before.settings().equals(after.settings()) || pressures(before, after);
    if (elsewhere || !(camber.equals(NONE) || caster.equals(NONE))) {
      return Optional.of(OTHER);
    }
    return Optional.of(camber.equals(NONE) ? caster : camber);
  }

  private static String moved(String lever, Optional<Sides> before, Optional<Sides> after) {
    if (before.isEmpty() || after.isEmpty()) {
      return NONE;
    }
    Degrees left = after.get().left().minus(before.get().left());
    Degrees right = after.get().right().minus(before.get().right());
    boolean leftMoved = left.size().exceeds(READING);
    boolean rightMoved = right.size().exceeds(READING);
    if (!leftMoved && !rightMoved) {
      return NONE;
    }
    Degrees middle = left.middle(right);
    boolean opposed = leftMoved && rightMoved && left.value() * right.value() < 0;
    if (opposed || middle.same(Degrees.ZERO)) {
      return OTHER;
    }
    return lever + (middle.value() > 0 ? "-more" : "-less");
  }

  private static boolean pressures(RunEntry before, RunEntry after) {
    Optional<Pressures> old = before.tyres().cold();
    Optional<Pressures> now = after.tyres().cold();
    return old.isPresent()
        && now.isPresent()
        && (apart(old.get().frontLeft(), now.get().frontLeft())
            || apart(old.get().frontRight(), now.get().frontRight())
            || apart(old.get().rearLeft(), now.get().rearLeft())
            || apart(old.get().rearRight(), now.get().rearRight()));
  }

  private static boolean apart(double old, double now) {
    return Math.abs(now - old) > BAR + NOISE;
  }
}
