package insidelift.shared.situation;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What is known of a kart beyond how its front end stands now.
 *
 * @param before how the front end stood before the last change, if it was measured
 * @param baseline its own good settings, by the condition that they are for: {@code dry}, {@code
 *     wet}
 */
public record KartRecord(Optional<FrontEnd> before, Map<String, Baseline> baseline) {

  /** Nothing is known. */
  public static final KartRecord NONE = new KartRecord(Optional.empty(), Map.of());

  /** Takes a copy of the map, in the order of its keys. */
  public KartRecord {
    baseline = Collections.unmodifiableMap(new TreeMap<>(baseline));
  }
}
