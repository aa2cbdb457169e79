package insidelift.shared.casefile;

import insidelift.shared.Degrees;
import insidelift.shared.situation.CaseProblem;
import insidelift.shared.situation.FrontEnd;
import insidelift.shared.situation.Printable;
import insidelift.shared.situation.Sides;
import java.util.Optional;
import java.util.Set;

/** Reads how a front end stands, the same way wherever a case file tells it. */
final class FrontEndReader {

  static final Set<String> SIDES = Set.of("left", "right");
  private static final Set<String> CASTER = Set.of("left", "right", "reference", "neutral");

  /** Camber beyond this is a typing error: ten times what a kart runs (common practice). */
  static final double CAMBER_MAX = 10;

  /** Caster beyond this is a typing error: published baselines end a little over 20 degrees. */
  static final double CASTER_MAX = 40;

  private FrontEndReader() {}

  /** What stands under the keys {@code camber} and {@code caster}; either may be missing. */
  static FrontEnd read(JsonPlace place) throws CaseProblem {
    Optional<JsonPlace> camber = place.at("camber");
    Optional<JsonPlace> caster = place.at("caster");
    boolean absolute = false;
    Optional<Degrees> neutral = Optional.empty();
    Optional<Sides> casterSides = Optional.empty();
    if (caster.isPresent()) {
      caster.get().object(CASTER);
      absolute = absolute(caster.get());
      Optional<JsonPlace> zero = caster.get().at("neutral");
      if (zero.isPresent()) {
        neutral = Optional.of(degrees(zero.get(), CASTER_MAX));
      }
      casterSides = Optional.of(sides(caster.get(), CASTER_MAX));
    }
    Optional<Sides> camberSides =
        camber.isPresent()
            ? Optional.of(sides(camber.get().object(SIDES), CAMBER_MAX))
            : Optional.empty();
    return new FrontEnd(camberSides, casterSides, absolute, neutral);
  }

  private static boolean absolute(JsonPlace caster) throws CaseProblem {
    Optional<JsonPlace> reference = caster.at("reference");
    if (reference.isEmpty()) {
      return false;
    }
    String word = reference.get().word();
    return switch (word) {
      case "neutral" -> false;
      case "absolute" -> true;
      default ->
          throw reference
              .get()
              .problem(Printable.quoted(word) + " is not one of neutral, absolute");
    };
  }

  private static Sides sides(JsonPlace pair, double max) throws CaseProblem {
    return new Sides(degrees(pair.need("left"), max), degrees(pair.need("right"), max));
  }

  static Degrees degrees(JsonPlace place, double max) throws CaseProblem {
    return Degrees.of(place.number(-max, max, "degrees"));
  }
}
