package insidelift.shared.situation;

import com.fasterxml.jackson.annotation.JsonInclude;
import insidelift.shared.Degrees;

/**
 * What one position of the kart's own eccentrics does, as its owner measured it.
 *
 * @param camberPerPosition degrees of camber that one position moves; null if not measured
 * @param casterPerPosition degrees of caster that one position moves; null if not measured
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Eccentrics(Degrees camberPerPosition, Degrees casterPerPosition) {

  /** Nothing measured. */
  public static final Eccentrics UNKNOWN = new Eccentrics(null, null);
}
