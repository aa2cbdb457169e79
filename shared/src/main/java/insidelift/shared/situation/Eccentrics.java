package insidelift.shared.situation;

import com.fasterxml.jackson.databind.JsonNode;
import insidelift.shared.Degrees;
import insidelift.shared.Lever;

/**
 * The kart's own eccentrics, as far as their owner has measured them.
 *
 * @param camberPerPosition degrees of camber that one position moves; null if not measured
 * @param casterPerPosition degrees of caster that one position moves; null if not measured
 * @param washers the washers themselves (throw, spacing, positions, or a measured table) as the
 *     file has them; null if they are not described
 * @param now the positions that the washers are in, as the file has them; null if not told
 */
public record Eccentrics(
    Degrees camberPerPosition, Degrees casterPerPosition, JsonNode washers, JsonNode now) {

  /** Whether the size of a position was measured on this kart. */
  public boolean measured(Lever lever) {
    return (lever == Lever.CAMBER ? camberPerPosition : casterPerPosition) != null;
  }

  /** What a position moves, without a word on the washers themselves. */
  public Eccentrics(Degrees camberPerPosition, Degrees casterPerPosition) {
    this(camberPerPosition, casterPerPosition, null, null);
  }

  /** Nothing measured. */
  public static final Eccentrics UNKNOWN = new Eccentrics(null, null, null, null);
}
