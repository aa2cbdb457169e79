package insidelift.engine.geometry.gauge;

import java.util.List;
import java.util.Locale;

/** Where a laser that lies along the stub axle points. */
public enum Beam {
  /** Across the kart to the other side: a dot above the line is positive camber. */
  INBOARD(1),
  /** Away from the kart: a dot below the line is positive camber. */
  OUTBOARD(-1);

  private final int sign;

  Beam(int sign) {
    this.sign = sign;
  }

  /** Its JSON word. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  static List<String> words() {
    return List.of(INBOARD.word(), OUTBOARD.word());
  }

  static Beam named(String word) {
    return word.equals(INBOARD.word()) ? INBOARD : OUTBOARD;
  }

  /** Camber of the emitting wheel, degrees: atan(offset / distance), signed by the direction. */
  double camberDeg(double dotMm, double distanceMm) {
    return Math.toDegrees(Math.atan2(sign * dotMm, distanceMm)) + 0.0;
  }

  /** Where the dot must be, mm above the line: distance · tan(camber), signed by the direction. */
  double dotMm(double camberDeg, double distanceMm) {
    return sign * distanceMm * Math.tan(Math.toRadians(camberDeg)) + 0.0;
  }
}
