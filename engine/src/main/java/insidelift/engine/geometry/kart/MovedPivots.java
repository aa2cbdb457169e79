package insidelift.engine.geometry.kart;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Which pivots of a kingpin the eccentrics move. */
public enum MovedPivots {
  /** The top one: the kingpin turns about the lower pivot. */
  TOP(0),
  /** The bottom one: the kingpin turns about the upper pivot. */
  BOTTOM(1),
  /** Both, against each other: the kingpin turns about the middle between them. */
  BOTH(0.5);

  private final double stillShare;

  MovedPivots(double stillShare) {
    this.stillShare = stillShare;
  }

  /** Its JSON word. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** How far up from the lower to the upper pivot the point is that stays, 0 to 1. */
  public double stillShare() {
    return stillShare;
  }

  public static List<String> words() {
    return Stream.of(values()).map(MovedPivots::word).toList();
  }

  public static MovedPivots named(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT));
  }
}
