package insidelift.shared;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.math.BigDecimal;

/**
 * An angle in degrees, signed as the trade signs it: camber positive with the top of the wheel
 * outward (ISO 8855), caster positive with the top of the kingpin rearward.
 *
 * @param value the angle in degrees; always finite
 */
public record Degrees(@JsonValue double value) implements Comparable<Degrees> {

  /** No angle at all. */
  public static final Degrees ZERO = new Degrees(0.0);

  /** Readings closer than this are the same reading: a tenth of what any garage gauge resolves. */
  private static final double SAME = 1e-6;

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Degrees {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("an angle must be a finite number of degrees: " + value);
    }
  }

  /** The angle of that many degrees. */
  @JsonCreator
  public static Degrees of(double value) {
    return new Degrees(value);
  }

  /** This angle and another together. */
  public Degrees plus(Degrees other) {
    return new Degrees(value + other.value);
  }

  /** This angle less another. */
  public Degrees minus(Degrees other) {
    return new Degrees(value - other.value);
  }

  /** This angle so many times over. */
  public Degrees times(double factor) {
    return new Degrees(value * factor);
  }

  /** The size of this angle, without its sign. */
  public Degrees size() {
    return new Degrees(Math.abs(value));
  }

  /** The middle between this angle and another. */
  public Degrees middle(Degrees other) {
    return new Degrees((value + other.value) / 2);
  }

  /** Whether this angle exceeds another by more than the noise of arithmetic. */
  public boolean exceeds(Degrees other) {
    return value > other.value + SAME;
  }

  /** Whether both angles are the same up to the noise of arithmetic. */
  public boolean same(Degrees other) {
    return Math.abs(value - other.value) <= SAME;
  }

  @Override
  public int compareTo(Degrees other) {
    return Double.compare(value, other.value);
  }

  /** The angle to a hundredth without needless noughts, as in {@code 0.5°}. */
  @Override
  public String toString() {
    return number() + "°";
  }

  /** The angle with its sign always written, as in {@code +0.5°}; zero has none. */
  public String signed() {
    String text = toString();
    return text.startsWith("-") || text.equals("0.0°") ? text : "+" + text;
  }

  private String number() {
    // Not by a format: that asks for the customs of a country, which takes a start some time.
    String two = BigDecimal.valueOf(Math.round(value * 100), 2).toPlainString();
    return two.endsWith("0") ? two.substring(0, two.length() - 1) : two;
  }
}
