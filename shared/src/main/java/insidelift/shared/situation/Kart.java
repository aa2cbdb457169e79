package insidelift.shared.situation;

import com.fasterxml.jackson.databind.JsonNode;
import insidelift.shared.Degrees;
import java.util.Optional;

/**
 * What is known of the kart's front end now.
 *
 * @param camber the camber of both sides, if measured
 * @param caster the caster of both sides, if measured
 * @param absolute whether the caster is absolute rather than relative to the user's own neutral
 * @param neutral the absolute caster of the neutral position, if the caster is absolute and it is
 *     known
 * @param eccentrics what one position moves
 * @param geometry the kart's geometry as the file has it, if it has any
 * @param past what is known of it beyond how it stands now
 */
public record Kart(
    Optional<Sides> camber,
    Optional<Sides> caster,
    boolean absolute,
    Optional<Degrees> neutral,
    Eccentrics eccentrics,
    Optional<JsonNode> geometry,
    KartRecord past) {

  /** A kart without a past. */
  public Kart(
      Optional<Sides> camber,
      Optional<Sides> caster,
      boolean absolute,
      Optional<Degrees> neutral,
      Eccentrics eccentrics,
      Optional<JsonNode> geometry) {
    this(camber, caster, absolute, neutral, eccentrics, geometry, KartRecord.NONE);
  }

  /** A kart of which nothing is known. */
  public static final Kart UNKNOWN =
      new Kart(
          Optional.empty(),
          Optional.empty(),
          false,
          Optional.empty(),
          Eccentrics.UNKNOWN,
          Optional.empty());

  /** The same kart with other settings. */
  public Kart with(Sides newCamber, Sides newCaster) {
    return new Kart(
        Optional.ofNullable(newCamber),
        Optional.ofNullable(newCaster),
        absolute,
        neutral,
        eccentrics,
        geometry,
        past);
  }

  /** The same kart with another past. */
  public Kart with(KartRecord known) {
    return new Kart(camber, caster, absolute, neutral, eccentrics, geometry, known);
  }

  /** The same kart after a change, before which its front end stood so. */
  public Kart after(FrontEnd before) {
    return with(new KartRecord(Optional.of(before), past.baseline(), past.levers()));
  }

  /** How its front end stands now. */
  public FrontEnd front() {
    return new FrontEnd(camber, caster, absolute, neutral);
  }

  /** The caster relative to neutral, if it can be told. */
  public Optional<Degrees> casterFromNeutral() {
    return front().casterFromNeutral();
  }
}
