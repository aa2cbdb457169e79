package insidelift.shared.situation;

import insidelift.shared.Degrees;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A kart's own good setting for one condition. What nobody told is not there: nothing is taken from
 * a starting point or from another kart.
 *
 * @param stand camber, caster and toe as read on the stand
 * @param laden the same read with the driver aboard, on level ground
 * @param levers how the other levers stand, by the lever's id, in the user's own words
 * @param noted what else was written down, by the words of {@link #NOTED}
 */
public record Baseline(
    Measured stand, Measured laden, Map<String, String> levers, Map<String, String> noted) {

  /** What may be noted of a setting beside its levers, in the order in which it is shown. */
  public static final List<String> NOTED =
      List.of("cold", "hot", "washers", "by", "checked-by", "date", "track", "weather");

  /** Nothing is known. */
  public static final Baseline UNKNOWN =
      new Baseline(Measured.UNKNOWN, Measured.UNKNOWN, Map.of(), Map.of());

  /** Takes a copy of the maps, in their order. */
  public Baseline {
    levers = Collections.unmodifiableMap(new LinkedHashMap<>(levers));
    noted = Collections.unmodifiableMap(new LinkedHashMap<>(noted));
  }

  /**
   * The toe of both sides.
   *
   * @param left the left side's in millimetres, -20 to 20; out is positive
   * @param right the right side's
   * @param discMm the diameter that it was read over, 100 to 600 mm, if it was told
   */
  public record Toe(double left, double right, Optional<Double> discMm) {

    /** As it is said: {@code 0.8 mm out a side}. */
    public String words() {
      String over = discMm.map(disc -> " over %s mm".formatted(plain(disc))).orElse("");
      return left == right
          ? side(left) + (left == 0 ? "" : " a side") + over
          : "left %s, right %s%s".formatted(side(left), side(right), over);
    }

    private static String side(double mm) {
      return mm == 0 ? "zero" : "%s mm %s".formatted(plain(Math.abs(mm)), mm > 0 ? "out" : "in");
    }

    private static String plain(double value) {
      return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
  }

  /** What was read in one way: on the stand, or with the driver aboard. */
  public record Measured(FrontEnd front, Optional<Toe> toe) {

    /** Nothing was read. */
    public static final Measured UNKNOWN = new Measured(FrontEnd.UNKNOWN, Optional.empty());

    private Measured or(Measured before) {
      return new Measured(
          new FrontEnd(
              front.camber().or(before.front()::camber),
              front.caster().or(before.front()::caster),
              front.caster().isPresent() ? front.absolute() : before.front().absolute(),
              front.caster().isPresent() ? front.neutral() : before.front().neutral()),
          toe.or(before::toe));
    }
  }

  /** How the front end stands on the stand. */
  public FrontEnd front() {
    return stand.front();
  }

  /** The toe on the stand. */
  public Optional<Toe> toe() {
    return stand.toe();
  }

  /** This setting; what it does not tell is as it was before. */
  public Baseline or(Baseline before) {
    return new Baseline(
        stand.or(before.stand),
        laden.or(before.laden),
        over(before.levers, levers),
        over(before.noted, noted));
  }

  /**
   * What stays where a new reading is kept: neither who set it and when, nor what was read with the
   * driver aboard, which belongs to the readings beside it.
   */
  public Baseline lasting() {
    return new Baseline(stand, Measured.UNKNOWN, levers, Map.of());
  }

  private static Map<String, String> over(Map<String, String> before, Map<String, String> now) {
    Map<String, String> all = new LinkedHashMap<>(before);
    all.putAll(now);
    return all;
  }

  /** How much camber the driver's weight adds, the middle of both sides, if both were read. */
  public Optional<Degrees> camberOffset() {
    return offset(front -> front.camber().map(Sides::middle));
  }

  /** How much caster the driver's weight adds, the middle of both sides, if both were read. */
  public Optional<Degrees> casterOffset() {
    return offset(FrontEnd::casterFromNeutral);
  }

  /** How much toe-out a side the driver's weight adds, mm, if both were read over one disc. */
  public Optional<Double> toeOffset() {
    return laden
        .toe()
        .flatMap(
            aboard ->
                stand
                    .toe()
                    .filter(empty -> empty.discMm().equals(aboard.discMm()))
                    .map(
                        empty ->
                            (aboard.left() + aboard.right() - empty.left() - empty.right()) / 2));
  }

  private Optional<Degrees> offset(Function<FrontEnd, Optional<Degrees>> read) {
    return read.apply(laden.front())
        .flatMap(aboard -> read.apply(stand.front()).map(aboard::minus));
  }
}
